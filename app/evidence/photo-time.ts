import { Temporal } from 'temporal-polyfill'
import { z } from 'zod'

/** Local wall-clock time without a zone, ISO 8601 with optional fraction: `2026-03-14T09:26:53.5`. */
const localTimeSchema = z.string().regex(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}(\.\d{1,9})?$/)

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

/** Where a photo's UTC offset comes from, best first. */
export const timeBasisSchema = z.enum(['camera-offset', 'gps-time', 'place-zone', 'job-zone', 'unknown'])
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

/** The widest real-world UTC offsets are -12:00 and +14:00; GPS-derived offsets outside this are not believed. */
const QUARTER_HOUR_MS = 15 * 60_000

/**
 * Turns what a camera wrote into an instant.
 *
 * Order of trust: the offset the camera wrote; an offset inferred from GPS time when local time and GPS time differ by
 * within 5 minutes of a whole quarter hour (a GPS fix can be minutes old, so GPS time is used for the offset only);
 * the zone at the photo's place; the job's zone. Without any of these the instant stays unknown.
 *
 * @param written what the camera wrote
 * @param given `placeZone` and `jobZone` are IANA names or null; `correctionMs` is the camera's clock correction
 */
export function resolvePhotoTime(
  written: WrittenTime,
  given: { placeZone: string | null; jobZone: string | null; correctionMs: number },
): PhotoTime {
  const { correctionMs } = given
  if (written.local === null) {
    return { basis: 'unknown', offsetMinutes: null, correctionMs, instantMs: null }
  }
  const local = Temporal.PlainDateTime.from(written.local)
  const localAsUtcMs = local.toZonedDateTime('UTC').epochMilliseconds
  const at = (basis: TimeBasis, offsetMinutes: number): PhotoTime => ({
    basis,
    offsetMinutes,
    correctionMs,
    instantMs: localAsUtcMs - offsetMinutes * 60_000 + correctionMs,
  })
  if (written.offsetMinutes !== null) return at('camera-offset', written.offsetMinutes)
  const inferred = offsetFromGps(localAsUtcMs + correctionMs, written.gpsUtcMs)
  if (inferred !== null) return at('gps-time', inferred)
  for (const [basis, zone] of [
    ['place-zone', given.placeZone],
    ['job-zone', given.jobZone],
  ] as const) {
    if (zone === null) continue
    const offsetNs = local.add({ milliseconds: correctionMs }).toZonedDateTime(zone).offsetNanoseconds
    return at(basis, Math.round(offsetNs / 6e10))
  }
  return { basis: 'unknown', offsetMinutes: null, correctionMs, instantMs: null }
}

function offsetFromGps(localAsUtcMs: number, gpsUtcMs: number | null): number | null {
  if (gpsUtcMs === null) return null
  const differenceMs = localAsUtcMs - gpsUtcMs
  const roundedMs = Math.round(differenceMs / QUARTER_HOUR_MS) * QUARTER_HOUR_MS
  const offsetMinutes = roundedMs / 60_000
  if (Math.abs(differenceMs - roundedMs) > 5 * 60_000) return null
  if (offsetMinutes < -12 * 60 || offsetMinutes > 14 * 60) return null
  return offsetMinutes
}
