import { Temporal } from 'temporal-polyfill'
import { offsetAtLocal } from '../evidence/offset-at-local.ts'
import type { PhotoId } from '../job/ids.ts'
import type { Reading } from './reading.ts'

const MINUTE_MS = 60_000

/**
 * When a tile was lifted, milliseconds since 1970: the time written down with it, taken on the house's clock; without
 * one the time of the first photo that shows it; null when neither is known.
 *
 * @param zone IANA name of the house's time zone
 */
export function readingInstantMs(
  { takenAt, photoIds }: Pick<Reading, 'takenAt' | 'photoIds'>,
  photos: readonly { readonly id: PhotoId; readonly time: { readonly instantMs: number | null } }[],
  zone: string,
): number | null {
  const written = takenAt === null ? null : instantOfWritten(takenAt, zone)
  if (written !== null) return written
  const shown = photos.flatMap(({ id, time }) => (photoIds.includes(id) ? (time.instantMs ?? []) : []))
  return shown.length === 0 ? null : Math.min(...shown)
}

/** A time with digits that no calendar has gives null. */
function instantOfWritten(takenAt: string, zone: string): number | null {
  try {
    const local = Temporal.PlainDateTime.from(takenAt, { overflow: 'reject' }).toZonedDateTime('UTC').epochMilliseconds
    const offset = offsetAtLocal(local, zone, null)
    return offset === null ? null : local - offset.offsetMinutes * MINUTE_MS
  } catch {
    return null
  }
}
