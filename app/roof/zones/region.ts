import polygonClipping, { type MultiPolygon, type Ring } from 'polygon-clipping'
import type { PlanPoint } from '../../job/places.ts'
import { containsPoint, lengthFt, sidesOf, signedAreaSqFt } from '../polygon.ts'

/** A plane figure with an outside and perhaps holes, plan feet. */
export interface PlanPolygon {
  readonly outer: readonly PlanPoint[]
  readonly holes: readonly (readonly PlanPoint[])[]
}

/** Any plane figure: polygons that don't overlap. None is an empty figure. */
export type Region = readonly PlanPolygon[]

/**
 * Corners are held on a grid of this many steps to a foot while figures are cut, so that corners that should be one are
 * one. The library fails on some figures whose sides nearly coincide; on a coarser grid the same figures are others.
 */
const GRIDS_PER_FOOT = [1e6, 1e5, 1e4] as const

/** Pieces smaller than this are left over from the grid. */
const LEAST_PIECE_SQFT = 1e-4

/** The figures could not be cut on any grid. */
export class CuttingFailed extends Error {}

/** The figure that any of these outlines cover. Outlines without area add nothing. */
export function unite(outlines: readonly (readonly PlanPoint[])[]): Region {
  return cut((perFoot) => {
    const [first, ...rest] = outlines.map((outline): MultiPolygon => [[ringOf(outline, perFoot)]])
    return first === undefined ? [] : polygonClipping.union(first, ...rest)
  })
}

/** What two figures share. */
export function overlapOf(a: Region, b: Region): Region {
  if (a.length === 0 || b.length === 0) return []
  return cut((perFoot) => polygonClipping.intersection(multiPolygonOf(a, perFoot), multiPolygonOf(b, perFoot)))
}

/** A figure less what another covers. */
export function without(a: Region, b: Region): Region {
  if (a.length === 0 || b.length === 0) return a
  return cut((perFoot) => polygonClipping.difference(multiPolygonOf(a, perFoot), multiPolygonOf(b, perFoot)))
}

/** Plan area, square feet. */
export function regionAreaSqFt(region: Region): number {
  return region.reduce((sum, polygon) => sum + polygonAreaSqFt(polygon), 0)
}

/** True when a point is in a figure or within `reachFt` of its border. */
export function holdsPoint(region: Region, point: PlanPoint, reachFt: number): boolean {
  return region.some(({ outer, holes }) => {
    const rings = [outer, ...holes]
    if (containsPoint(outer, point) && !holes.some((hole) => containsPoint(hole, point))) return true
    return rings.some((ring) => sidesOf(ring).some(({ from, to }) => distanceToSide(from, to, point) <= reachFt))
  })
}

/** Where a straight line crosses the borders of a figure, as shares of its length in rising order, with 0 and 1 at its ends. */
export function stopsAlong(region: Region, from: PlanPoint, to: PlanPoint): readonly number[] {
  const cuts = region
    .flatMap(({ outer, holes }) => [outer, ...holes])
    .flatMap((ring) => sidesOf(ring).flatMap((side) => crossingShare({ from, to }, side)))
  return [0, ...cuts, 1].toSorted((a, b) => a - b)
}

function cut(onGrid: (perFoot: number) => MultiPolygon): Region {
  for (const perFoot of GRIDS_PER_FOOT) {
    try {
      return regionOf(onGrid(perFoot), perFoot)
    } catch {
      continue
    }
  }
  throw new CuttingFailed('The figures could not be cut.')
}

function polygonAreaSqFt({ outer, holes }: PlanPolygon): number {
  const area = (ring: readonly PlanPoint[]) => Math.abs(signedAreaSqFt(ring))
  return area(outer) - holes.reduce((sum, hole) => sum + area(hole), 0)
}

function distanceToSide(from: PlanPoint, to: PlanPoint, point: PlanPoint): number {
  const dx = to.xFt - from.xFt
  const dy = to.yFt - from.yFt
  const along = ((point.xFt - from.xFt) * dx + (point.yFt - from.yFt) * dy) / (dx * dx + dy * dy || 1)
  const share = Math.min(1, Math.max(0, along))
  return lengthFt(point, { xFt: from.xFt + share * dx, yFt: from.yFt + share * dy })
}

interface Line {
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/** Where a side crosses a line, as a share of the line's length; none where it misses or runs along it. */
function crossingShare(line: Line, side: Line): readonly number[] {
  const ax = line.to.xFt - line.from.xFt
  const ay = line.to.yFt - line.from.yFt
  const bx = side.to.xFt - side.from.xFt
  const by = side.to.yFt - side.from.yFt
  const turn = ax * by - ay * bx
  if (turn === 0) return []
  const cx = side.from.xFt - line.from.xFt
  const cy = side.from.yFt - line.from.yFt
  const onLine = (cx * by - cy * bx) / turn
  const onSide = (cx * ay - cy * ax) / turn
  return onLine > 0 && onLine < 1 && onSide >= 0 && onSide <= 1 ? [onLine] : []
}

function ringOf(outline: readonly PlanPoint[], perFoot: number): Ring {
  return outline.map(({ xFt, yFt }) => [Math.round(xFt * perFoot), Math.round(yFt * perFoot)])
}

function multiPolygonOf(region: Region, perFoot: number): MultiPolygon {
  return region.map(({ outer, holes }) => [outer, ...holes].map((ring) => ringOf(ring, perFoot)))
}

function regionOf(polygons: MultiPolygon, perFoot: number): Region {
  return polygons.flatMap((rings) => {
    // The library closes each ring with its first corner again.
    const [outer, ...holes] = rings.map((ring) =>
      ring.slice(0, -1).map(([x, y]) => ({ xFt: Math.round(x) / perFoot, yFt: Math.round(y) / perFoot })),
    )
    if (outer === undefined) return []
    const polygon = { outer, holes }
    return polygonAreaSqFt(polygon) < LEAST_PIECE_SQFT ? [] : [polygon]
  })
}
