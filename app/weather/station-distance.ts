import geodesic from 'geographiclib-geodesic'
import type { GeoPoint } from '../job/places.ts'

const METRES_PER_MILE = 1609.344

/** How far a station is and in which direction, seen from the property. */
export interface StationDistance {
  readonly miles: number
  /** Degrees clockwise from true north. */
  readonly bearingDeg: number
}

/** Length and first direction of the geodesic on WGS84 (Karney's method), which does not fail anywhere. */
export function stationDistance(from: GeoPoint, to: GeoPoint): StationDistance {
  const { s12 = Number.NaN, azi1 = Number.NaN } = geodesic.Geodesic.WGS84.Inverse(
    from.latDeg,
    from.lonDeg,
    to.latDeg,
    to.lonDeg,
  )
  return { miles: s12 / METRES_PER_MILE, bearingDeg: (azi1 + 360) % 360 }
}
