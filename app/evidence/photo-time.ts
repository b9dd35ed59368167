import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'
import { isCalendarDate } from '../job/calendar.ts'
import { offsetAtLocal, type HourPass, type OffsetAtLocal } from './offset-at-local.ts'

/** Local wall-clock time without a zone that the calendar and the clock have, ISO 8601: `2026-03-14T09:26:53.5`. */
export const localTimeSchema = z
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
  /** Set where the offset comes from a zone whose change of clocks skips or repeats this local time. */
  changeOfClocks: z.exactOptional(z.enum(['skipped', 'repeated'])),
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
 * Where a change of clocks skips or repeats the local time, `changeOfClocks` says so; see `offsetAtLocal`.
 *
 * @param written what the camera wrote
 * @param given `placeZone` and `jobZone` are IANA names or null, a zone that this machine doesn't know counts as null;
 *   `correctionMs` is the camera's clock correction; `pass` is the hour that a person chose where it comes twice
 */
export function resolvePhotoTime(
  written: WrittenTime,
  given: { placeZone: string | null; jobZone: string | null; correctionMs: number; pass?: HourPass | null },
): PhotoTime {
  const { correctionMs, placeZone, jobZone, pass = null } = given
  const unknown: PhotoTime = { basis: 'unknown', offsetMinutes: null, correctionMs, instantMs: null }
  if (written.local === null) return unknown
  const localMs = localAsUtcMs(written.local) + correctionMs
  const at = (basis: TimeBasis, { offsetMinutes, change }: OffsetAtLocal): PhotoTime => ({
    basis,
    offsetMinutes,
    correctionMs,
    instantMs: localMs - offsetMinutes * MINUTE_MS,
    ...(change === null ? {} : { changeOfClocks: change }),
  })
  const plain = (offsetMinutes: number) => ({ offsetMinutes, change: null })
  if (written.offsetMinutes !== null) return at('camera-offset', plain(written.offsetMinutes))
  const inferred = offsetFromGps(localMs, written.gpsUtcMs)
  if (inferred !== null) return at('gps-time', plain(inferred))
  const inPlace = offsetAtLocal(localMs, placeZone, pass)
  if (inPlace !== null) return at('place-zone', inPlace)
  const inJob = offsetAtLocal(localMs, jobZone, pass)
  return inJob === null ? unknown : at('job-zone', inJob)
}

/** Days already counted; a job has few, and thousands of photos in each. */
const dayStarts = new Map<string, number>()

/**
 * A local date and time as if it were UTC, whole milliseconds since 1970.
 *
 * @param local ISO 8601 without a zone, as `localTimeSchema` takes it
 */
export function localAsUtcMs(local: string): number {
  const day = local.slice(0, 10)
  let startMs = dayStarts.get(day)
  if (startMs === undefined) {
    startMs = Temporal.PlainDate.from(day).toZonedDateTime('UTC').epochMilliseconds
    dayStarts.set(day, startMs)
  }
  const seconds = Number(local.slice(11, 13)) * 3600 + Number(local.slice(14, 16)) * 60 + Number(local.slice(17))
  return startMs + Math.floor(seconds * 1000 + 1e-6)
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
