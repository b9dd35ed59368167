import type { PlanPoint } from '../../app/job/places.ts'

/** A straight line between two points of the plan. */
export interface PlanLine {
  readonly from: PlanPoint
  readonly to: PlanPoint
}

/** True when both points are the very same place. Shared corners are stored exactly equal, so no tolerance is used. */
export function samePlace(a: PlanPoint, b: PlanPoint): boolean {
  return a.xFt === b.xFt && a.yFt === b.yFt
}

/** The point half way between two others. */
export function middleOf(a: PlanPoint, b: PlanPoint): PlanPoint {
  return { xFt: (a.xFt + b.xFt) / 2, yFt: (a.yFt + b.yFt) / 2 }
}

/** Coordinates cut to a thousandth of a foot, so that stored plans stay readable. */
export function tidyPoint(point: PlanPoint): PlanPoint {
  return { xFt: tidy(point.xFt), yFt: tidy(point.yFt) }
}

function tidy(value: number): number {
  const rounded = Math.round(value * 1000) / 1000
  return rounded === 0 ? 0 : rounded
}

/** The place on a side that is nearest to a point. */
export function nearestOnSide(side: PlanLine, point: PlanPoint): PlanPoint {
  const dx = side.to.xFt - side.from.xFt
  const dy = side.to.yFt - side.from.yFt
  const lengthSquared = dx * dx + dy * dy
  if (lengthSquared === 0) return side.from
  const along = ((point.xFt - side.from.xFt) * dx + (point.yFt - side.from.yFt) * dy) / lengthSquared
  const share = Math.min(1, Math.max(0, along))
  return { xFt: side.from.xFt + share * dx, yFt: side.from.yFt + share * dy }
}

/** Where two sides cross inside both of them; null when they miss, run parallel or only touch at an end. */
export function crossingOf(a: PlanLine, b: PlanLine): PlanPoint | null {
  const ax = a.to.xFt - a.from.xFt
  const ay = a.to.yFt - a.from.yFt
  const bx = b.to.xFt - b.from.xFt
  const by = b.to.yFt - b.from.yFt
  const turn = ax * by - ay * bx
  if (turn === 0) return null
  const cx = b.from.xFt - a.from.xFt
  const cy = b.from.yFt - a.from.yFt
  const alongA = (cx * by - cy * bx) / turn
  const alongB = (cx * ay - cy * ax) / turn
  const edge = 1e-9
  if (alongA <= edge || alongA >= 1 - edge || alongB <= edge || alongB >= 1 - edge) return null
  return { xFt: a.from.xFt + alongA * ax, yFt: a.from.yFt + alongA * ay }
}
