import type { Job } from '../job/job.ts'
import type { GeoPoint } from '../job/places.ts'
import { placeOfPhoto } from './photo-zone.ts'
import type { Photo } from './photo.ts'
import { daylightAround, sunAt, type SunPlace } from './sun.ts'

/** What the sun says of a photo's time. */
export type SunCheck =
  | { readonly kind: 'no-time' }
  | { readonly kind: 'no-place' }
  | { readonly kind: 'day'; readonly sun: SunPlace }
  | { readonly kind: 'twilight'; readonly sun: SunPlace; readonly words: string }
  | { readonly kind: 'night'; readonly sun: SunPlace; readonly words: string }

/** `sunAt` gives a quarter of a degree below the horizon while the sun's edge is up, and more than 0.8 once it is down. */
const EDGE_DEG = -0.5
/** The end of civil twilight, after which a picture needs a lamp. */
const DARK_DEG = -6
/** A picture at least this bright was not taken in the dark with a flash. Found by trying; no source. */
const PLAINLY_LIT = 0.28
const MINUTE_MS = 60_000
/** The sun moves 1.25 degrees in this time, so what is well above dark at one end is not dark at the other. */
const STEP_MS = 5 * MINUTE_MS
const STEP_DEG = 1.5

/** The sun at a photo's time and place, and in words how far that is from daylight. */
export function sunCheck(photo: Photo, job: Job): SunCheck {
  const { instantMs } = photo.time
  if (instantMs === null) return { kind: 'no-time' }
  const place = placeOfPhoto(photo.file, job)
  if (place === null) return { kind: 'no-place' }
  const sun = sunAt(instantMs, place)
  if (sun.elevationDeg > EDGE_DEG) return { kind: 'day', sun }
  return { kind: sun.elevationDeg > DARK_DEG ? 'twilight' : 'night', sun, words: darkWords(instantMs, place) }
}

/** Photos that are in the dark by their clock; a quick look that spares the rest the long one. */
export function photosAtNight(photos: readonly Photo[], job: Job): readonly Photo[] {
  const known = new Map<string, boolean>()
  return photos.filter((photo) => {
    const { instantMs } = photo.time
    const place = placeOfPhoto(photo.file, job)
    if (instantMs === null || place === null) return false
    const step = Math.round(instantMs / STEP_MS)
    const key = `${step} ${place.latDeg.toFixed(2)} ${place.lonDeg.toFixed(2)}`
    let mayBeDark = known.get(key)
    if (mayBeDark === undefined) {
      mayBeDark = sunAt(step * STEP_MS, place).elevationDeg < DARK_DEG + STEP_DEG
      known.set(key, mayBeDark)
    }
    return mayBeDark && sunAt(instantMs, place).elevationDeg <= DARK_DEG
  })
}

/** True when a photo's picture is too bright for night; false while nobody measured it. */
export function isPlainlyLit({ brightness }: Photo): boolean {
  return brightness !== undefined && brightness >= PLAINLY_LIT
}

/** True when the sun is up at an instant and a place. */
export function isDaylight(instantMs: number, place: GeoPoint): boolean {
  return sunAt(instantMs, place).elevationDeg > EDGE_DEG
}

/** "3 h 12 min after sunset", "40 min before sunrise", or that the sun doesn't rise there on that day. */
function darkWords(instantMs: number, place: GeoPoint): string {
  const { last, next } = daylightAround(instantMs, place)
  const sinceSet = last?.what === 'set' ? instantMs - last.atMs : Infinity
  const untilRise = next?.what === 'rose' ? next.atMs - instantMs : Infinity
  if (sinceSet === Infinity && untilRise === Infinity) return 'in polar night, when the sun does not rise there'
  return sinceSet <= untilRise ? `${spanWords(sinceSet)} after sunset` : `${spanWords(untilRise)} before sunrise`
}

function spanWords(ms: number): string {
  const minutes = Math.round(ms / MINUTE_MS)
  const hours = Math.floor(minutes / 60)
  return hours === 0 ? `${minutes} min` : `${hours} h ${String(minutes % 60).padStart(2, '0')} min`
}
