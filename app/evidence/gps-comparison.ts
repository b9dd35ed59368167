import type { JobSheet } from '../job/sheet.ts'
import { correctionFor } from './camera-clock.ts'
import { zoneOfPhoto } from './photo-zone.ts'
import type { Photo } from './photo.ts'

/** A camera's clock against the GPS time that it wrote itself. */
export interface GpsComparison {
  /** Middle value of what would have to be added to the camera's clock, milliseconds. */
  readonly correctionMs: number
  /** What is added now, for the photo in the middle. */
  readonly presentMs: number
  readonly leastMs: number
  readonly mostMs: number
  readonly count: number
  /** The photo in the middle. */
  readonly photo: Photo
}

/**
 * Compares a camera's clock with its own GPS time over all photos that have both; null where none has. The middle value
 * is taken, since a fix can be minutes old: single old fixes then weigh nothing. An old fix lags behind and never
 * runs ahead, so the true correction is the middle value or somewhat more.
 */
export function gpsComparison(photos: readonly Photo[], sheet: JobSheet): GpsComparison | null {
  const compared = photos
    .flatMap((photo) => {
      const { written } = photo.file
      if (written.gpsUtcMs === null) return []
      const correctionMs = correctionFor(written, written.gpsUtcMs, zoneOfPhoto(photo.file, sheet))
      return correctionMs === null ? [] : [{ photo, correctionMs }]
    })
    .sort((a, b) => a.correctionMs - b.correctionMs || a.photo.number - b.photo.number)
  const middle = compared[(compared.length - 1) >> 1]
  const least = compared[0]
  const most = compared.at(-1)
  if (middle === undefined || least === undefined || most === undefined) return null
  return {
    correctionMs: middle.correctionMs,
    presentMs: middle.photo.time.correctionMs,
    leastMs: least.correctionMs,
    mostMs: most.correctionMs,
    count: compared.length,
    photo: middle.photo,
  }
}
