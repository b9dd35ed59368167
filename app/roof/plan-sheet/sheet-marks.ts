import type { PlanBounds, PlanWindow, SheetShape, SheetSide } from '../plan-drawing.ts'
import { INK, PAPER } from './inks.ts'
import { centredText, line, type Pen, plainText, type PlanMark, type SheetPoint, solidPen } from './marks.ts'
import type { SoftBox } from './pin-places.ts'
import type { ToSheet } from './plan-sheet.ts'

const MATCH_PEN: Pen = { colour: INK, widthPt: 1.4, dashPt: [14, 3, 2, 3, 2, 3] }
const TEXT_PT = 8.5
const OFF_LINE_PT = 9
const WORDS_HALF_PT = { widthPt: 46, heightPt: 5 }
/** At the sides of a sheet there is room for the number only. */
const NUMBER_HALF_PT = { widthPt: 13, heightPt: 10 }

interface DrawnMatches {
  readonly marks: readonly PlanMark[]
  readonly boxes: readonly SoftBox[]
}

/** Match lines of one sheet of several, with the sheet that the plan goes on to, and the sheet's own number. */
export function matchMarks(window: PlanWindow, toSheet: ToSheet): DrawnMatches {
  const drawn = window.matches.map(({ side, sheet }) => {
    const [from, to] = sideLine(window.bounds, side, toSheet)
    const middle = { xPt: (from.xPt + to.xPt) / 2, yPt: (from.yPt + to.yPt) / 2 }
    const upright = side === 'left' || side === 'right'
    const out = side === 'left' || side === 'top' ? -1 : 1
    const half = upright ? NUMBER_HALF_PT : WORDS_HALF_PT
    const at = upright
      ? { xPt: middle.xPt + out * (OFF_LINE_PT + 8), yPt: middle.yPt }
      : { xPt: middle.xPt, yPt: middle.yPt + out * OFF_LINE_PT }
    const look = { sizePt: TEXT_PT, colour: INK, strong: true, onWhite: false }
    const words = upright
      ? [
          centredText('sheet', { xPt: at.xPt, yPt: at.yPt - 5 }, { ...look, strong: false }),
          centredText(String(sheet), { xPt: at.xPt, yPt: at.yPt + 5 }, look),
        ]
      : [centredText(`match line, sheet ${sheet}`, at, look)]
    return {
      marks: [line(from, to, MATCH_PEN), ...words],
      box: { at, halfWidthPt: half.widthPt, halfHeightPt: half.heightPt },
    }
  })
  const title = plainText(
    `Sheet ${window.sheet} of ${window.of}`,
    { xPt: 2, yPt: 12 },
    {
      sizePt: 10,
      colour: INK,
      strong: true,
    },
  )
  const titleBox = { at: { xPt: 34, yPt: 8 }, halfWidthPt: 34, halfHeightPt: 8 }
  return { marks: [...drawn.flatMap(({ marks }) => marks), title], boxes: [...drawn.map(({ box }) => box), titleBox] }
}

function sideLine(bounds: PlanBounds, side: SheetSide, toSheet: ToSheet): readonly [SheetPoint, SheetPoint] {
  const { minXFt, minYFt, maxXFt, maxYFt } = bounds
  const at = (xFt: number, yFt: number) => toSheet({ xFt, yFt })
  switch (side) {
    case 'left':
      return [at(minXFt, minYFt), at(minXFt, maxYFt)]
    case 'right':
      return [at(maxXFt, minYFt), at(maxXFt, maxYFt)]
    case 'top':
      return [at(minXFt, maxYFt), at(maxXFt, maxYFt)]
    case 'bottom':
      return [at(minXFt, minYFt), at(maxXFt, minYFt)]
  }
}

/** On a key plan: the part that each sheet shows, with its number. */
export function keyMarks(sheets: readonly SheetShape[], toSheet: ToSheet): readonly PlanMark[] {
  return sheets.flatMap(({ sheet, bounds }): readonly PlanMark[] => {
    const { minXFt, minYFt, maxXFt, maxYFt } = bounds
    const [low, high] = [toSheet({ xFt: minXFt, yFt: minYFt }), toSheet({ xFt: maxXFt, yFt: maxYFt })]
    const at = { xPt: low.xPt + 12, yPt: high.yPt + 12 }
    return [
      {
        kind: 'path',
        points: [low, { xPt: high.xPt, yPt: low.yPt }, high, { xPt: low.xPt, yPt: high.yPt }],
        closed: true,
        pen: MATCH_PEN,
        fill: null,
      },
      { kind: 'pill', at, halfWidthPt: 8, halfHeightPt: 8, pen: solidPen(INK, 0.9), fill: PAPER },
      centredText(String(sheet), at, { sizePt: 10, colour: INK, strong: true, onWhite: false }),
    ]
  })
}
