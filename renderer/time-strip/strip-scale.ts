/** A stretch of time that is drawn evenly. */
export interface Span {
  readonly fromMs: number
  readonly toMs: number
  readonly fromX: number
  readonly toX: number
}

/** A gap that is drawn short, with a visible break. */
export interface Break {
  readonly fromX: number
  readonly toX: number
  readonly gapMs: number
}

/** A window of time that a person zoomed to. */
export interface TimeWindow {
  readonly fromMs: number
  readonly toMs: number
}

/** Where instants stand on the strip. */
export interface StripScale {
  readonly widthPx: number
  readonly spans: readonly Span[]
  readonly breaks: readonly Break[]
  /** Pixels from the left for an instant; instants outside the strip come to its ends. */
  xOf(instantMs: number): number
  /** The instant at a place; inside a break it is interpolated over the gap. */
  instantOf(x: number): number
}

/** Gaps longer than this are drawn short. */
export const LONG_GAP_MS = 20 * 60_000
/** Air before the first and after the last moment of a stretch. */
const MARGIN_MS = 20_000
const BREAK_PX = 30
/** Breaks together take at most this share of the strip. */
const BREAKS_SHARE = 0.35
/** No stretch is drawn narrower than this, so that a single photo can be hit. */
const LEAST_SPAN_PX = 18

/**
 * Lays instants out on a strip: time runs evenly inside each stretch of work, and gaps longer than 20 minutes become
 * breaks of one small width.
 *
 * @param instants milliseconds since 1970, in any order
 * @param shape width in pixels, and the window to show; null shows everything
 */
export function stripScale(
  instants: readonly number[],
  { widthPx, window }: { widthPx: number; window: TimeWindow | null },
): StripScale {
  const stretches = stretchesOf(instants, window)
  const gaps = stretches.length - 1
  const breakPx = gaps > 0 ? Math.min(BREAK_PX, (widthPx * BREAKS_SHARE) / gaps) : 0
  const roomPx = Math.max(widthPx - gaps * breakPx, 0)
  const leastPx = Math.min(LEAST_SPAN_PX, stretches.length > 0 ? roomPx / (2 * stretches.length) : 0)
  const evenPx = roomPx - leastPx * stretches.length
  const totalMs = stretches.reduce((sum, stretch) => sum + stretch.toMs - stretch.fromMs, 0)
  const spans: Span[] = []
  let x = 0
  for (const stretch of stretches) {
    const share = totalMs > 0 ? (stretch.toMs - stretch.fromMs) / totalMs : 1 / stretches.length
    const toX = x + leastPx + evenPx * share
    spans.push({ ...stretch, fromX: x, toX })
    x = toX + breakPx
  }
  return { widthPx, spans, breaks: breaksBetween(spans), ...readings(spans) }
}

function stretchesOf(instants: readonly number[], window: TimeWindow | null): readonly TimeWindow[] {
  const moments = instants.toSorted((a, b) => a - b)
  if (window !== null) {
    const inside = moments.filter((moment) => moment >= window.fromMs && moment <= window.toMs)
    return splitAtGaps([window.fromMs, ...inside, window.toMs])
  }
  return splitAtGaps(moments).map(({ fromMs, toMs }) => ({ fromMs: fromMs - MARGIN_MS, toMs: toMs + MARGIN_MS }))
}

function splitAtGaps(moments: readonly number[]): readonly TimeWindow[] {
  const stretches: { fromMs: number; toMs: number }[] = []
  for (const moment of moments) {
    const last = stretches.at(-1)
    if (last === undefined || moment - last.toMs > LONG_GAP_MS) stretches.push({ fromMs: moment, toMs: moment })
    else last.toMs = moment
  }
  return stretches
}

function breaksBetween(spans: readonly Span[]): readonly Break[] {
  return spans.slice(1).flatMap((after, at) => {
    const before = spans[at]
    return before === undefined ? [] : [{ fromX: before.toX, toX: after.fromX, gapMs: after.fromMs - before.toMs }]
  })
}

function readings(spans: readonly Span[]): Pick<StripScale, 'xOf' | 'instantOf'> {
  /** Corners of the line that leads from time to place. */
  const corners = spans.flatMap((span) => [
    { ms: span.fromMs, x: span.fromX },
    { ms: span.toMs, x: span.toX },
  ])
  return {
    xOf: (instantMs) => along(corners, instantMs, { from: 'ms', to: 'x' }),
    instantOf: (x) => along(corners, x, { from: 'x', to: 'ms' }),
  }
}

interface Corner {
  readonly ms: number
  readonly x: number
}

function along(
  corners: readonly Corner[],
  value: number,
  { from, to }: { from: keyof Corner; to: keyof Corner },
): number {
  const first = corners[0]
  const last = corners.at(-1)
  if (first === undefined || last === undefined) return 0
  if (value <= first[from]) return first[to]
  const next = corners.findIndex((corner) => corner[from] >= value)
  const after = corners[next]
  const before = corners[next - 1]
  if (after === undefined || before === undefined) return last[to]
  const length = after[from] - before[from]
  const share = length === 0 ? 0 : (value - before[from]) / length
  return before[to] + share * (after[to] - before[to])
}

/** True when an instant lies in the stretch that the strip shows. */
export function isInSight(instantMs: number, scale: StripScale): boolean {
  const first = scale.spans[0]
  const last = scale.spans.at(-1)
  return first !== undefined && last !== undefined && instantMs >= first.fromMs && instantMs <= last.toMs
}
