import type { PlanPoint } from '../../job/places.ts'
import type { Facet } from '../../roof/facet.ts'
import { containsPoint, signedAreaSqFt } from '../../roof/polygon.ts'
import type { PlaceId } from './placement-input.ts'

/**
 * The plan as a lattice of sample points, each standing for one step by one step of its facet, so that a Gaussian is
 * integrated over a facet by adding its density at the facet's points.
 *
 * Error: the density itself is integrated to better than 1e-3 because no sigma is less than a step (trapezoid rule on a
 * Gaussian); what remains is the rim, where a point counts wholly or not at all. `plan-cells.test.ts` holds the
 * probability of a facet against the closed form: within 2 points at the sizes and errors that occur.
 */
export interface PlanCells {
  /** Facets in the order given, then the ground. */
  readonly places: readonly PlaceId[]
  readonly areaSqFt: readonly number[]
  readonly stepFt: number
  /** Lattice coordinates. */
  readonly xFt: Float64Array
  readonly yFt: Float64Array
  /** Column and row of each point; the points of place `i` run from `starts[i]` up to `starts[i + 1]`, by column. */
  readonly column: Int32Array
  readonly row: Int32Array
  readonly starts: Int32Array
  /** Place of each point. */
  readonly placeOf: Int32Array
  readonly middle: PlanPoint
  /** The facet under every lattice point, row by row, -1 beside the roof; `wide` points to the row. */
  readonly raster: Int16Array
  readonly wide: number
  /** Where each point is in the raster. */
  readonly at: Int32Array
}

/** Lines of sight end within this beyond the ground, so that none runs off the lattice. */
const SIGHT_FT = 66
/** People who photograph a house from the ground stand within this of it. */
const GROUND_FT = 32
const MOST_POINTS = 360
/** Ground points lie on every third column and row. */
const GROUND_STRIDE = 3
const LEAST_STEP_FT = 1.5
const GREATEST_STEP_FT = 8

/** Lays the lattice over the facets and the ground around them; null without a facet. */
export function planCells(facets: readonly Facet[]): PlanCells | null {
  const corners = facets.flatMap(({ outline }) => outline)
  const [first] = corners
  if (first === undefined) return null
  const areaSqFt = facets.map(({ outline }) => Math.max(1, Math.abs(signedAreaSqFt(outline))))
  const roofSqFt = areaSqFt.reduce((sum, area) => sum + area, 0)
  const stepFt = Math.max(LEAST_STEP_FT, Math.min(GREATEST_STEP_FT, Math.sqrt(roofSqFt / MOST_POINTS)))
  const box = boundsOf(corners)
  const xFt = axis(box.lowXFt, box.highXFt, stepFt)
  const yFt = axis(box.lowYFt, box.highYFt, stepFt)
  const raster = rasterOf(facets, xFt, yFt)
  const points = pointsByPlace(facets, raster, { xFt, yFt })
  const starts = new Int32Array(points.length + 1)
  points.forEach((of, place) => (starts[place + 1] = (starts[place] ?? 0) + of.length))
  const wide = xFt.length
  const all = points.flatMap((of) => of.toSorted((a, b) => (a % wide) - (b % wide) || a - b))
  return {
    places: [...facets.map(({ id }) => id), 'ground'],
    areaSqFt: [...areaSqFt, roofSqFt],
    stepFt,
    xFt,
    yFt,
    column: Int32Array.from(all, (point) => point % wide),
    row: Int32Array.from(all, (point) => Math.floor(point / wide)),
    starts,
    placeOf: Int32Array.from(points.flatMap((of, place) => of.map(() => place))),
    middle: { xFt: (box.lowXFt + box.highXFt) / 2, yFt: (box.lowYFt + box.highYFt) / 2 },
    raster,
    wide,
    at: Int32Array.from(all),
  }
}

function boundsOf(corners: readonly PlanPoint[]) {
  const xs = corners.map(({ xFt }) => xFt)
  const ys = corners.map(({ yFt }) => yFt)
  return {
    lowXFt: Math.min(...xs),
    highXFt: Math.max(...xs),
    lowYFt: Math.min(...ys),
    highYFt: Math.max(...ys),
  }
}

function axis(lowFt: number, highFt: number, stepFt: number): Float64Array {
  const fromFt = lowFt - GROUND_FT - SIGHT_FT
  const length = Math.ceil((highFt + GROUND_FT + SIGHT_FT - fromFt) / stepFt) + 1
  return Float64Array.from({ length }, (_, index) => fromFt + index * stepFt)
}

/** The facet under every lattice point, -1 beside the roof; where facets overlap, the one given first. */
function rasterOf(facets: readonly Facet[], xFt: Float64Array, yFt: Float64Array): Int16Array {
  const raster = new Int16Array(xFt.length * yFt.length).fill(-1)
  facets.forEach(({ outline }, facet) => {
    const box = boundsOf(outline)
    yFt.forEach((y, row) => {
      if (y < box.lowYFt || y > box.highYFt) return
      xFt.forEach((x, column) => {
        const at = row * xFt.length + column
        if (x < box.lowXFt || x > box.highXFt || raster[at] !== -1) return
        if (containsPoint(outline, { xFt: x, yFt: y })) raster[at] = facet
      })
    })
  })
  return raster
}

/** Lattice points of every facet and then of the ground. A facet that no point hits takes the one nearest its middle. */
function pointsByPlace(
  facets: readonly Facet[],
  raster: Int16Array,
  { xFt, yFt }: { readonly xFt: Float64Array; readonly yFt: Float64Array },
): readonly number[][] {
  const points: number[][] = Array.from({ length: facets.length + 1 }, () => [])
  raster.forEach((facet, at) => {
    const column = at % xFt.length
    const row = Math.floor(at / xFt.length)
    if (facet >= 0) points[facet]?.push(at)
    else if (column % GROUND_STRIDE === 0 && row % GROUND_STRIDE === 0 && isNear(xFt, column) && isNear(yFt, row)) {
      points[facets.length]?.push(at)
    }
  })
  facets.forEach(({ outline }, facet) => {
    if (points[facet]?.length !== 0) return
    const box = boundsOf(outline)
    const column = nearest(xFt, (box.lowXFt + box.highXFt) / 2)
    points[facet].push(nearest(yFt, (box.lowYFt + box.highYFt) / 2) * xFt.length + column)
  })
  return points
}

/** Within the ground around the house rather than where only lines of sight run. */
function isNear(axisFt: Float64Array, index: number): boolean {
  const ft = axisFt[index] ?? 0
  return ft >= (axisFt[0] ?? 0) + SIGHT_FT && ft <= (axisFt.at(-1) ?? 0) - SIGHT_FT
}

function nearest(axisFt: Float64Array, ft: number): number {
  const step = (axisFt[1] ?? 1) - (axisFt[0] ?? 0)
  return Math.max(0, Math.min(axisFt.length - 1, Math.round((ft - (axisFt[0] ?? 0)) / step)))
}
