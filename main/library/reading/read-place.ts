import type { CameraPosition, FileProblem, PhotoFile } from '../../../app/evidence/photo.ts'
import { type ExifTagKey, type ExifValues, numbersOf, textOf } from './exif-tags.ts'
import { asWritten } from './written-text.ts'

/**
 * Reads where the camera says it was, WGS84 degrees and metres. Half a position, one without its hemisphere letter, one
 * out of range and 0/0 (what a receiver without a fix writes) are not believed; each is told as a problem.
 */
export function readPosition(exif: ExifValues): { position: CameraPosition | null; problems: FileProblem[] } {
  if (exif.latitude === undefined && exif.longitude === undefined) return { position: null, problems: [] }
  const latDeg = readDegrees(exif, { value: 'latitude', ref: 'latitudeRef', letters: 'NS', limit: 90 })
  const lonDeg = readDegrees(exif, { value: 'longitude', ref: 'longitudeRef', letters: 'EW', limit: 180 })
  if (latDeg === null || lonDeg === null) return refused(exif, 'it is incomplete, unreadable or out of range')
  if (latDeg === 0 && lonDeg === 0) return refused(exif, 'cameras write 0, 0 when they have no fix')
  const position = { latDeg, lonDeg, altitudeM: readAltitude(exif), errorM: readError(exif) }
  return { position, problems: [] }
}

function refused(exif: ExifValues, why: string): { position: null; problems: FileProblem[] } {
  const isEmpty = [exif.latitude, exif.longitude].every(
    (value) => typeof value !== 'string' && !value?.some(Number.isFinite),
  )
  if (isEmpty) return { position: null, problems: [{ about: 'position', text: 'The camera left the position empty.' }] }
  const stated = (['latitudeRef', 'latitude', 'longitudeRef', 'longitude'] satisfies ExifTagKey[])
    .map((key) => asWritten(exif[key] ?? ''))
    .filter((text) => text !== '')
    .join(' ')
  return { position: null, problems: [{ about: 'position', text: `The position "${stated}" is not used: ${why}.` }] }
}

/** Degrees, minutes and seconds, or fewer of them with decimals; the letter gives the sign. */
function readDegrees(
  exif: ExifValues,
  tag: { value: ExifTagKey; ref: ExifTagKey; letters: string; limit: number },
): number | null {
  const [degrees = NaN, minutes = 0, seconds = 0] = numbersOf(exif, tag.value)
  const letter = textOf(exif, tag.ref).trim().slice(0, 1).toUpperCase()
  const size = degrees + minutes / 60 + seconds / 3600
  const isSound = degrees >= 0 && minutes >= 0 && minutes <= 60 && seconds >= 0 && seconds <= 60
  if (!isSound || !(size <= tag.limit) || letter === '' || !tag.letters.includes(letter)) return null
  return letter === tag.letters[1] && size > 0 ? -size : size
}

/** GPSAltitudeRef: 0 above and 1 below sea level; Exif 3.0 adds 2 above and 3 below the ellipsoid. */
function readAltitude(exif: ExifValues): number | null {
  const [altitude = NaN] = numbersOf(exif, 'altitude')
  if (!Number.isFinite(altitude)) return null
  const [reference = 0] = numbersOf(exif, 'altitudeRef')
  const isBelow = reference === 1 || reference === 3
  return isBelow && altitude !== 0 ? -Math.abs(altitude) : altitude
}

function readError(exif: ExifValues): number | null {
  const [errorM = NaN] = numbersOf(exif, 'hPositioningError')
  return Number.isFinite(errorM) && errorM > 0 ? errorM : null
}

/** Reads where the camera says it pointed, degrees clockwise from north; 360 is 0. */
export function readDirection(exif: ExifValues): { direction: PhotoFile['direction']; problems: FileProblem[] } {
  const stated = exif.imgDirection
  if (stated === undefined) return { direction: null, problems: [] }
  const [azimuthDeg = NaN] = numbersOf(exif, 'imgDirection')
  if (!(azimuthDeg >= 0 && azimuthDeg <= 360)) {
    const text = `The direction "${asWritten(stated)}" is not used: it is not between 0 and 360 degrees.`
    return { direction: null, problems: [{ about: 'direction', text }] }
  }
  const letter = textOf(exif, 'imgDirectionRef').trim().toUpperCase()
  const reference = letter === 'T' ? 'true' : letter === 'M' ? 'magnetic' : 'not-stated'
  return { direction: { azimuthDeg: azimuthDeg === 360 ? 0 : azimuthDeg, reference }, problems: [] }
}
