import type { GeoPoint } from '../../app/job/places.ts'

/** A typed position, null for none, or what is wrong with it. */
export type TypedPosition =
  | { readonly ok: true; readonly value: GeoPoint | null }
  | { readonly ok: false; readonly error: string }

const HOW = 'Write latitude and longitude in degrees, for example 27.33640, -82.53070.'

/** Reads `27.3364, -82.5307`, `27.3364 -82.5307` or `27.3364 N 82.5307 W`: WGS84 degrees, latitude first. */
export function readPosition(text: string): TypedPosition {
  const trimmed = text.trim().replaceAll('−', '-').replaceAll('°', ' ')
  if (trimmed === '') return { ok: true, value: null }
  const match = /^(-?\d+(?:\.\d+)?)\s*([NS])?[\s,;]+(-?\d+(?:\.\d+)?)\s*([EW])?$/i.exec(trimmed)
  if (match === null) return { ok: false, error: `"${text.trim()}" is not a position. ${HOW}` }
  const latDeg = signed(match[1], match[2], 'S')
  const lonDeg = signed(match[3], match[4], 'W')
  if (Math.abs(latDeg) > 90) return { ok: false, error: 'A latitude lies between -90 and 90 degrees.' }
  if (Math.abs(lonDeg) > 180) return { ok: false, error: 'A longitude lies between -180 and 180 degrees.' }
  return { ok: true, value: { latDeg, lonDeg } }
}

/** Writes a position as `readPosition` reads it; empty for none. */
export function positionText(position: GeoPoint | null): string {
  return position === null ? '' : `${position.latDeg}, ${position.lonDeg}`
}

function signed(digits: string | undefined, letter: string | undefined, negative: 'S' | 'W'): number {
  const value = Number(digits)
  return letter?.toUpperCase() === negative ? -Math.abs(value) : value
}
