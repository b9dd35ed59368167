import type { PlanPoint } from '../../job/places.ts'
import type { PinShape } from '../plan-drawing.ts'
import { INK, PAPER, QUIET_INK } from './inks.ts'
import { centredText, line, type PlanMark, type PlanTarget, type SheetPoint, solidPen } from './marks.ts'
import { placePins, type SoftBox } from './pin-places.ts'
import type { ToSheet } from './plan-sheet.ts'

const NUMBER_PT = 8
const HALF_HEIGHT_PT = 6.6

interface DrawnPins {
  /** Lines and areas that findings cover, to draw under the edges. */
  readonly extents: readonly PlanMark[]
  readonly marks: readonly PlanMark[]
  readonly targets: readonly PlanTarget[]
}

/** Where markers stand as long as none has to move: on their own points. */
export function pinBoxes(pins: readonly PinShape[], toSheet: ToSheet): readonly SoftBox[] {
  return pins.map((pin) => ({
    at: toSheet(pin.markerAt),
    halfWidthPt: halfWidth(pin.label),
    halfHeightPt: HALF_HEIGHT_PT,
  }))
}

/** Pins: numbered markers, filled for damage and open for the rest, led to their points where they had to move. */
export function pinMarks(
  pins: readonly PinShape[],
  toSheet: ToSheet,
  sheet: { widthPt: number; heightPt: number; soft: readonly SoftBox[] },
): DrawnPins {
  const sized = pinBoxes(pins, toSheet).map(({ at, ...half }) => ({ target: at, ...half }))
  const places = placePins(sized, sheet)
  const drawn = pins.map((pin, i) => ({ pin, target: toSheet(pin.markerAt), at: places[i] ?? toSheet(pin.markerAt) }))
  return {
    extents: extentMarks(
      pins.flatMap(({ kind, points }) => (kind === 'point' ? [] : [{ kind, points }])),
      toSheet,
    ),
    marks: [...drawn.flatMap(leader), ...drawn.flatMap(({ pin, at }) => marker(pin, at))],
    targets: drawn.map(({ pin, at }) => ({
      pinLabel: pin.label,
      at,
      halfWidthPt: halfWidth(pin.label),
      halfHeightPt: HALF_HEIGHT_PT,
    })),
  }
}

/** Half the width of a marker that holds a label; text is not measured here, figures are half their size wide. */
function halfWidth(label: string): number {
  return Math.max(HALF_HEIGHT_PT, 2.6 + [...label].length * NUMBER_PT * 0.27)
}

/** A marker with its number, as on the plan and in the legend. */
export function marker(pin: { readonly label: string; readonly filled: boolean }, at: SheetPoint): readonly PlanMark[] {
  return [
    {
      kind: 'pill',
      at,
      halfWidthPt: halfWidth(pin.label),
      halfHeightPt: HALF_HEIGHT_PT,
      pen: solidPen(INK, 0.9),
      fill: pin.filled ? INK : PAPER,
    },
    centredText(pin.label, at, { sizePt: NUMBER_PT, colour: pin.filled ? PAPER : INK, strong: true, onWhite: false }),
  ]
}

function leader(drawn: { pin: PinShape; target: SheetPoint; at: SheetPoint }): readonly PlanMark[] {
  const { target, at } = drawn
  if (target.xPt === at.xPt && target.yPt === at.yPt) return []
  const dot: PlanMark = { kind: 'pill', at: target, halfWidthPt: 1.5, halfHeightPt: 1.5, pen: null, fill: INK }
  return [line(target, at, solidPen(INK, 0.6)), dot]
}

/** Lines and areas that findings cover. */
export function extentMarks(
  extents: readonly { readonly kind: 'line' | 'area'; readonly points: readonly PlanPoint[] }[],
  toSheet: ToSheet,
): readonly PlanMark[] {
  return extents
    .filter(({ points }) => points.length > 1)
    .map(({ kind, points }) => ({
      kind: 'path',
      points: points.map(toSheet),
      closed: kind === 'area',
      pen: kind === 'line' ? solidPen('#B9B9B9', 4.5) : { colour: QUIET_INK, widthPt: 0.8, dashPt: [2.5, 1.8] },
      fill: kind === 'area' ? '#E4E4E0' : null,
    }))
}
