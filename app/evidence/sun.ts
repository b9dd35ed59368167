import { Body, Equator, Horizon, MakeTime, Observer, SearchRiseSet } from 'astronomy-engine'
import type { GeoPoint } from '../job/places.ts'

/** Where the sun stands, seen from the ground. */
export interface SunPlace {
  /**
   * Angle of the sun's middle over the level horizon, degrees. While any of it is up it is lifted by ordinary refraction
   * (Sæmundsson's formula at 10 °C and 1010 mbar); once it is down the angle is the geometric one, as twilight is reckoned.
   */
  readonly elevationDeg: number
  /** Degrees clockwise from true north. */
  readonly azimuthDeg: number
}

/** The sunsets and sunrises around an instant in the dark, or around one in the light. */
export interface DaylightAround {
  /** The last time that the sun set or rose before the instant; null where it did neither for a day and a half. */
  readonly last: SunCrossing | null
  readonly next: SunCrossing | null
}

export interface SunCrossing {
  readonly what: 'rose' | 'set'
  readonly atMs: number
}

const DAY_MS = 86_400_000
/** The geometric place of the sun's middle at sunrise and sunset: 34 minutes of arc of refraction and 16 of radius. */
const DOWN_DEG = -50 / 60
/** 1 January 2000, 12:00 UTC, from which the library counts days. */
const J2000_MS = 946_728_000_000
/** A day and a half always holds a crossing, unless the sun stays up or down. */
const SEARCH_DAYS = 1.5

/**
 * The sun's apparent place for a point at sea level.
 *
 * Checked to 0.01 degrees against the sample case of NREL/TP-560-34302 and the NOAA solar calculator's method; a roof's
 * height above the sea changes neither by as much.
 */
export function sunAt(instantMs: number, place: GeoPoint): SunPlace {
  const time = MakeTime(daysOf(instantMs))
  const observer = new Observer(place.latDeg, place.lonDeg, 0)
  const { ra, dec } = Equator(Body.Sun, time, observer, true, true)
  const plain = Horizon(time, observer, ra, dec)
  if (plain.altitude <= DOWN_DEG) return { elevationDeg: plain.altitude, azimuthDeg: plain.azimuth }
  return { elevationDeg: Horizon(time, observer, ra, dec, 'normal').altitude, azimuthDeg: plain.azimuth }
}

/**
 * When the sun last set or rose before an instant, and when it does next: its upper edge on the level horizon, with 34
 * minutes of arc of refraction, the almanac's sunrise and sunset. Both null in polar day and polar night.
 */
export function daylightAround(instantMs: number, place: GeoPoint): DaylightAround {
  return { last: nearest(instantMs, place, -SEARCH_DAYS), next: nearest(instantMs, place, SEARCH_DAYS) }
}

function nearest(instantMs: number, place: GeoPoint, days: number): SunCrossing | null {
  const observer = new Observer(place.latDeg, place.lonDeg, 0)
  const found = ([1, -1] as const).flatMap((direction): SunCrossing[] => {
    const time = SearchRiseSet(Body.Sun, observer, direction, daysOf(instantMs), days)
    if (time === null) return []
    return [{ what: direction === 1 ? 'rose' : 'set', atMs: Math.round(time.ut * DAY_MS + J2000_MS) }]
  })
  const byNearness = (a: SunCrossing, b: SunCrossing) => Math.abs(a.atMs - instantMs) - Math.abs(b.atMs - instantMs)
  return found.toSorted(byNearness)[0] ?? null
}

function daysOf(instantMs: number): number {
  return (instantMs - J2000_MS) / DAY_MS
}
