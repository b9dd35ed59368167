import type { PlanBounds, PlanDrawing } from '../plan-drawing.ts'
import { sheetDirection } from '../plan-frame.ts'
import { INK, PAPER, QUIET_INK } from './inks.ts'
import { centredText, type PlanMark, type SheetPoint, solidPen } from './marks.ts'
import type { SoftBox } from './pin-places.ts'
import type { ToSheet } from './plan-sheet.ts'

const NORTH_HALF_PT = 17
const NORTH_FROM_CORNER_PT = 33
const FRONT_OFF_ROOF_PT = 13

interface Around {
  readonly toSheet: ToSheet
  readonly bounds: PlanBounds
  readonly area: { readonly widthPt: number; readonly heightPt: number }
}

interface DrawnDirections {
  readonly marks: readonly PlanMark[]
  /** What they cover. */
  readonly boxes: readonly SoftBox[]
}

/** North arrow in the sheet's top right corner, and the front of the house marked outside the roof. */
export function directionMarks(drawing: PlanDrawing, around: Around): DrawnDirections {
  const corner = { xPt: around.area.widthPt - NORTH_FROM_CORNER_PT, yPt: NORTH_FROM_CORNER_PT }
  const front = frontMarker(drawing, around)
  const reachPt = NORTH_HALF_PT + 14
  const north = { at: corner, halfWidthPt: reachPt, halfHeightPt: reachPt }
  return {
    marks: [...northArrow(corner, drawing.upAzimuthDeg), ...front.marks],
    boxes: [north, ...front.boxes],
  }
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

function frontMarker(drawing: PlanDrawing, around: Around): DrawnDirections {
  if (drawing.frontAzimuthDeg === null) return NOTHING
  const way = sheetDirection(drawing.frontAzimuthDeg, drawing.upAzimuthDeg)
  const { bounds, toSheet } = around
  const low = toSheet({ xFt: bounds.minXFt, yFt: bounds.minYFt })
  const high = toSheet({ xFt: bounds.maxXFt, yFt: bounds.maxYFt })
  const half = { x: (high.xPt - low.xPt) / 2, y: (low.yPt - high.yPt) / 2 }
  const aside = Math.abs(way.x) < 1e-9 ? Infinity : half.x / Math.abs(way.x)
  const along = Math.abs(way.y) < 1e-9 ? Infinity : half.y / Math.abs(way.y)
  const out = Math.min(aside, along)
  const side = aside < along ? (way.x > 0 ? 'right' : 'left') : way.y > 0 ? 'top' : 'bottom'
  // Where the plan goes on to another sheet, the front is marked there.
  if (drawing.window?.matches.some((match) => match.side === side) === true) return NOTHING
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
  const word = centredText('Front', wordAt, { sizePt: 8.5, colour: QUIET_INK, strong: true, onWhite: false })
  const wordBox = { at: wordAt, halfWidthPt: 12, halfHeightPt: 5 }
  const triangleBox = { at: spot(FRONT_OFF_ROOF_PT - 1, 0), halfWidthPt: 5, halfHeightPt: 5 }
  return { marks: [triangle, word], boxes: [wordBox, triangleBox] }
}

const NOTHING: DrawnDirections = { marks: [], boxes: [] }
