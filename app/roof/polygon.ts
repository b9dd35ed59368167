import type { PlanPoint } from '../job/places.ts'

/** Signed plan area in square feet by the shoelace formula: positive when the corners run counter-clockwise. */
export function signedAreaSqFt(outline: readonly PlanPoint[]): number {
  let twice = 0
  for (const { from, to } of sidesOf(outline)) twice += from.xFt * to.yFt - to.xFt * from.yFt
  return twice / 2
}

export interface Side {
  readonly index: number
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/** The sides of a closed outline, in order; the last one runs back to the first corner. */
export function sidesOf(outline: readonly PlanPoint[]): readonly Side[] {
  return outline.flatMap((from, index) => {
    const to = outline[(index + 1) % outline.length]
    return to === undefined ? [] : [{ index, from, to }]
  })
}

/** Plan length of a straight line, feet. */
export function lengthFt(from: PlanPoint, to: PlanPoint): number {
  return Math.hypot(to.xFt - from.xFt, to.yFt - from.yFt)
}

/** True when a point is inside an outline; points exactly on a side may go either way. */
export function containsPoint(outline: readonly PlanPoint[], point: PlanPoint): boolean {
  let inside = false
  for (const { from, to } of sidesOf(outline)) {
    if (from.yFt > point.yFt === to.yFt > point.yFt) continue
    const crossingXFt = from.xFt + ((point.yFt - from.yFt) / (to.yFt - from.yFt)) * (to.xFt - from.xFt)
    if (point.xFt < crossingXFt) inside = !inside
  }
  return inside
}
