import { Temporal } from 'temporal-polyfill'
import { offsetAtLocal } from '../evidence/offset-at-local.ts'
import { dateWords, instantWords } from '../packet/format/times.ts'
import type { Rule } from '../rules/rule.ts'
import type { ClockStart } from './job-clocks.ts'

type ClockRule = Extract<Rule, { kind: 'clock' }>
type ClockFigures = ClockRule['data']
/** Name of the holiday on a day `YYYY-MM-DD`, or null. */
export type HolidayOn = (date: string) => string | null

/** Where a count ends, and how it was counted, one sentence each. */
export type ClockEnd =
  | { readonly kind: 'day'; readonly date: string; readonly working: readonly string[] }
  | { readonly kind: 'instant'; readonly atMs: number; readonly words: string; readonly working: readonly string[] }
  /** Hours can't be counted from a day alone. */
  | { readonly kind: 'needs-time' }

/**
 * Counts a clock from its start.
 *
 * Days: the day of the start is not counted, and a last day on a weekend or holiday is named, not moved. Months and
 * years: the same day of the month; where that month has no such day, its last one, which is the earlier of the two
 * readings. Hours: elapsed ones, so that a change of clocks moves the wall time. That these are the usual ways to
 * count is common practice, no source; a statute can say otherwise.
 *
 * @throws RangeError for a day out of the calendar's range
 */
export function clockEnd(figures: ClockFigures, start: ClockStart, holidayOn: HolidayOn): ClockEnd {
  const first = Temporal.PlainDate.from(start.date)
  const { count, unit } = figures
  switch (unit) {
    case 'hours':
      return afterHours(count, start)
    case 'calendar-days':
      return onDay(first.add({ days: count }), { holidayOn, working: [notCounted(start)] })
    case 'business-days':
      return afterBusinessDays(count, start, holidayOn)
    case 'months':
    case 'years': {
      const end = first.add({ [unit]: count })
      const shorter =
        end.day === first.day
          ? []
          : [`${monthWords(end)} has no day ${first.day}; its last day is taken, the earlier of two readings.`]
      return onDay(end, { holidayOn, working: ['Counted to the same day of the month.', ...shorter] })
    }
  }
}

function afterHours(count: number, { date, time, timeZone }: ClockStart): ClockEnd {
  if (time === null) return { kind: 'needs-time' }
  const localMs = Temporal.PlainDateTime.from(`${date}T${time}`).toZonedDateTime('UTC').epochMilliseconds
  const at = offsetAtLocal(localMs, timeZone, null)
  const startMs = localMs - (at?.offsetMinutes ?? 0) * 60_000
  const atMs = startMs + count * 3_600_000
  const offsetAt = (ms: number) =>
    Temporal.Instant.fromEpochMilliseconds(ms).toZonedDateTimeISO(timeZone).offsetNanoseconds
  const working = [`${count} hours elapse after ${instantWords(startMs, timeZone)}.`]
  if (at?.change === 'repeated') working.push('The start’s hour comes twice; the first is taken, the earlier reading.')
  if (at?.change === 'skipped') working.push('The clocks are set forward over the start; the hour after it is taken.')
  if (offsetAt(startMs) !== offsetAt(atMs)) {
    working.push('The clocks change in between, so the end stands at another time of day than the start.')
  }
  return { kind: 'instant', atMs, words: `${instantWords(atMs, timeZone)} (${timeZone})`, working }
}

function afterBusinessDays(count: number, start: ClockStart, holidayOn: HolidayOn): ClockEnd {
  const holidays: string[] = []
  let day = Temporal.PlainDate.from(start.date)
  for (let counted = 0; counted < count;) {
    day = day.add({ days: 1 })
    if (isWeekend(day)) continue
    const holiday = holidayOn(day.toString())
    if (holiday === null) counted += 1
    else holidays.push(`${dateWords(day.toString())} (${holiday})`)
  }
  const left = holidays.length === 0 ? 'No holiday lies in between.' : `Left out as holidays: ${holidays.join(', ')}.`
  return {
    kind: 'day',
    date: day.toString(),
    working: [notCounted(start), 'Saturdays and Sundays are left out.', left],
  }
}

function onDay(
  end: Temporal.PlainDate,
  { holidayOn, working }: { holidayOn: HolidayOn; working: readonly string[] },
): ClockEnd {
  const date = end.toString()
  const holiday = holidayOn(date)
  const name = end.dayOfWeek === 6 ? 'a Saturday' : end.dayOfWeek === 7 ? 'a Sunday' : holiday
  const moved =
    name === null
      ? []
      : [`The last day is ${name}; some laws move such a day to the next business day. It is not moved here.`]
  return { kind: 'day', date, working: [...working, ...moved] }
}

function isWeekend(day: Temporal.PlainDate): boolean {
  return day.dayOfWeek >= 6
}

function notCounted({ date }: ClockStart): string {
  return `${dateWords(date)} itself is not counted.`
}

function monthWords(day: Temporal.PlainDate): string {
  const [month = ''] = dateWords(day.toString()).split(' ')
  return `${month} ${day.year}`
}
