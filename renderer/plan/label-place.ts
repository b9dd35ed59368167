import type { PlanPoint } from '../../app/job/places.ts'
import { containsPoint, lengthFt, sidesOf } from '../../app/roof/polygon.ts'
import { nearestOnSide } from './sheet-geometry.ts'

/** Where a facet's letter stands, and how far the nearest side is from there. */
export interface LabelPlace {
  readonly at: PlanPoint
  readonly roomFt: number
}

/** A pin nearer than this share of the room crowds the letter. */
const CROWDED = 0.42
/** How far the letter may go from the middle, as a share of the room there. */
const REACH = 0.62
const DIRECTIONS = 8

/**
 * Where to put a facet's letter: its middle, or, when a pin stands there, the place near by that keeps farthest from
 * pins without leaving the facet.
 */
export function labelPlace(outline: readonly PlanPoint[], middle: PlanPoint, pins: readonly PlanPoint[]): LabelPlace {
  const home = { at: middle, roomFt: roomAt(outline, middle) }
  const away = (at: PlanPoint) => Math.min(Infinity, ...pins.map((pin) => lengthFt(pin, at)))
  if (away(middle) >= home.roomFt * CROWDED) return home
  const candidates = Array.from({ length: DIRECTIONS }, (_, index) => {
    const turn = (index / DIRECTIONS) * 2 * Math.PI
    const reach = home.roomFt * REACH
    return { xFt: middle.xFt + Math.sin(turn) * reach, yFt: middle.yFt + Math.cos(turn) * reach }
  }).filter((at) => containsPoint(outline, at))
  const score = (at: PlanPoint) => Math.min(away(at), roomAt(outline, at) * 1.6)
  const best = candidates.reduce((one, other) => (score(other) > score(one) ? other : one), middle)
  return { at: best, roomFt: roomAt(outline, best) }
}

/** How far the nearest side of an outline is from a place, feet. */
export function roomAt(outline: readonly PlanPoint[], at: PlanPoint): number {
  return Math.min(...sidesOf(outline).map((side) => lengthFt(nearestOnSide(side, at), at)))
}
