import type { Facet } from '../../roof/facet.ts'
import { roofEdges } from '../../roof/edges.ts'
import type { PlanCells } from './plan-cells.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'

/** Edges shorter than this are not walked across. */
const LEAST_EDGE_FT = 2
/** A step between roofs of different heights is climbed less readily than a ridge, hip or valley is crossed. */
const OVER_A_STEP = 0.5
/** Facets that do not share an edge are reached past others, the less the farther. */
const NOT_TOUCHING = 0.3

/**
 * How readily an inspector gets from one facet to another, 0 to 1, row by row: 1 across a shared ridge, hip, valley or
 * break of pitch, less over a step, and falling with the gap between facets that share no edge.
 */
export function neighbourWeights(
  facets: readonly Facet[],
  upAzimuthDeg: number,
  cells: PlanCells,
): readonly Float64Array[] {
  const index = new Map(facets.map(({ id }, at) => [id, at]))
  const weights = facets.map((_, from) =>
    Float64Array.from(facets, (__, to) => (from === to ? 0 : pastOthers(gapFt(cells, from, to)))),
  )
  for (const { kind, planLengthFt, facetIds } of roofEdges(facets, upAzimuthDeg)) {
    const [one, other] = facetIds.map((id) => index.get(id))
    if (one === undefined || other === undefined || planLengthFt < LEAST_EDGE_FT) continue
    const weight = kind === 'step' ? OVER_A_STEP : 1
    for (const [from, to] of [
      [one, other],
      [other, one],
    ] as const) {
      const row = weights[from]
      if (row !== undefined) row[to] = Math.max(row[to] ?? 0, weight)
    }
  }
  return weights
}

function pastOthers(gap: number): number {
  return NOT_TOUCHING * Math.exp(-gap / PLACEMENT_CALIBRATION.stepAcrossFt)
}

function gapFt({ column, row, starts, stepFt }: PlanCells, one: number, other: number): number {
  let least = Infinity
  for (let a = starts[one] ?? 0; a < (starts[one + 1] ?? 0); a++) {
    for (let b = starts[other] ?? 0; b < (starts[other + 1] ?? 0); b++) {
      const columns = (column[a] ?? 0) - (column[b] ?? 0)
      const rows = (row[a] ?? 0) - (row[b] ?? 0)
      least = Math.min(least, columns * columns + rows * rows)
    }
  }
  return Math.max(0, Math.sqrt(least) * stepFt - 2 * stepFt)
}
