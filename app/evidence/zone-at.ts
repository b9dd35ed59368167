import { Temporal } from 'temporal-polyfill'
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

/** Minutes east of UTC in an IANA zone at an instant; null for no zone, or one that this machine doesn't know. */
export function offsetAt(instantMs: number, zone: string | null): number | null {
  if (zone === null) return null
  try {
    const at = Temporal.Instant.fromEpochMilliseconds(instantMs).toZonedDateTimeISO(zone)
    return Math.round(at.offsetNanoseconds / 60e9)
  } catch {
    return null
  }
}
