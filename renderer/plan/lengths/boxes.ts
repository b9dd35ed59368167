import type { ScreenPoint } from '../plan-view.ts'

/** The upright box that words or a mark take up, pixels. */
export interface LabelBox {
  readonly x: number
  readonly y: number
  readonly halfWidth: number
  readonly halfHeight: number
}

/** True when two boxes overlap; boxes that only touch don't. */
export function boxesOverlap(a: LabelBox, b: LabelBox): boolean {
  return Math.abs(a.x - b.x) < a.halfWidth + b.halfWidth && Math.abs(a.y - b.y) < a.halfHeight + b.halfHeight
}

/** True when a straight line runs through a box: what is left of it after it is cut at the box's four sides. */
export function lineMeetsBox(from: ScreenPoint, to: ScreenPoint, box: LabelBox): boolean {
  let first = 0
  let last = 1
  const dx = to.x - from.x
  const dy = to.y - from.y
  const cuts: readonly (readonly [run: number, gap: number])[] = [
    [dx, box.x - box.halfWidth - from.x],
    [-dx, from.x - box.x - box.halfWidth],
    [dy, box.y - box.halfHeight - from.y],
    [-dy, from.y - box.y - box.halfHeight],
  ]
  for (const [run, gap] of cuts) {
    if (run === 0 && gap > 0) return false
    if (run > 0) first = Math.max(first, gap / run)
    if (run < 0) last = Math.min(last, gap / run)
  }
  return first < last
}
