import { Temporal } from 'temporal-polyfill'
import type { PhotoTime } from './photo-time.ts'

/** The wall clock where the photo was taken, corrected; null when the instant or its offset is not known. */
export function localDateTime(time: PhotoTime): Temporal.PlainDateTime | null {
  if (time.instantMs === null || time.offsetMinutes === null) return null
  return Temporal.Instant.fromEpochMilliseconds(time.instantMs)
    .toZonedDateTimeISO('UTC')
    .toPlainDateTime()
    .add({ minutes: time.offsetMinutes })
}

/** The local calendar date on which the photo was taken, `YYYY-MM-DD`; null when not known. */
export function localDate(time: PhotoTime): string | null {
  return localDateTime(time)?.toPlainDate().toString() ?? null
}
