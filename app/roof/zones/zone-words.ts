import type { EdgeWidth } from './edge-width.ts'
import type { WindEdition, Zone, ZonePart } from './edition.ts'
import type { JobZones } from './job-zones.ts'

/** Zones in the order of a legend, from the one that is watched most closely. */
export const zonesInOrder = ['corner', 'edge', 'ridge', 'field'] as const satisfies readonly Zone[]

/** What a zone is called in a table. */
export const zoneLabels = {
  field: 'Field',
  edge: 'Edge',
  corner: 'Corner',
  ridge: 'Ridge or hip',
} as const satisfies Readonly<Record<Zone, string>>

/** What a zone is, for a legend. */
export const zoneMeanings = {
  field: 'everything else',
  edge: 'along eaves, rakes and other outer edges',
  corner: 'where two outer edges meet, and ridge ends at rakes',
  ridge: 'both sides of ridges and hips',
} as const satisfies Readonly<Record<Zone, string>>

/** Where in its zone a place is: "along the eave". */
export const partWords = {
  'eave-rake-corner': 'where eave and rake meet',
  'eave-corner': 'where two eaves meet',
  'ridge-rake-corner': 'at the end of a ridge on a rake',
  'other-corner': 'where two outer edges meet',
  eave: 'along the eave',
  rake: 'along the rake',
  'top-edge': 'along the top edge',
  ridge: 'along the ridge',
  hip: 'along the hip',
  field: 'away from edges',
} as const satisfies Readonly<Record<ZonePart, string>>

/** What zones are for and what they are not; stands wherever they are shown. */
export const ZONE_CAUTION =
  'Zones are context for sampling and for reading the plan. They are not engineering: no wind pressure, load or compliance follows from them.'

/** The edition in words: "ASCE 7-16". */
export function editionWords(edition: WindEdition): string {
  return `ASCE ${edition}`
}

/** What the edition adds to the zones, or why it adds nothing. */
export const editionNotes = {
  '7-10': 'Its zone numbers are known second-hand only, and its layout from memory. Compare with the printed edition.',
  '7-16': 'Its zone numbers are known second-hand only, and its layout from memory. Compare with the printed edition.',
  '7-22':
    'Its zone maps and numbers are not built in: it has three zones, drawn by slope. What is shown is the plain layout that earlier editions share. Take the zones of this edition from the printed standard.',
} as const satisfies Readonly<Record<WindEdition, string>>

/** How the width of the edge zones came about, with every figure in it. */
export function widthWorking(width: EdgeWidth, basis: 'plan' | 'walls'): string {
  const { leastDimensionFt: least, meanRoofHeightFt: height, tenthFt, heightShareFt, floorFt, widthFt } = width
  const from = basis === 'walls' ? 'as entered, between walls' : 'from the plan, overhangs in it'
  return (
    `a = ${feet(widthFt)} ft: the lesser of 0.10 × ${feet(least)} ft (least horizontal dimension, ${from}) = ` +
    `${feet(tenthFt)} ft and 0.4 × ${feet(height)} ft (mean roof height) = ${feet(heightShareFt)} ft, but not less than ` +
    `${feet(floorFt)} ft (4 % of the least dimension, or 3 ft where that is more).`
  )
}

/** "To draw zones, enter the edition of the wind standard and the mean roof height on the job sheet." Null where zones are drawn. */
export function whyNoZones(zones: JobZones): string | null {
  switch (zones.kind) {
    case 'drawn':
      return null
    case 'refused':
      return zones.sentence
    case 'lacking':
      return `To work out zones, enter ${zones.lacks.map(({ words }) => words).join(' and ')} on the job sheet.`
  }
}

function feet(value: number): string {
  return String(Number(value.toFixed(2)))
}
