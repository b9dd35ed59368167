import type { Observation, DailyPeak } from './observation.ts'
import type { Averaging } from './reading-choices.ts'
import type { WeatherSource, WeatherStation, JobWeather } from './weather-records.ts'
import type { WindWindow } from './wind-window.ts'

/** Without a report for longer than this, a stretch of time is called a gap. */
const GAP_MS = 90 * 60_000

/** A report and where it came from. */
export interface SourcedObservation extends Observation {
  readonly source: WeatherSource
}

/** The highest value of a kind, with its time, direction and place in a file. */
export interface WindPeak {
  readonly kt: number
  readonly fromDeg: number | null
  readonly isVariable: boolean
  readonly atMs: number
  readonly by: 'gust' | 'peak-remark' | 'mean'
  readonly observation: SourcedObservation
}

export interface Gap {
  readonly startMs: number
  readonly endMs: number
}

/** The wind of one station in a window. */
export interface StationWind {
  readonly station: WeatherStation
  /** In order of time; reports that contradict each other stand beside each other. */
  readonly observations: readonly SourcedObservation[]
  readonly peakGust: WindPeak | null
  readonly peakMean: WindPeak | null
  /** How the mean wind is averaged; several when sources differ. */
  readonly averaging: readonly Averaging[]
  readonly withoutGust: number
  readonly withoutMean: number
  readonly doubtful: number
  readonly gaps: readonly Gap[]
  /** What the station's own daily summaries say; whole days, whatever the window. */
  readonly dailyPeaks: readonly (DailyPeak & { readonly source: WeatherSource })[]
}

/** What each station of a job measured in the window, stations in order of their codes. */
export function stationWinds(weather: JobWeather, window: WindWindow): readonly StationWind[] {
  return [...weather.stations]
    .sort((a, b) => (a.code < b.code ? -1 : a.code > b.code ? 1 : 0))
    .map((station) => stationWind(station, weather.sources, window))
}

function stationWind(station: WeatherStation, sources: readonly WeatherSource[], window: WindWindow): StationWind {
  const observations = sources
    .flatMap((source) => source.observations.map((one): SourcedObservation => ({ ...one, source })))
    .filter((one) => one.station === station.code && one.atMs >= window.startMs && one.atMs < window.endMs)
    .sort((a, b) => a.atMs - b.atMs)
  // A value that can't be meant is shown with its doubt, but it is not the peak of anything.
  const believed = observations.filter(({ doubts }) => !doubts.includes('implausible'))
  return {
    station,
    observations,
    peakGust: highest(believed.flatMap((one) => [...gustOf(one), ...remarkOf(one, window)])),
    peakMean: highest(believed.flatMap(meanOf)),
    averaging: [...new Set(observations.map(({ source }) => source.averaging))],
    withoutGust: observations.filter(({ gustKt, peak }) => gustKt === null && peak === null).length,
    withoutMean: observations.filter(({ meanKt }) => meanKt === null).length,
    doubtful: observations.filter(({ doubts }) => doubts.length > 0).length,
    gaps: gapsOf(observations, window),
    dailyPeaks: sources.flatMap((source) =>
      source.dailyPeaks.filter((day) => day.station === station.code).map((day) => ({ ...day, source })),
    ),
  }
}

function gustOf(one: SourcedObservation): readonly WindPeak[] {
  if (one.gustKt === null) return []
  const { fromDeg, isVariable, atMs } = one
  return [{ kt: one.gustKt, fromDeg, isVariable, atMs, by: 'gust', observation: one }]
}

/** A remark dated outside the window belongs to another time, even when its report lies inside. */
function remarkOf(one: SourcedObservation, window: WindWindow): readonly WindPeak[] {
  if (one.peak === null || one.peak.atMs < window.startMs || one.peak.atMs >= window.endMs) return []
  const { kt, fromDeg, atMs } = one.peak
  return [{ kt, fromDeg, isVariable: false, atMs, by: 'peak-remark', observation: one }]
}

function meanOf(one: SourcedObservation): readonly WindPeak[] {
  if (one.meanKt === null) return []
  const { fromDeg, isVariable, atMs } = one
  return [{ kt: one.meanKt, fromDeg, isVariable, atMs, by: 'mean', observation: one }]
}

/** The first of the highest. */
function highest(peaks: readonly WindPeak[]): WindPeak | null {
  const [first, ...rest] = peaks
  if (first === undefined) return null
  return rest.reduce((best, next) => (next.kt > best.kt ? next : best), first)
}

function gapsOf(observations: readonly Observation[], { startMs, endMs }: WindWindow): readonly Gap[] {
  const edges = [startMs, ...observations.filter(({ meanKt }) => meanKt !== null).map(({ atMs }) => atMs), endMs]
  return edges.flatMap((edge, index) => {
    const next = edges[index + 1]
    return next === undefined || next - edge <= GAP_MS ? [] : [{ startMs: edge, endMs: next }]
  })
}
