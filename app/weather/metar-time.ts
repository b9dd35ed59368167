import { Temporal } from 'temporal-polyfill'
import type { CalendarDate } from '../job/calendar.ts'
import type { MetarWind } from './metar-report.ts'

const DAY_MS = 86_400_000
const HOUR_MS = 3_600_000

/**
 * The instant of a report that has a day and no month: the one nearest to noon of `near`. Months without that day are
 * passed over, so the 31st never becomes the 1st.
 */
export function reportInstant(report: Pick<MetarWind, 'day' | 'hour' | 'minute'>, near: CalendarDate): number {
  const reference = Temporal.PlainDate.from(near)
  const noonMs = reference.toZonedDateTime({ timeZone: 'UTC', plainTime: '12:00' }).epochMilliseconds
  const instants = [-2, -1, 0, 1, 2].flatMap((months) => {
    const month = reference.with({ day: 1 }).add({ months })
    if (report.day > month.daysInMonth) return []
    return month.with({ day: report.day }).toZonedDateTime({ timeZone: 'UTC' }).epochMilliseconds
  })
  const atMs = (dayMs: number) => dayMs + report.hour * HOUR_MS + report.minute * 60_000
  return instants.map(atMs).reduce((best, next) => (Math.abs(next - noonMs) < Math.abs(best - noonMs) ? next : best))
}

/**
 * The instant of a peak wind: the last one at its hour and minute, or its minute, that is not after the report. Near
 * midnight that is the day before.
 */
export function peakInstant(peak: { readonly hour: number | null; readonly minute: number }, reportMs: number): number {
  const step = peak.hour === null ? HOUR_MS : DAY_MS
  const intoStep = (peak.hour ?? 0) * HOUR_MS + peak.minute * 60_000
  const at = Math.floor(reportMs / step) * step + intoStep
  return at > reportMs ? at - step : at
}
