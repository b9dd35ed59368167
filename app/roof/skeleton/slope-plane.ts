import type { PlanPoint } from '../../job/places.ts'
import { PARALLEL, SAME_LINE_FT } from './tolerances.ts'

/**
 * The plane that rises from an eave, or the upright one of a gable wall.
 *
 * In plan it is a line that moves into the roof as the height grows: at height h above the eaves it holds the points p
 * with inward . p = offsetFt + runPerRise * h. The wavefront of the literature is made of such lines; height is its time.
 */
export interface SlopePlane {
  /** Unit vector along the edge, the roof on its left. */
  readonly alongX: number
  readonly alongY: number
  /** Unit vector at right angles to the edge, into the roof. */
  readonly inwardX: number
  readonly inwardY: number
  readonly offsetFt: number
  /** Feet of run for a foot of rise, the speed of the wavefront; 0 for an upright plane. */
  readonly runPerRise: number
  /** Inches of rise in 12 of run; null for an upright plane. */
  readonly pitchRise: number | null
}

/** The plane over the line from one corner to another, the roof on its left. A pitch of null is an upright wall. */
export function planeOver(from: PlanPoint, to: PlanPoint, pitchRise: number | null): SlopePlane {
  const lengthFt = Math.hypot(to.xFt - from.xFt, to.yFt - from.yFt)
  return planeAt(from, { x: (to.xFt - from.xFt) / lengthFt, y: (to.yFt - from.yFt) / lengthFt }, pitchRise)
}

/** The upright plane that stands on a corner along a direction: a wall that no edge of the outline gives. */
export function uprightAt(corner: PlanPoint, along: { readonly x: number; readonly y: number }): SlopePlane {
  return planeAt(corner, along, null)
}

function planeAt(
  point: PlanPoint,
  along: { readonly x: number; readonly y: number },
  pitchRise: number | null,
): SlopePlane {
  return {
    alongX: along.x,
    alongY: along.y,
    inwardX: -along.y,
    inwardY: along.x,
    offsetFt: along.x * point.yFt - along.y * point.xFt,
    runPerRise: pitchRise === null ? 0 : 12 / pitchRise,
    pitchRise,
  }
}

/** Feet from the plane's line at a height to a point, positive on the inner side. */
export function aheadFt(plane: SlopePlane, point: PlanPoint, heightFt: number): number {
  return plane.inwardX * point.xFt + plane.inwardY * point.yFt - plane.offsetFt - plane.runPerRise * heightFt
}

/** Height above the eaves at which a sloped plane passes over a point; undefined for an upright plane. */
export function heightOverFt(plane: SlopePlane, point: PlanPoint): number | undefined {
  return plane.pitchRise === null ? undefined : aheadFt(plane, point, 0) / plane.runPerRise
}

/** Sine of the turn from one plane's edge to another's: positive to the left. */
export function turnSine(from: SlopePlane, to: SlopePlane): number {
  return from.alongX * to.alongY - from.alongY * to.alongX
}

/** Cosine of the turn from one plane's edge to another's. */
export function turnCosine(from: SlopePlane, to: SlopePlane): number {
  return from.alongX * to.alongX + from.alongY * to.alongY
}

/** True when an edge lies in a plane that another edge gave: same pitch, same direction, on its line. */
export function liesIn(plane: SlopePlane, own: SlopePlane, ends: readonly PlanPoint[]): boolean {
  return (
    plane.pitchRise === own.pitchRise &&
    Math.abs(turnSine(plane, own)) < PARALLEL &&
    turnCosine(plane, own) > 0 &&
    ends.every((end) => Math.abs(aheadFt(plane, end, 0)) < SAME_LINE_FT)
  )
}
