import type { Criterion } from './criterion.ts'

/** How the protocol is named on paper where an approved agency did the test. Elsewhere it is only described. */
export const PROTOCOL_NAME = 'TAS 106'

const source = 'Florida Test Protocols for High-Velocity Hurricane Zones, 2020 (7th) edition, sections 1.1 to 4.1.4'

/** What the protocol is for and where its limits are; printed wherever it is used or told as background. */
export const protocolLimits: readonly string[] = [
  'The protocol is a quality check of a newly laid roof, made shortly after laying to accept workmanship. Two commentaries by engineering firms call its use to find wind damage a misuse [published, seen at second hand].',
  'Only a testing agency that the county product-control office has approved makes such a test; its reports and calculations follow a protocol of their own (section 3.1).',
  'It is required inside the high-velocity hurricane zone (Miami-Dade and Broward counties) for mortar-set and adhesive-set tile before final inspection [published, seen at second hand]. Elsewhere it is not a code requirement.',
  'How many static tests are made, where, by what rule they are accepted and what follows is not built in: the sections that say so were not seen. Take them from the printed edition.',
  'Without a record from before the storm, looseness alone cannot be tied to one event.',
]

const shared = {
  source,
  status: 'published',
  use: 'approved-agency',
  cautions: protocolLimits,
  effectiveFrom: '',
  effectiveUntil: '2023-12-30',
} as const satisfies Partial<Criterion>

/** Mortar-set and adhesive-set tile: 35 lbf (section 3.3). */
export const protocolMortarAdhesive: Criterion = {
  ...shared,
  key: 'protocol-mortar-adhesive',
  name: 'Florida field protocol, mortar-set or adhesive-set tile',
  rule: { kind: 'held-load', forceLbf: 35 },
  scope: 'Newly laid mortar-set or adhesive-set tile; at least 35 lbf of uplift on each tile tested (section 3.3).',
}

/** Mechanically attached tile: 80 % of the listed resistance (section 3.4). */
export const protocolMechanical: Criterion = {
  ...shared,
  key: 'protocol-mechanical',
  name: 'Florida field protocol, mechanically attached tile',
  rule: { kind: 'share-of-listed', percent: 80 },
  scope:
    'Newly laid mechanically attached rigid tile; at least 80 % of the resistance that the product approval lists (section 3.4).',
}

/** Sampling and the bound on loose tiles, as the protocol states them. */
export const protocolSampling = {
  /** One tile in so many, by roof area (section 4.1); perimeter, corner, hip and ridge are sampled more closely. */
  oneIn: { field: 10, edge: 5, corner: 5, ridge: 5 },
  /** More than this share of loose tiles in any roof area ends the protocol's test, less lets it go on (4.1.2, 4.1.3); at exactly this neither is said. */
  loosePercent: 3,
  source: `${source}: 4.1, 4.1.2 and 4.1.3`,
} as const
