import tzLookup from '@photostructure/tz-lookup'
import type { GeoPoint } from '../job/places.ts'

/** The IANA time zone at a place; null where the zone map knows none. */
export function zoneAt({ latDeg, lonDeg }: GeoPoint): string | null {
  try {
    return tzLookup(latDeg, lonDeg)
  } catch {
    return null
  }
}
