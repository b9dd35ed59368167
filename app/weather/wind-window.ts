import { Temporal } from 'temporal-polyfill'
import type { CalendarDate } from '../job/calendar.ts'

const HOUR_MS = 3_600_000

/** A stretch of time, end not included, and the day of loss within it. */
export interface WindWindow {
  readonly startMs: number
  readonly endMs: number
  readonly lossStartMs: number
  readonly lossEndMs: number
}

/** The day of loss by local midnights, and so many hours before and after. Days of a clock change have 23 or 25 hours. */
export function windWindow(
  lossDate: CalendarDate,
  { zone, hoursBefore, hoursAfter }: { zone: string; hoursBefore: number; hoursAfter: number },
): WindWindow {
  const day = Temporal.PlainDate.from(lossDate)
  const midnight = (date: Temporal.PlainDate) => date.toZonedDateTime(zone).epochMilliseconds
  const lossStartMs = midnight(day)
  const lossEndMs = midnight(day.add({ days: 1 }))
  return {
    startMs: lossStartMs - hoursBefore * HOUR_MS,
    endMs: lossEndMs + hoursAfter * HOUR_MS,
    lossStartMs,
    lossEndMs,
  }
}
