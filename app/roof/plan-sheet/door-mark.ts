import type { PlanDrawing } from '../plan-drawing.ts'
import { sheetDirection } from '../plan-frame.ts'
import { INK, PAPER } from './inks.ts'
import { type PlanMark, type SheetPoint, solidPen } from './marks.ts'
import type { SoftBox } from './pin-places.ts'
import type { ToSheet } from './plan-sheet.ts'

const LEAF_PT = 9
const ARC_STEPS = 8

/** The front door as drawings of houses show doors: an open leaf and the arc that it swings, opening to the front. */
export function doorMarks(
  { doorAt = null, frontAzimuthDeg, upAzimuthDeg }: PlanDrawing,
  toSheet: ToSheet,
): { readonly marks: readonly PlanMark[]; readonly boxes: readonly SoftBox[] } {
  if (doorAt === null) return { marks: [], boxes: [] }
  const at = toSheet(doorAt)
  const out = frontAzimuthDeg === null ? { x: 0, y: -1 } : sheetDirection(frontAzimuthDeg, upAzimuthDeg)
  const boxes = [{ at, halfWidthPt: LEAF_PT, halfHeightPt: LEAF_PT }]
  return { marks: doorSign(at, { x: out.x, y: -out.y }), boxes }
}

/** The sign alone; `out` is the way it opens, on paper (y down). */
export function doorSign(at: SheetPoint, out: { readonly x: number; readonly y: number }): readonly PlanMark[] {
  const hinge = { xPt: at.xPt - (-out.y * LEAF_PT) / 2, yPt: at.yPt - (out.x * LEAF_PT) / 2 }
  const swing = Array.from({ length: ARC_STEPS + 1 }, (_, i): SheetPoint => {
    const turn = ((i / ARC_STEPS) * Math.PI) / 2
    const [open, shut] = [Math.cos(turn) * LEAF_PT, Math.sin(turn) * LEAF_PT]
    return { xPt: hinge.xPt + out.x * open - out.y * shut, yPt: hinge.yPt + out.y * open + out.x * shut }
  })
  const fan = [hinge, ...swing]
  return [
    { kind: 'path', points: fan, closed: true, pen: solidPen(PAPER, 3), fill: PAPER },
    { kind: 'path', points: swing, closed: false, pen: solidPen(INK, 0.7), fill: null },
    { kind: 'path', points: [hinge, ...swing.slice(0, 1)], closed: false, pen: solidPen(INK, 1.8), fill: null },
    { kind: 'path', points: [hinge, ...swing.slice(-1)], closed: false, pen: solidPen(INK, 0.7), fill: null },
  ]
}
