import type { PlanPoint } from '../job/places.ts'
import { lengthFt, sidesOf, signedAreaSqFt, type Side } from './polygon.ts'

/** Corners closer than this are one corner: an eighth of an inch. */
const SAME_CORNER_FT = 1 / 96

/** A point this near a line lies on it: far less than can be drawn, far more than rounding adds. */
const ON_LINE_FT = 1e-6

/** Outlines smaller than this have no area worth a facet. */
const LEAST_AREA_SQFT = 0.1

/** What is wrong with a drawn outline. Corners and sides count from 1, as people do; side n runs from corner n. */
export type OutlineFault =
  | { readonly kind: 'too-few-corners' }
  | { readonly kind: 'same-corner'; readonly corner: number; readonly other: number }
  | { readonly kind: 'crossing'; readonly side: number; readonly other: number }
  | { readonly kind: 'no-area' }

/** Every fault of an outline; an empty list means it can be a facet. */
export function checkOutline(outline: readonly PlanPoint[]): readonly OutlineFault[] {
  if (outline.length < 3) return [{ kind: 'too-few-corners' }]
  const faults: OutlineFault[] = []
  const sides = sidesOf(outline)
  for (const side of sides) {
    if (lengthFt(side.from, side.to) < SAME_CORNER_FT) {
      faults.push({ kind: 'same-corner', corner: side.index + 1, other: ((side.index + 1) % outline.length) + 1 })
    }
  }
  if (faults.length > 0) return faults
  if (liesOnOneLine(outline, sides)) return [{ kind: 'no-area' }]
  sides.forEach((side, index) => {
    for (const other of sides.slice(index + 1)) {
      if (sidesMeetWrongly(side, other, sides.length))
        faults.push({ kind: 'crossing', side: side.index + 1, other: other.index + 1 })
    }
  })
  if (faults.length === 0 && Math.abs(signedAreaSqFt(outline)) < LEAST_AREA_SQFT) faults.push({ kind: 'no-area' })
  return faults
}

/** A fault as a sentence that says where and what to do. */
export function outlineFaultSentence(fault: OutlineFault): string {
  switch (fault.kind) {
    case 'too-few-corners':
      return 'A facet needs at least three corners. Add corners before closing it.'
    case 'same-corner':
      return `Corners ${fault.corner} and ${fault.other} are at the same place. Remove one of them.`
    case 'crossing':
      return `Side ${fault.side} (from corner ${fault.side}) crosses side ${fault.other} (from corner ${fault.other}). Move one of their corners.`
    case 'no-area':
      return 'The corners lie on one line, so the outline has no area. Move a corner off the line.'
  }
}

function sidesMeetWrongly(a: Side, b: Side, count: number): boolean {
  const follows = b.index === a.index + 1 || (a.index === 0 && b.index === count - 1)
  if (!follows) return segmentsTouch(a, b)
  // Neighbours share a corner; they are wrong only when one folds back over the other.
  const [before, after] = b.index === a.index + 1 ? [a, b] : [b, a]
  const backX = before.from.xFt - before.to.xFt
  const backY = before.from.yFt - before.to.yFt
  const onX = after.to.xFt - after.from.xFt
  const onY = after.to.yFt - after.from.yFt
  const longerFt = Math.max(Math.hypot(backX, backY), Math.hypot(onX, onY))
  return Math.abs(backX * onY - backY * onX) < ON_LINE_FT * longerFt && backX * onX + backY * onY > 0
}

function segmentsTouch(a: Side, b: Side): boolean {
  const d1 = turn(b.from, b.to, a.from)
  const d2 = turn(b.from, b.to, a.to)
  const d3 = turn(a.from, a.to, b.from)
  const d4 = turn(a.from, a.to, b.to)
  if (d1 * d2 < 0 && d3 * d4 < 0) return true
  return (
    (d1 === 0 && within(b, a.from)) ||
    (d2 === 0 && within(b, a.to)) ||
    (d3 === 0 && within(a, b.from)) ||
    (d4 === 0 && within(a, b.to))
  )
}

/** -1, 0 or 1: which way `p` lies of the line from `from` to `to`; 0 within a hair of it. */
function turn(from: PlanPoint, to: PlanPoint, p: PlanPoint): number {
  const cross = (to.xFt - from.xFt) * (p.yFt - from.yFt) - (to.yFt - from.yFt) * (p.xFt - from.xFt)
  return Math.abs(cross) < ON_LINE_FT * lengthFt(from, to) ? 0 : Math.sign(cross)
}

function within(side: Side, p: PlanPoint): boolean {
  return (
    p.xFt >= Math.min(side.from.xFt, side.to.xFt) - ON_LINE_FT &&
    p.xFt <= Math.max(side.from.xFt, side.to.xFt) + ON_LINE_FT &&
    p.yFt >= Math.min(side.from.yFt, side.to.yFt) - ON_LINE_FT &&
    p.yFt <= Math.max(side.from.yFt, side.to.yFt) + ON_LINE_FT
  )
}

/** True when every corner lies on the line of the longest side: how an outline without any width is drawn. */
function liesOnOneLine(outline: readonly PlanPoint[], sides: readonly Side[]): boolean {
  const longest = sides.reduce((a, b) => (lengthFt(b.from, b.to) > lengthFt(a.from, a.to) ? b : a))
  return outline.every((corner) => turn(longest.from, longest.to, corner) === 0)
}
