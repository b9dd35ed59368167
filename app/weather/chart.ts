/** What a mark of a chart stands for; screen and paper each give it their own colour. */
export type ChartTone =
  | 'ink'
  | 'quiet'
  | 'grid'
  | 'loss'
  | 'gap'
  | 'mean'
  | 'gust'
  | 'paper'
  | 'speed-1'
  | 'speed-2'
  | 'speed-3'
  | 'speed-4'
  | 'speed-5'

export interface ChartPoint {
  readonly xPt: number
  readonly yPt: number
}

export interface ChartPath {
  readonly kind: 'path'
  readonly points: readonly ChartPoint[]
  readonly closed: boolean
  readonly stroke: ChartTone | null
  readonly widthPt: number
  readonly dashed: boolean
  readonly fill: ChartTone | null
}

export interface ChartText {
  readonly kind: 'text'
  readonly at: ChartPoint
  readonly text: string
  readonly sizePt: number
  readonly align: 'start' | 'middle' | 'end'
  readonly tone: ChartTone
}

/** A chart as marks in points from its top left corner, drawn in order. */
export interface Chart {
  readonly widthPt: number
  readonly heightPt: number
  readonly marks: readonly (ChartPath | ChartText)[]
  /** The chart in words, for people who can't see it. */
  readonly alt: string
}

/** An open line. */
export function line(
  points: readonly ChartPoint[],
  stroke: ChartTone,
  style: { widthPt?: number; dashed?: boolean } = {},
): ChartPath {
  const { widthPt = 0.6, dashed = false } = style
  return { kind: 'path', points, closed: false, stroke, widthPt, dashed, fill: null }
}

/** A filled shape, with or without an outline. */
export function shape(
  points: readonly ChartPoint[],
  fill: ChartTone | null,
  stroke: ChartTone | null = null,
): ChartPath {
  return { kind: 'path', points, closed: true, stroke, widthPt: 0.6, dashed: false, fill }
}

/** A filled rectangle between two corners. */
export function box(from: ChartPoint, to: ChartPoint, fill: ChartTone): ChartPath {
  return shape([from, { xPt: to.xPt, yPt: from.yPt }, to, { xPt: from.xPt, yPt: to.yPt }], fill)
}

/** A few words; `at` is on their baseline. */
export function words(
  at: ChartPoint,
  text: string,
  style: { align?: ChartText['align']; tone?: ChartTone; sizePt?: number } = {},
): ChartText {
  const { align = 'start', tone = 'quiet', sizePt = 7.5 } = style
  return { kind: 'text', at, text, sizePt, align, tone }
}
