import type { Mark, MeasureMark, PicturePoint, ScaleMark } from '../markup.ts'

/** How well the end of a line is placed in a picture, pixels of the original. Common practice, no source. */
const END_PX = 4
const STEPS_IN = [0.1, 0.25, 0.5, 1, 2, 5, 10, 25, 50, 100] as const

/** A length taken from a picture. */
export interface MeasuredLength {
  /** Not rounded, inches. */
  readonly lengthIn: number
  /** The step to which it is worth printing, inches: what both ends' placing allows. */
  readonly stepIn: number
}

/**
 * The length of a measured line by a scale line of the same picture: the ratio of their lengths in pixels times the known
 * length. It holds only in the plane of the scale line and where the camera looked square at it.
 */
export function measuredLength(measure: MeasureMark, scale: ScaleMark): MeasuredLength {
  const inchesPerPx = scale.lengthIn / distancePx(scale)
  const least = inchesPerPx * END_PX * 2
  return {
    lengthIn: distancePx(measure) * inchesPerPx,
    stepIn: STEPS_IN.find((step) => step >= least) ?? Math.ceil(least / 100) * 100,
  }
}

/** "3.4 in": rounded to what can be told from the picture. */
export function lengthWords({ lengthIn, stepIn }: MeasuredLength): string {
  const decimals = stepIn === 0.25 ? 2 : stepIn < 1 ? 1 : 0
  return `${(Math.round(lengthIn / stepIn) * stepIn).toFixed(decimals)} in`
}

/** "12 in", as typed. */
export function knownLengthWords(scale: ScaleMark): string {
  return `${Number(scale.lengthIn.toFixed(3))} in`
}

/** Names of the scale lines of a photo: "S1", "S2", by their order. */
export function scaleNames(marks: readonly Mark[]): ReadonlyMap<string, string> {
  return new Map(marks.filter(({ kind }) => kind === 'scale').map(({ id }, index) => [id, `S${index + 1}`]))
}

/** The scale line that a measured line rests on. */
export function scaleOf(measure: MeasureMark, marks: readonly Mark[]): ScaleMark | null {
  for (const mark of marks) if (mark.kind === 'scale' && mark.id === measure.scaleId) return mark
  return null
}

function distancePx({ from, to }: { readonly from: PicturePoint; readonly to: PicturePoint }): number {
  return Math.hypot(to.xPx - from.xPx, to.yPx - from.yPx)
}
