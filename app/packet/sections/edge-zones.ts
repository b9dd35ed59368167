import type { Finding } from '../../evidence/finding.ts'
import { type EdgeZones, zonePieces, zoneTotals } from '../../roof/zones/edge-zones.ts'
import type { Zone } from '../../roof/zones/edition.ts'
import { findingZone } from '../../roof/zones/finding-zone.ts'
import {
  editionNotes,
  editionWords,
  whyNoZones,
  widthWorking,
  ZONE_CAUTION,
  zoneLabels,
  zoneMeanings,
  zonesInOrder,
} from '../../roof/zones/zone-words.ts'
import type { Block, TableBlock, Text } from '../document.ts'
import { areaFigure } from '../format/areas.ts'
import { roundingNote } from '../format/rounding.ts'
import { findingLinks } from '../links.ts'
import type { PacketContext } from '../packet-context.ts'
import { plain } from '../text.ts'
import { column, heading, paragraph } from './section.ts'

/** The roof by zone: how wide the edge zones are and why, areas, and which findings lie in which. */
export function edgeZoneBlocks(context: PacketContext): readonly Block[] {
  const { zones, facets, sheet } = context
  if (facets.length === 0) return []
  if (zones.kind !== 'drawn') {
    return [heading('Edge zones'), paragraph(`Not worked out. ${whyNoZones(zones) ?? ''}`, 'small')]
  }
  const refused = zones.facets.flatMap((facet) => (facet.kind === 'refused' ? [facet.sentence] : []))
  const basis = sheet.property.leastWidthFt === null ? 'plan' : 'walls'
  return [
    {
      kind: 'group',
      blocks: [
        heading('Edge zones', true),
        paragraph(ZONE_CAUTION, 'caution'),
        paragraph(`${editionWords(zones.edition)} is the edition named for this job. ${editionNotes[zones.edition]}`),
        paragraph(`Width of the zones: ${widthWorking(zones.width, basis)} ${zones.width.source}`, 'small'),
      ],
    },
    zoneTable(zones, context),
    paragraph(
      `Findings stand in the zone of their pin; those that run over several stand in each. ${roundingNote(summed(zones))}`,
      'small',
    ),
    ...refused.map((sentence) => paragraph(sentence, 'small')),
  ]
}

function summed(zones: EdgeZones) {
  const totals = zoneTotals(zones)
  const values = zonesInOrder.map((zone) => totals[zone].areaSqFt)
  return [{ unit: 'sq ft', values, total: sum(values), decimals: 0 }]
}

function zoneTable(zones: EdgeZones, context: PacketContext): TableBlock {
  const totals = zoneTotals(zones)
  const whole = sum(zonesInOrder.map((zone) => totals[zone].areaSqFt))
  const present = zonesInOrder.filter((zone) => zonePieces(zones).some((piece) => piece.zone === zone))
  const byZone = findingsByZone(context)
  const linksOr = (findings: readonly Finding[]): Text =>
    findings.length === 0 ? plain('none') : findingLinks(findings)
  const unplaced = byZone.get(null) ?? []
  return {
    kind: 'table',
    summary: 'Zones with their areas and the findings in each',
    columns: [
      column('Zone', 1.6),
      column('What it is', 3.4),
      column('Area, sq ft', 1.2, 'end'),
      column('Share', 0.9, 'end'),
      column('Findings', 3.6),
    ],
    rows: [
      ...present.map((zone) => ({
        cells: [
          plain(zoneLabels[zone]),
          plain(zoneMeanings[zone]),
          plain(areaFigure(totals[zone].areaSqFt)),
          plain(`${((100 * totals[zone].areaSqFt) / whole).toFixed(0)} %`),
          linksOr(byZone.get(zone) ?? []),
        ],
      })),
      ...(unplaced.length === 0
        ? []
        : [{ cells: [plain('Not known'), plain('no pin, or off the zones'), [], [], findingLinks(unplaced)] }]),
      { total: true, cells: [plain('Together'), [], plain(areaFigure(whole)), [], []] },
    ],
  }
}

/** Findings by the zones that they lie in; null holds those whose zone is not known. */
function findingsByZone({ findings, zones }: PacketContext): ReadonlyMap<Zone | null, readonly Finding[]> {
  const groups = new Map<Zone | null, Finding[]>()
  for (const finding of findings) {
    const found = findingZone(finding, zones)
    const own: readonly (Zone | null)[] =
      found.kind === 'in' ? [found.zone] : found.kind === 'shared' ? found.shares.map(({ zone }) => zone) : [null]
    for (const zone of own) groups.set(zone, [...(groups.get(zone) ?? []), finding])
  }
  return groups
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0)
}
