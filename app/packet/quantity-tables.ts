import type { CaseFile } from '../evidence/case-file.ts'
import { roofEdges } from '../roof/edges.ts'
import { facetName, houseOf } from '../roof/house.ts'
import {
  edgeQuantities,
  facetQuantities,
  type EdgeQuantity,
  type FacetQuantity,
  type FacetTable,
  wasteAllowance,
} from '../roof/quantities.ts'
import { zoneTotals } from '../roof/zones/edge-zones.ts'
import { jobZones } from '../roof/zones/job-zones.ts'
import { zonesInOrder } from '../roof/zones/zone-words.ts'
import { type Columns, type CsvTable, table } from './csv-table.ts'

/**
 * facets.csv, edges.csv, roof-totals.csv and zones.csv: the roof in figures that are not rounded to what is printed, so that
 * the sums can be made again. The allowance for waste is a line of its own in the totals.
 */
export function quantityTables({ job, facets }: CaseFile): readonly CsvTable[] {
  const { upAzimuthDeg } = job.frame
  const { exposureIn, coverWidthIn, wastePercent } = job.sheet.covering
  const piece = exposureIn === null || coverWidthIn === null ? null : { exposureIn, coverWidthIn }
  const house = houseOf(facets, job.frame, job.sheet.property)
  const byId = new Map(facets.map((facet) => [facet.id, facet]))
  const quantities = facetQuantities(facets, { upAzimuthDeg, piece })
  const facetColumns: Columns<FacetQuantity> = [
    ['facet', ({ letter }) => letter],
    ['name', ({ facetId }) => namedBy(byId.get(facetId), (facet) => facetName(facet, house))],
    ['pitch_rise_in_12', ({ facetId }) => byId.get(facetId)?.pitchRise ?? null],
    ['faces_deg', ({ facetId }) => byId.get(facetId)?.downslopeAzimuthDeg ?? null],
    ['plan_area_sq_ft', (row) => exact(row.planAreaSqFt)],
    ['slope_factor', (row) => exact(row.slopeFactor)],
    ['area_sq_ft', (row) => exact(row.areaSqFt)],
    ['squares', (row) => exact(row.squares)],
    ['slope_length_ft', (row) => exact(row.slopeLengthFt)],
    ['courses', ({ courses }) => courses],
    ['pieces', ({ pieces }) => exact(pieces)],
    [
      'set_by_hand',
      ({ facetId }) => namedBy(byId.get(facetId), ({ from, setByHand }) => (from === null ? '' : setByHand.join(' '))),
    ],
    ['inspected_percent', ({ facetId }) => byId.get(facetId)?.inspected.percent ?? null],
  ]
  return [
    table('facets.csv', facetColumns, quantities.rows),
    table('edges.csv', edgeColumns, edgeQuantities(roofEdges(facets, upAzimuthDeg))),
    table('roof-totals.csv', totalColumns, totalLines(quantities, wastePercent)),
    ...zoneTable(jobZones({ facets, upAzimuthDeg, property: job.sheet.property })),
  ]
}

const edgeColumns: Columns<EdgeQuantity> = [
  ['edge', ({ kind }) => kind],
  ['number', ({ count }) => count],
  ['stated_by_hand', ({ statedByHand }) => statedByHand],
  ['plan_length_ft', ({ planLengthFt }) => exact(planLengthFt)],
  ['true_length_ft', ({ trueLengthFt }) => exact(trueLengthFt)],
]

interface TotalLine {
  readonly line: string
  readonly percent: number | null
  readonly planAreaSqFt: number | null
  readonly areaSqFt: number
  readonly pieces: number | null
  readonly piecesToOrder: number | null
}

const totalColumns: Columns<TotalLine> = [
  ['line', ({ line }) => line],
  ['percent', ({ percent }) => percent],
  ['plan_area_sq_ft', ({ planAreaSqFt }) => exact(planAreaSqFt)],
  ['area_sq_ft', ({ areaSqFt }) => exact(areaSqFt)],
  ['squares', ({ areaSqFt }) => exact(areaSqFt / 100)],
  ['pieces', ({ pieces }) => exact(pieces)],
  ['pieces_to_order', ({ piecesToOrder }) => piecesToOrder],
]

function totalLines({ totals }: FacetTable, percent: number | null): readonly TotalLine[] {
  const measured = { line: 'measured', percent: null, ...totals, piecesToOrder: null }
  if (percent === null) return [measured]
  return [measured, { line: 'allowance for waste', planAreaSqFt: null, ...wasteAllowance(totals, percent) }]
}

interface ZoneLine {
  readonly zone: string
  readonly planAreaSqFt: number
  readonly areaSqFt: number
}

const zoneColumns: Columns<ZoneLine> = [
  ['zone', ({ zone }) => zone],
  ['plan_area_sq_ft', ({ planAreaSqFt }) => exact(planAreaSqFt)],
  ['area_sq_ft', ({ areaSqFt }) => exact(areaSqFt)],
]

function zoneTable(zones: ReturnType<typeof jobZones>): readonly CsvTable[] {
  if (zones.kind !== 'drawn') return []
  const totals = zoneTotals(zones)
  return [
    table(
      'zones.csv',
      zoneColumns,
      zonesInOrder.map((zone) => ({ zone, ...totals[zone] })),
    ),
  ]
}

/** To a ten-thousandth: finer than anything is measured, without the noise of binary fractions. */
function exact(value: number | null): number | null {
  return value === null ? null : Number(value.toFixed(4))
}

function namedBy<T>(record: T | undefined, words: (record: T) => string): string {
  return record === undefined ? '' : words(record)
}
