import type { CameraPosition } from '../../../../app/evidence/photo.ts'

const PATTERN = /^([+-]\d{2,6}(?:\.\d+)?)([+-]\d{3,7}(?:\.\d+)?)([+-]\d+(?:\.\d+)?)?(?:CRS[^/]*)?\/?$/

/**
 * Reads a place as ISO 6709 annex H writes it: `+32.0929+034.8620+028.516/`; degrees, degrees and minutes, or degrees,
 * minutes and seconds, told apart by their digits. Null for anything else, and for 0, 0, which receivers without a fix write.
 */
export function readIso6709(text: string): CameraPosition | null {
  const [, latitude = '', longitude = '', altitude] = PATTERN.exec(text.trim()) ?? []
  const latDeg = degreesOf(latitude, 2)
  const lonDeg = degreesOf(longitude, 3)
  if (latDeg === null || lonDeg === null || Math.abs(latDeg) > 90 || Math.abs(lonDeg) > 180) return null
  if (latDeg === 0 && lonDeg === 0) return null
  return { latDeg, lonDeg, altitudeM: altitude === undefined ? null : Number(altitude), errorM: null }
}

function degreesOf(text: string, degreeDigits: 2 | 3): number | null {
  const [, sign, whole = '', fraction = ''] = /^([+-])(\d+)(\.\d+)?$/.exec(text) ?? []
  const extra = whole.length - degreeDigits
  if (sign === undefined || (extra !== 0 && extra !== 2 && extra !== 4)) return null
  const degrees = Number(whole.slice(0, degreeDigits) + (extra === 0 ? fraction : ''))
  const minutes = extra === 0 ? 0 : Number(whole.slice(degreeDigits, degreeDigits + 2) + (extra === 2 ? fraction : ''))
  const seconds = extra < 4 ? 0 : Number(whole.slice(degreeDigits + 2) + fraction)
  if (minutes >= 60 || seconds >= 60) return null
  const size = degrees + minutes / 60 + seconds / 3600
  return sign === '-' && size > 0 ? -size : size
}
