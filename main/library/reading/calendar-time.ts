/** A wall-clock reading that exists in the calendar. */
export type CalendarTime = {
  /** ISO 8601 without zone, with the fraction as written: `2026-03-14T09:26:53.05`. */
  local: string
  /** The same reading as if it were UTC, milliseconds since 1970. */
  asUtcMs: number
  /** What stood behind the time: `Z`, `+02:00` or ''. */
  zone: string
}

const PATTERN = /^(\d{4})[:-](\d{2})[:-](\d{2})[T ](\d{2}):(\d{2}):(\d{2})(?:\.(\d+))? ?(Z|[+-]\d{1,2}:?\d{2})?$/

/**
 * Reads `YYYY:MM:DD HH:MM:SS` (Exif) or `YYYY-MM-DDTHH:MM:SS[.fraction][zone]` (XMP).
 * @param fraction digits behind the second that stand in a tag of their own; '05' is five hundredths
 * @returns null where the text is something else or no such day and time exist
 */
export function readCalendarTime(text: string, fraction: string): CalendarTime | null {
  const found = PATTERN.exec(text.trim())
  if (found === null) return null
  const [, year = '', month = '', day = '', hour = '', minute = '', second = '', inlineFraction = '', zone = ''] = found
  const secondsMs = Date.UTC(Number(year), Number(month) - 1, Number(day), Number(hour), Number(minute), Number(second))
  const local = `${year}-${month}-${day}T${hour}:${minute}:${second}`
  if (Number.isNaN(secondsMs) || new Date(secondsMs).toISOString().slice(0, 19) !== local) return null
  const digits = (inlineFraction || (/^\d+$/.exec(fraction.trim())?.[0] ?? '')).slice(0, 9)
  return {
    local: digits === '' ? local : `${local}.${digits}`,
    asUtcMs: secondsMs + Math.round(Number(`0.${digits || '0'}`) * 1000),
    zone,
  }
}

/** The first cameras that write files came about 1990; a date before is a clock that was never set. */
const FIRST_YEAR_MS = Date.UTC(1990, 0, 1)
const DAY_MS = 86_400_000

/**
 * Whether a photo that is here at `nowMs` can have been taken then. A day is granted on top: a wall clock can be up to
 * 14 hours ahead of UTC.
 */
export function canBeTaken(asUtcMs: number, nowMs: number): boolean {
  return asUtcMs >= FIRST_YEAR_MS && asUtcMs <= nowMs + DAY_MS
}

/**
 * Strictly `+HH:MM`, `-HH:MM` or `Z`, from -12:00 to +14:00, the widest offsets in use.
 * @returns minutes east of UTC, null for anything else
 */
export function readOffsetMinutes(text: string): number | null {
  if (text === 'Z') return 0
  const found = /^([+-])(\d{2}):(\d{2})$/.exec(text)
  if (found === null) return null
  const [, sign, hours, minutes] = found
  const size = Number(hours) * 60 + Number(minutes)
  if (Number(minutes) > 59 || size > (sign === '-' ? 12 * 60 : 14 * 60)) return null
  return sign === '-' && size > 0 ? -size : size
}
