import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'
import { isCalendarDate } from '../job/calendar.ts'

/** Local wall-clock time without a zone that the calendar and the clock have, ISO 8601: `2026-03-14T09:26:53.5`. */
const localTimeSchema = z
  .string()
  .regex(/^\d{4}-\d{2}-\d{2}T([01]\d|2[0-3]):[0-5]\d:[0-5]\d(\.\d{1,9})?$/)
  .refine((text) => isCalendarDate(text.slice(0, 10)))

/** What the camera wrote about time, read but not interpreted. */
export const writtenTimeSchema = z.object({
  /** Which tag it comes from, e.g. `DateTimeOriginal`; null when no believable date is in the file. */
  tag: z.string().nullable(),
  /** The tag's text exactly as written, also when it can't be believed. */
  raw: z.string().nullable(),
  local: localTimeSchema.nullable(),
  /** UTC offset that the camera wrote beside the time, minutes east. */
  offsetMinutes: z
    .number()
    .int()
    .min(-14 * 60)
    .max(14 * 60)
    .nullable(),
  /** GPS date and time, which are UTC, milliseconds since 1970. */
  gpsUtcMs: z.number().int().nullable(),
})
export type WrittenTime = z.output<typeof writtenTimeSchema>

/**
 * Where a photo's UTC offset comes from, best first. The last two before `unknown` belong to videos and their stills: a
 * start that a person set, and the container's own time.
 */
export const timeBasisSchema = z.enum([
  'camera-offset',
  'gps-time',
  'place-zone',
  'job-zone',
  'set-by-hand',
  'container-utc',
  'unknown',
])
export type TimeBasis = z.output<typeof timeBasisSchema>

/** The three things about time, kept apart: what was written, what was corrected, and the instant that follows. */
export const photoTimeSchema = z.object({
  basis: timeBasisSchema,
  offsetMinutes: z.number().int().nullable(),
  /** Added to what the camera's clock said, milliseconds; 0 when the camera is not corrected. */
  correctionMs: z.number().int(),
  /** Null when nothing is known of when the photo was taken. */
  instantMs: z.number().int().nullable(),
})
export type PhotoTime = z.output<typeof photoTimeSchema>

const MINUTE_MS = 60_000
const QUARTER_HOUR_MS = 15 * MINUTE_MS
/** A GPS fix can be this old when the camera writes it beside the time. */
const OLD_FIX_MS = 5 * MINUTE_MS
/** The widest UTC offsets in use are -12:00 and +14:00; an offset inferred outside them is not believed. */
const WIDEST_OFFSETS = { westMinutes: -12 * 60, eastMinutes: 14 * 60 }

/**
 * Turns what a camera wrote into an instant.
 *
 * Order of trust: the offset the camera wrote; an offset inferred from GPS time when local time and GPS time differ by
 * within 5 minutes of a whole quarter hour (a GPS fix can be minutes old, so GPS time is used for the offset only);
 * the zone at the photo's place; the job's zone. Without any of these the instant stays unknown.
 *
 * A local time that a change of clocks skips or repeats is taken as RFC 5545 section 3.3.5 takes it: skipped, by the
 * offset before the change; repeated, as the first of the two.
 *
 * @param written what the camera wrote
 * @param given `placeZone` and `jobZone` are IANA names or null, a zone that this machine doesn't know counts as null;
 *   `correctionMs` is the camera's clock correction
 */
export function resolvePhotoTime(
  written: WrittenTime,
  given: { placeZone: string | null; jobZone: string | null; correctionMs: number },
): PhotoTime {
  const { correctionMs } = given
  const unknown: PhotoTime = { basis: 'unknown', offsetMinutes: null, correctionMs, instantMs: null }
  if (written.local === null) return unknown
  const corrected = Temporal.PlainDateTime.from(written.local).add({ milliseconds: correctionMs })
  const at = (basis: TimeBasis, offsetMinutes: number): PhotoTime => ({
    basis,
    offsetMinutes,
    correctionMs,
    instantMs: asUtcMs(corrected) - offsetMinutes * MINUTE_MS,
  })
  if (written.offsetMinutes !== null) return at('camera-offset', written.offsetMinutes)
  const inferred = offsetFromGps(asUtcMs(corrected), written.gpsUtcMs)
  if (inferred !== null) return at('gps-time', inferred)
  const inPlace = offsetInZone(corrected, given.placeZone)
  if (inPlace !== null) return at('place-zone', inPlace)
  const inJob = offsetInZone(corrected, given.jobZone)
  return inJob === null ? unknown : at('job-zone', inJob)
}

function asUtcMs(local: Temporal.PlainDateTime): number {
  return local.toZonedDateTime('UTC').epochMilliseconds
}

function offsetInZone(local: Temporal.PlainDateTime, zone: string | null): number | null {
  if (zone === null) return null
  try {
    // Not the zone's offset at that instant: behind a skipped hour that is the new one, while the camera still had the old.
    const instantMs = local.toZonedDateTime(zone, { disambiguation: 'compatible' }).epochMilliseconds
    return Math.round((asUtcMs(local) - instantMs) / MINUTE_MS)
  } catch {
    return null
  }
}

function offsetFromGps(localAsUtcMs: number, gpsUtcMs: number | null): number | null {
  if (gpsUtcMs === null) return null
  const differenceMs = localAsUtcMs - gpsUtcMs
  const quarterHours = Math.round(differenceMs / QUARTER_HOUR_MS)
  if (Math.abs(differenceMs - quarterHours * QUARTER_HOUR_MS) > OLD_FIX_MS) return null
  // Rounding a small negative number gives -0, which is not what anyone means by UTC.
  const offsetMinutes = quarterHours * 15 + 0
  return offsetMinutes < WIDEST_OFFSETS.westMinutes || offsetMinutes > WIDEST_OFFSETS.eastMinutes ? null : offsetMinutes
}
