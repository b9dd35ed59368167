import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'

/** A calendar date as written, `YYYY-MM-DD`; 30 February is refused. */
export const calendarDateSchema = z.string().refine(isCalendarDate, {
  message: 'This is not a date in the calendar. Write it as year-month-day, for example 2026-03-14.',
})
export type CalendarDate = z.output<typeof calendarDateSchema>

/** True for a `YYYY-MM-DD` that the calendar has. */
export function isCalendarDate(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false
  try {
    Temporal.PlainDate.from(text, { overflow: 'reject' })
    return true
  } catch {
    return false
  }
}

/** An IANA time zone name that this machine's zone data knows. */
export const timeZoneSchema = z.string().refine(isTimeZone, {
  message: 'This time zone is not known. Use a name such as America/New_York.',
})

function isTimeZone(name: string): boolean {
  // Names only: the zone data would take a bare offset such as +02:00 too, which knows no daylight saving.
  if (!/^[A-Za-z][A-Za-z0-9_+-]*(\/[A-Za-z0-9_+-]+)*$/.test(name)) return false
  try {
    Temporal.Instant.fromEpochMilliseconds(0).toZonedDateTimeISO(name)
    return true
  } catch {
    return false
  }
}
