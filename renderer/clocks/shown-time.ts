import { Temporal } from 'temporal-polyfill'

/** A moment that a clock in a photo shows, or what is wrong with what was typed. */
export type ShownTime = { readonly ok: true; readonly atMs: number } | { readonly ok: false; readonly error: string }

const HOW = 'Write it as 14:32:10, 14:32 or 2:32:10 pm.'

/**
 * The instant of a time that a clock shows: `14:32:10`, `14:32`, `2:32:10 pm`.
 *
 * @param shown `date` as year-month-day; `zone` an IANA name, `UTC` for a GPS clock
 */
export function shownTime(shown: { time: string; date: string; zone: string }): ShownTime {
  const match = /^\s*(\d{1,2}):(\d{2})(?::(\d{2}))?\s*(am|pm|a\.m\.|p\.m\.)?\s*$/i.exec(shown.time)
  if (match === null) return { ok: false, error: `"${shown.time.trim()}" is not a time of day. ${HOW}` }
  const [, hours = '', minutes = '', seconds = '0', half] = match
  const hour = hourOfDay(Number(hours), half)
  if (hour === null || Number(minutes) > 59 || Number(seconds) > 59)
    return { ok: false, error: `No clock shows "${shown.time.trim()}". ${HOW}` }
  try {
    const at = Temporal.PlainDate.from(shown.date.trim())
      .toPlainDateTime({ hour, minute: Number(minutes), second: Number(seconds) })
      .toZonedDateTime(shown.zone)
    return { ok: true, atMs: at.epochMilliseconds }
  } catch {
    return { ok: false, error: 'Write the date as year-month-day, such as 2026-03-14.' }
  }
}

function hourOfDay(hour: number, half: string | undefined): number | null {
  if (half === undefined) return hour <= 23 ? hour : null
  if (hour < 1 || hour > 12) return null
  const isAfternoon = half.toLowerCase().startsWith('p')
  return (hour % 12) + (isAfternoon ? 12 : 0)
}
