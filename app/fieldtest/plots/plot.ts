import { plainText, solidPen, type PlanMark, type SheetPoint } from '../../roof/plan-sheet/marks.ts'
import { INK, QUIET_INK } from '../../roof/plan-sheet/inks.ts'

/** A plot as things to draw, points from its top left corner. Screens and the packet draw the same one. */
export interface Plot {
  readonly widthPt: number
  readonly heightPt: number
  readonly marks: readonly PlanMark[]
  /** What it shows, in words, for people who can't see it. */
  readonly alt: string
}

export const PLOT_TEXT_PT = 8

/** A scale from values to points along one direction. */
export interface Scale {
  readonly from: number
  readonly to: number
  readonly at: (value: number) => number
}

/** A straight scale: `from` stands at `startPt`, `to` at `endPt`. */
export function scaleOf(values: { from: number; to: number }, room: { startPt: number; endPt: number }): Scale {
  const perValue = (room.endPt - room.startPt) / (values.to - values.from)
  return { ...values, at: (value) => room.startPt + (value - values.from) * perValue }
}

/** Round figures up to and with `most`, `step` apart. */
export function ticks(most: number, step: number): readonly number[] {
  return Array.from({ length: Math.floor(most / step + 1e-9) + 1 }, (_, i) => i * step)
}

/** The step of 1, 2 or 5 times a power of ten that cuts `most` into about six. */
export function tickStep(most: number): number {
  const rough = most / 6
  const power = 10 ** Math.floor(Math.log10(rough))
  return power * ([1, 2, 5, 10].find((step) => step * power >= rough) ?? 10)
}

/** Small words on a plot. */
export function words(
  text: string,
  at: SheetPoint,
  look: { align: 'start' | 'middle' | 'end'; strong?: boolean; quiet?: boolean },
): PlanMark {
  const mark = plainText(text, at, {
    sizePt: PLOT_TEXT_PT,
    colour: look.quiet === true ? QUIET_INK : INK,
    strong: look.strong === true,
  })
  return mark.kind === 'text' ? { ...mark, align: look.align } : mark
}

/** Lines of the plot's frame. */
export const AXIS_PEN = solidPen(QUIET_INK, 0.7)
export const GRID_PEN = solidPen('#D9D9D4', 0.5)
/** The line that values are held against. */
export const LIMIT_PEN = { colour: '#D55E00', widthPt: 1.2, dashPt: [5, 2.5] } as const
