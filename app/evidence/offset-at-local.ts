import { Temporal } from 'temporal-polyfill'

/** What a change of clocks did to a local time: left it out, or let it come twice. */
export type ChangeOfClocks = 'skipped' | 'repeated'

/** Which of the two hours of a local time that comes twice. */
export type HourPass = 'first' | 'second'

/** A zone's offset at a local time, and whether a change of clocks touches that time. */
export interface OffsetAtLocal {
  readonly offsetMinutes: number
  readonly change: ChangeOfClocks | null
}

const MINUTE_MS = 60_000
const DAY_MS = 86_400_000

/** Offsets of days around which a zone changes nothing; null for days that need a closer look. */
const steadyDays = new Map<string, number | null>()

/**
 * The UTC offset of a zone at a local time, minutes east.
 *
 * A time that a change of clocks skips or repeats is taken as RFC 5545 section 3.3.5 takes it: skipped, by the offset
 * before the change; repeated, as the first of the two unless `pass` says the second.
 *
 * @param localAsUtcMs the local date and time as if it were UTC, milliseconds since 1970
 * @param zone an IANA name; null, or a name that this machine doesn't know, gives null
 */
export function offsetAtLocal(localAsUtcMs: number, zone: string | null, pass: HourPass | null): OffsetAtLocal | null {
  if (zone === null) return null
  try {
    const steady = steadyOffset(zone, Math.floor(localAsUtcMs / DAY_MS))
    return steady === null ? nearChange(localAsUtcMs, zone, pass) : { offsetMinutes: steady, change: null }
  } catch {
    return null
  }
}

/** The wall clock in a zone at an instant, as if it were UTC, milliseconds since 1970; null for a zone not known. */
export function wallClockMs(instantMs: number, zone: string): number | null {
  try {
    const offset = steadyOffset(zone, Math.floor(instantMs / DAY_MS)) ?? offsetAtInstant(instantMs, zone)
    return instantMs + offset * MINUTE_MS
  } catch {
    return null
  }
}

function offsetAtInstant(instantMs: number, zone: string): number {
  const at = Temporal.Instant.fromEpochMilliseconds(instantMs).toZonedDateTimeISO(zone)
  return Math.round(at.offsetNanoseconds / 6e10)
}

/** Offsets reach from -12 to +14 hours, so a local day lies between the days before and after it in UTC. */
function steadyOffset(zone: string, day: number): number | null {
  const key = `${zone} ${day}`
  const known = steadyDays.get(key)
  if (known !== undefined) return known
  const before = offsetAtInstant((day - 1) * DAY_MS, zone)
  const found = before === offsetAtInstant((day + 2) * DAY_MS, zone) ? before : null
  steadyDays.set(key, found)
  return found
}

function nearChange(localAsUtcMs: number, zone: string, pass: HourPass | null): OffsetAtLocal {
  const local = Temporal.Instant.fromEpochMilliseconds(localAsUtcMs).toZonedDateTimeISO('UTC').toPlainDateTime()
  const by = (disambiguation: 'earlier' | 'later') => local.toZonedDateTime(zone, { disambiguation })
  const earlier = by('earlier')
  const later = by('later')
  const offsetOf = (at: Temporal.ZonedDateTime) => Math.round((localAsUtcMs - at.epochMilliseconds) / MINUTE_MS)
  if (earlier.epochMilliseconds === later.epochMilliseconds) return { offsetMinutes: offsetOf(earlier), change: null }
  // Behind a skipped hour the zone has the new offset, while the camera still had the old one: that is the later instant.
  if (!earlier.toPlainDateTime().equals(local)) return { offsetMinutes: offsetOf(later), change: 'skipped' }
  return { offsetMinutes: offsetOf(pass === 'second' ? later : earlier), change: 'repeated' }
}
