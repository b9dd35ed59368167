import type { Span, StripScale } from './strip-scale.ts'

/** A line on the ruler; those with a label are taller. */
export interface RulerMark {
  readonly x: number
  readonly label: string | null
}

const SECOND = 1000
const MINUTE = 60 * SECOND
const HOUR = 60 * MINUTE
const STEPS = [
  SECOND,
  2 * SECOND,
  5 * SECOND,
  10 * SECOND,
  30 * SECOND,
  MINUTE,
  2 * MINUTE,
  5 * MINUTE,
  10 * MINUTE,
  15 * MINUTE,
  30 * MINUTE,
  HOUR,
  2 * HOUR,
  6 * HOUR,
]
/** Least room between two labels, so that they never run together. */
const LABEL_ROOM_PX = 58
/** The same for a label that begins with a day. */
const DAY_LABEL_ROOM_PX = 100
/** Air after a label that is part of its room. */
const AIR_PX = 20
/** Least room between two lines. */
const LINE_ROOM_PX = 7

/**
 * Lines of the ruler, at whole local seconds, minutes or hours as the scale allows. Where the strip shows more than one
 * day, the first label of each day begins with it.
 *
 * @param offsetMinutesAt local time's offset east of UTC at an instant
 */
export function rulerMarks(scale: StripScale, offsetMinutesAt: (instantMs: number) => number): readonly RulerMark[] {
  const marks: RulerMark[] = []
  const days = new Set(scale.spans.map((span) => dayOf(span.fromMs + offsetMinutesAt(span.fromMs) * MINUTE)))
  let dayBefore = days.size > 1 ? null : [...days][0]
  let freeFrom = 0
  for (const span of scale.spans) {
    for (const { instantMs, localMs, labelled, step } of momentsOf(span, offsetMinutesAt(span.fromMs))) {
      const x = scale.xOf(instantMs)
      const isNewDay = dayOf(localMs) !== dayBefore
      const roomPx = isNewDay ? DAY_LABEL_ROOM_PX : LABEL_ROOM_PX
      const fits = labelled && x >= freeFrom && x + roomPx - AIR_PX <= span.toX
      marks.push({ x, label: fits ? `${isNewDay ? `${dayLabel(localMs)} ` : ''}${clockLabel(localMs, step)}` : null })
      if (!fits) continue
      freeFrom = x + roomPx
      dayBefore = dayOf(localMs)
    }
  }
  return marks
}

function dayOf(localMs: number): number {
  return Math.floor(localMs / (24 * HOUR))
}

const dayFormat = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' })

function dayLabel(localMs: number): string {
  return dayFormat.format(localMs)
}

function momentsOf(span: Span, offsetMinutes: number) {
  const pxPerMs = (span.toX - span.fromX) / Math.max(span.toMs - span.fromMs, 1)
  const step = STEPS.find((candidate) => candidate * pxPerMs >= LABEL_ROOM_PX) ?? 12 * HOUR
  const fine = STEPS.find((candidate) => candidate * pxPerMs >= LINE_ROOM_PX && step % candidate === 0) ?? step
  const shift = offsetMinutes * MINUTE
  const moments = []
  for (let localMs = Math.ceil((span.fromMs + shift) / fine) * fine; localMs <= span.toMs + shift; localMs += fine) {
    moments.push({ instantMs: localMs - shift, localMs, labelled: localMs % step === 0, step })
  }
  return moments
}

function clockLabel(localMs: number, step: number): string {
  const iso = new Date(localMs).toISOString()
  return step < MINUTE ? iso.slice(11, 19) : iso.slice(11, 16)
}
