import type { Finding } from '../../evidence/finding.ts'
import type { PlanPoint } from '../../job/places.ts'
import { zonePieces, type EdgeZones } from './edge-zones.ts'
import type { Zone, ZonePart } from './edition.ts'
import type { JobZones } from './job-zones.ts'
import { holdsPoint } from './region.ts'
import { zoneOf, zoneOfPin } from './zone-of.ts'
import { partWords, whyNoZones, zoneLabels } from './zone-words.ts'

/** A pin is put down by hand: nearer than this to a border, feet, the plan can't tell the two sides apart. */
const BORDER_FT = 0.5

/** What lies off the zones is told from this share on. */
const LEAST_SHARE = 0.005

/** The zone of a finding, by its pin. */
export type FindingZone =
  /** All of it lies in one zone; `near` are other zones whose border is within six inches of a point. */
  | { readonly kind: 'in'; readonly zone: Zone; readonly part: ZonePart | null; readonly near: readonly Zone[] }
  /** A line or area over several zones: shares from 0 to 1, the largest first; `outside` is off the drawn zones. */
  | {
      readonly kind: 'shared'
      readonly shares: readonly { readonly zone: Zone; readonly share: number }[]
      readonly outside: number
    }
  | { readonly kind: 'unknown'; readonly sentence: string }

/**
 * The zone that a finding lies in. A pin that is a point has the zone it stands in, on the facet that the finding names
 * where the point is on that facet; lines and areas have shares. Without a pin, off the roof or on facets whose zones are
 * not drawn a sentence says so.
 */
export function findingZone(finding: Pick<Finding, 'pin' | 'facetId'>, zones: JobZones): FindingZone {
  const { pin } = finding
  if (zones.kind !== 'drawn') return unknown(whyNoZones(zones) ?? '')
  if (pin === null) return unknown('No pin on the plan, so its zone is not known.')
  if (pin.kind === 'point') return pointZone(pin.at, onFacet(zones, finding.facetId), zones)
  const found = zoneOfPin(zones, pin)
  const shares = summed(found.map(({ piece, share }) => ({ zone: piece.zone, share })))
  const outside = 1 - shares.reduce((sum, { share }) => sum + share, 0)
  const [first] = shares
  if (first === undefined) return unknown(NOT_ON_ZONES)
  if (shares.length > 1 || outside >= LEAST_SHARE) return { kind: 'shared', shares, outside: Math.max(0, outside) }
  const parts = new Set(found.map(({ piece }) => piece.part))
  const [part] = parts
  return { kind: 'in', zone: first.zone, part: parts.size === 1 ? (part ?? null) : null, near: [] }
}

const NOT_ON_ZONES = 'The pin lies off the roof or on a facet whose zones are not drawn.'

function pointZone(at: PlanPoint, own: EdgeZones, all: EdgeZones): FindingZone {
  const piece = zoneOf(own, at) ?? zoneOf(all, at)
  if (piece === null) return unknown(NOT_ON_ZONES)
  const within = zonePieces(zoneOf(own, at) === null ? all : own)
    .filter(({ region }) => holdsPoint(region, at, BORDER_FT))
    .map(({ zone }) => zone)
  return { kind: 'in', zone: piece.zone, part: piece.part, near: [...new Set(within)].filter((z) => z !== piece.zone) }
}

/** The zones of one facet only. */
function onFacet(zones: EdgeZones, facetId: Finding['facetId']): EdgeZones {
  if (zones.kind === 'refused') return zones
  return { ...zones, facets: zones.facets.filter((facet) => facet.facetId === facetId) }
}

interface Share {
  readonly zone: Zone
  readonly share: number
}

function summed(shares: readonly Share[]): readonly Share[] {
  const zones = [...new Set(shares.map(({ zone }) => zone))]
  const total = (zone: Zone) => shares.reduce((sum, one) => (one.zone === zone ? sum + one.share : sum), 0)
  return zones.map((zone) => ({ zone, share: total(zone) })).toSorted((a, b) => b.share - a.share)
}

function unknown(sentence: string): FindingZone {
  return { kind: 'unknown', sentence }
}

/** The zone in a sentence: "Edge, along the eave", "Field, within 6 in of the border to edge", "Edge 60 %, field 40 %". */
export function findingZoneWords(zone: FindingZone): string {
  switch (zone.kind) {
    case 'in': {
      const part = zone.part === null || zone.zone === 'field' ? '' : `, ${partWords[zone.part]}`
      const near = zone.near.map((other) => zoneLabels[other].toLowerCase()).join(' and ')
      return `${zoneLabels[zone.zone]}${part}${near === '' ? '' : `, within 6 in of the border to ${near}`}`
    }
    case 'shared':
      return sharesText(zone, zoneLabels)
    case 'unknown':
      return zone.sentence
  }
}

/** What a zone is called where there is little room. */
const SHORT = { ...zoneLabels, ridge: 'Ridge/hip' } as const satisfies Readonly<Record<Zone, string>>

/** The zone in a table: "Edge", "Edge / field" near a border, "Edge 60 %, field 40 %", "not known". */
export function shortZone(zone: FindingZone): string {
  switch (zone.kind) {
    case 'in':
      return [SHORT[zone.zone], ...zone.near.map((other) => SHORT[other].toLowerCase())].join(' / ')
    case 'shared':
      return sharesText(zone, SHORT)
    case 'unknown':
      return 'not known'
  }
}

function sharesText(
  { shares, outside }: Extract<FindingZone, { kind: 'shared' }>,
  labels: Readonly<Record<Zone, string>>,
): string {
  const told = shares.map(({ zone, share }) => `${labels[zone].toLowerCase()} ${percent(share)}`)
  const all = [...told, ...(outside >= LEAST_SHARE ? [`off the drawn zones ${percent(outside)}`] : [])].join(', ')
  return all.charAt(0).toUpperCase() + all.slice(1)
}

/** Whole percent; what is there at all is never told as 0 %, nor what is not all as 100 %. */
function percent(share: number): string {
  const whole = Math.round(share * 100)
  if (whole === 0) return 'under 1 %'
  return whole === 100 && share < 0.9999 ? 'over 99 %' : `${whole} %`
}
