import type { PlanPoint } from '../../job/places.ts'
import { lengthFt, sidesOf } from '../polygon.ts'

/** Where the width of an edge zone comes from, with the figures that a reader needs to check it. */
export interface EdgeWidth {
  /** Width of the edge zones, called "a" in the standard, feet in plan. */
  readonly widthFt: number
  /** Least horizontal dimension of the building, feet. */
  readonly leastDimensionFt: number
  readonly meanRoofHeightFt: number
  /** A tenth of the least dimension. */
  readonly tenthFt: number
  /** Four tenths of the mean roof height. */
  readonly heightShareFt: number
  /** Never less than this: 4 % of the least dimension, or 3 ft where that is more. */
  readonly floorFt: number
  /** Who says so, and how it was read. */
  readonly source: string
}

/** The rule was read as quoted by another publication, not in the standard itself. */
const SOURCE =
  'ASCE 7-02 figure notes as restated in a structural handbook; the same rule in ASCE 7-10 and, for sloped roofs, in later editions. Compare it with the printed standard.'

/**
 * Width of the edge zones of a sloped roof: the lesser of a tenth of the least horizontal dimension and four tenths of
 * the mean roof height, but not less than 4 % of the least horizontal dimension nor less than 3 ft.
 *
 * a = max(min(0.10 B, 0.4 h), max(0.04 B, 3)). Source: `source` of the result.
 *
 * @param leastDimensionFt B, above zero
 * @param meanRoofHeightFt h, above zero; the eave height where the slope is under 10 degrees
 */
export function edgeWidth(leastDimensionFt: number, meanRoofHeightFt: number): EdgeWidth {
  const tenthFt = leastDimensionFt / 10
  const heightShareFt = 0.4 * meanRoofHeightFt
  const floorFt = Math.max(leastDimensionFt / 25, 3)
  const widthFt = Math.max(Math.min(tenthFt, heightShareFt), floorFt)
  return { widthFt, leastDimensionFt, meanRoofHeightFt, tenthFt, heightShareFt, floorFt, source: SOURCE }
}

/**
 * Least horizontal dimension of what is drawn, feet: the distance between the two closest parallel lines that hold all
 * points between them (minimum width of the convex hull; one of the two lines always runs along a side of the hull). For
 * a rectangle it is the shorter side, however the rectangle is turned. 0 where the points have no width.
 *
 * A plan is drawn to the drip edge, so that overhangs are in it. The standard's figures are believed (from memory) to
 * leave overhangs out of this dimension: where it matters, give the dimension between walls instead.
 */
export function leastDimension(points: readonly PlanPoint[]): number {
  const hull = convexHull(points)
  const widths = sidesOf(hull).map(({ from, to }) => {
    const length = lengthFt(from, to)
    return Math.max(...hull.map((p) => cross(from, to, p) / length))
  })
  return widths.length < 3 ? 0 : Math.min(...widths)
}

/** Corners of the convex hull, counter-clockwise, without points on its sides (Andrew's monotone chain). */
function convexHull(points: readonly PlanPoint[]): readonly PlanPoint[] {
  const sorted = points.toSorted((p, q) => p.xFt - q.xFt || p.yFt - q.yFt)
  return [...halfHull(sorted), ...halfHull(sorted.toReversed())]
}

function halfHull(sorted: readonly PlanPoint[]): readonly PlanPoint[] {
  const chain: PlanPoint[] = []
  for (const point of sorted) {
    for (;;) {
      const [before, last] = chain.slice(-2)
      if (before === undefined || last === undefined || cross(before, last, point) > 0) break
      chain.pop()
    }
    chain.push(point)
  }
  return chain.slice(0, -1)
}

/** Twice the area of the triangle a, b, c: positive when c lies to the left of the line from a to b. */
function cross(a: PlanPoint, b: PlanPoint, c: PlanPoint): number {
  return (b.xFt - a.xFt) * (c.yFt - a.yFt) - (b.yFt - a.yFt) * (c.xFt - a.xFt)
}
