import type { PlanBounds, PlanDrawing } from '../plan-drawing.ts'
import { sheetDirection } from '../plan-frame.ts'
import { INK, PAPER, QUIET_INK } from './inks.ts'
import { centredText, type PlanMark, type SheetPoint, solidPen } from './marks.ts'
import type { ToSheet } from './plan-sheet.ts'

const NORTH_HALF_PT = 17
const NORTH_FROM_CORNER_PT = 33
const FRONT_OFF_ROOF_PT = 13

interface Around {
  readonly toSheet: ToSheet
  readonly bounds: PlanBounds
  readonly area: { readonly widthPt: number; readonly heightPt: number }
}

/** North arrow in the sheet's top right corner, and the front of the house marked outside the roof. */
export function directionMarks(drawing: PlanDrawing, around: Around): readonly PlanMark[] {
  const corner = { xPt: around.area.widthPt - NORTH_FROM_CORNER_PT, yPt: NORTH_FROM_CORNER_PT }
  return [...northArrow(corner, drawing.upAzimuthDeg), ...frontMarker(drawing, around)]
}

function northArrow(at: SheetPoint, upAzimuthDeg: number): readonly PlanMark[] {
  const north = sheetDirection(0, upAzimuthDeg)
  const spot = (ahead: number, aside: number): SheetPoint => ({
    xPt: at.xPt + north.x * ahead + north.y * aside,
    yPt: at.yPt - north.y * ahead + north.x * aside,
  })
  const half = (sideOfIt: 1 | -1, fill: string): PlanMark => ({
    kind: 'path',
    points: [spot(NORTH_HALF_PT, 0), spot(-NORTH_HALF_PT, sideOfIt * 7), spot(-NORTH_HALF_PT + 7, 0)],
    closed: true,
    pen: solidPen(INK, 0.7),
    fill,
  })
  const letter = centredText('N', spot(NORTH_HALF_PT + 8, 0), { sizePt: 10, colour: INK, strong: true, onWhite: false })
  return [half(-1, INK), half(1, PAPER), letter]
}

function frontMarker(drawing: PlanDrawing, around: Around): readonly PlanMark[] {
  if (drawing.frontAzimuthDeg === null) return []
  const way = sheetDirection(drawing.frontAzimuthDeg, drawing.upAzimuthDeg)
  const { bounds, toSheet } = around
  const low = toSheet({ xFt: bounds.minXFt, yFt: bounds.minYFt })
  const high = toSheet({ xFt: bounds.maxXFt, yFt: bounds.maxYFt })
  const half = { x: (high.xPt - low.xPt) / 2, y: (low.yPt - high.yPt) / 2 }
  const out = Math.min(
    Math.abs(way.x) < 1e-9 ? Infinity : half.x / Math.abs(way.x),
    Math.abs(way.y) < 1e-9 ? Infinity : half.y / Math.abs(way.y),
  )
  const spot = (ahead: number, aside: number): SheetPoint => ({
    xPt: (low.xPt + high.xPt) / 2 + way.x * (out + ahead) + way.y * aside,
    yPt: (low.yPt + high.yPt) / 2 - way.y * (out + ahead) + way.x * aside,
  })
  const triangle: PlanMark = {
    kind: 'path',
    points: [spot(FRONT_OFF_ROOF_PT - 4, 0), spot(FRONT_OFF_ROOF_PT + 2, 4), spot(FRONT_OFF_ROOF_PT + 2, -4)],
    closed: true,
    pen: null,
    fill: QUIET_INK,
  }
  // Beside a wall the word needs more room than under it.
  const wordAt = spot(FRONT_OFF_ROOF_PT + 9 + 6 * Math.abs(way.x), 0)
  return [triangle, centredText('Front', wordAt, { sizePt: 8.5, colour: QUIET_INK, strong: true, onWhite: false })]
}
