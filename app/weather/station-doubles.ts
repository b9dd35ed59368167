import { stationDistance } from './station-distance.ts'
import type { WeatherStation } from './weather-records.ts'

/** Stations nearer to each other than this are likely one, feet apart by rounding of positions. */
const SAME_PLACE_MILES = 0.3

/** Pairs of stations that stand in one place under two codes, as sentences. */
export function stationDoubles(stations: readonly WeatherStation[]): readonly string[] {
  return stations.flatMap((station, index) =>
    stations.slice(index + 1).flatMap((other) => {
      if (station.position === null || other.position === null) return []
      if (stationDistance(station.position, other.position).miles > SAME_PLACE_MILES) return []
      return [
        `${station.code} and ${other.code} stand in one place: likely one station under two codes, not two that agree.`,
      ]
    }),
  )
}
