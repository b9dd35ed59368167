import type { PlanPoint } from '../../job/places.ts'
import { sidesOf } from '../polygon.ts'

/** Two sides that meet where they should not, the earlier one first. Rings and sides are positions, from 0. */
export interface Touch {
  readonly a: { readonly ring: number; readonly side: number }
  readonly b: { readonly ring: number; readonly side: number }
  readonly at: PlanPoint
}

interface PlacedSide {
  readonly ring: number
  readonly side: number
  readonly count: number
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly minXFt: number
  readonly maxXFt: number
  readonly minYFt: number
  readonly maxYFt: number
}

/** Sides of closed rings that cross, come nearer to each other than a gap, or fold back on their neighbour. */
export function touchesBetween(rings: readonly (readonly PlanPoint[])[], gapFt: number): readonly Touch[] {
  return pairsInReach(rings, gapFt).flatMap(([a, b]) => {
    const ends = areNeighbours(a, b) ? farEnds(a, b) : [a.from, a.to, b.from, b.to]
    const near = ends.find((end) => distanceFt(end === a.from || end === a.to ? b : a, end) < gapFt)
    const at = near ?? crossing(a, b, gapFt)
    return at === null ? [] : [{ a, b, at }]
  })
}

/** Sides of closed rings that run through each other by more than a hair; touching is no crossing. */
export function crossingsWithin(rings: readonly (readonly PlanPoint[])[], hairFt: number): readonly Touch[] {
  return pairsInReach(rings, 0).flatMap(([a, b]) => {
    const at = areNeighbours(a, b) ? null : crossing(a, b, hairFt)
    return at === null ? [] : [{ a, b, at }]
  })
}

/** Pairs of sides whose bounds overlap, found by a sweep from left to right. */
function pairsInReach(
  rings: readonly (readonly PlanPoint[])[],
  reachFt: number,
): readonly (readonly [PlacedSide, PlacedSide])[] {
  const sides = rings.flatMap((ring, index) => placedSides(ring, index)).toSorted((a, b) => a.minXFt - b.minXFt)
  const pairs: (readonly [PlacedSide, PlacedSide])[] = []
  let open: PlacedSide[] = []
  for (const side of sides) {
    open = open.filter((other) => other.maxXFt >= side.minXFt - reachFt)
    for (const other of open) {
      if (other.minYFt > side.maxYFt + reachFt || side.minYFt > other.maxYFt + reachFt) continue
      pairs.push(isEarlier(other, side) ? [other, side] : [side, other])
    }
    open.push(side)
  }
  return pairs
}

function placedSides(ring: readonly PlanPoint[], index: number): readonly PlacedSide[] {
  return sidesOf(ring).map(({ index: side, from, to }) => ({
    ring: index,
    side,
    count: ring.length,
    from,
    to,
    minXFt: Math.min(from.xFt, to.xFt),
    maxXFt: Math.max(from.xFt, to.xFt),
    minYFt: Math.min(from.yFt, to.yFt),
    maxYFt: Math.max(from.yFt, to.yFt),
  }))
}

function isEarlier(a: PlacedSide, b: PlacedSide): boolean {
  return a.ring === b.ring ? a.side < b.side : a.ring < b.ring
}

function follows(a: PlacedSide, b: PlacedSide): boolean {
  return a.ring === b.ring && (a.side + 1) % a.count === b.side
}

function areNeighbours(a: PlacedSide, b: PlacedSide): boolean {
  return follows(a, b) || follows(b, a)
}

/** The ends of two neighbours that are not their common corner. */
function farEnds(a: PlacedSide, b: PlacedSide): readonly PlanPoint[] {
  return follows(a, b) ? [a.from, b.to] : [b.from, a.to]
}

/** Feet from a point to the line of a side, positive on its left. */
function offFt({ from, to }: PlacedSide, point: PlanPoint): number {
  const [x, y] = [to.xFt - from.xFt, to.yFt - from.yFt]
  return (x * (point.yFt - from.yFt) - y * (point.xFt - from.xFt)) / Math.hypot(x, y)
}

function distanceFt({ from, to }: PlacedSide, point: PlanPoint): number {
  const [x, y] = [to.xFt - from.xFt, to.yFt - from.yFt]
  const share = ((point.xFt - from.xFt) * x + (point.yFt - from.yFt) * y) / (x * x + y * y)
  const at = Math.min(1, Math.max(0, share))
  return Math.hypot(from.xFt + at * x - point.xFt, from.yFt + at * y - point.yFt)
}

/** Where two sides cross with both ends of each more than a hair beyond the other; null when they do not. */
function crossing(a: PlacedSide, b: PlacedSide, hairFt: number): PlanPoint | null {
  const [b1, b2] = [offFt(a, b.from), offFt(a, b.to)]
  if (Math.min(Math.abs(b1), Math.abs(b2)) <= hairFt || b1 > 0 === b2 > 0) return null
  const [a1, a2] = [offFt(b, a.from), offFt(b, a.to)]
  if (Math.min(Math.abs(a1), Math.abs(a2)) <= hairFt || a1 > 0 === a2 > 0) return null
  const share = b1 / (b1 - b2)
  return {
    xFt: b.from.xFt + share * (b.to.xFt - b.from.xFt),
    yFt: b.from.yFt + share * (b.to.yFt - b.from.yFt),
  }
}
