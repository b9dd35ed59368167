import { Temporal } from 'temporal-polyfill'
import type { CalendarDate } from '../../app/job/calendar.ts'

/** The dates so many days before and after a date. */
export function daysAround(
  date: CalendarDate,
  days: number,
): { readonly from: CalendarDate; readonly to: CalendarDate } {
  const middle = Temporal.PlainDate.from(date)
  return { from: middle.subtract({ days }).toString(), to: middle.add({ days }).toString() }
}
