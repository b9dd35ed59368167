import { Temporal } from 'temporal-polyfill'
import { beaufortForce } from './beaufort.ts'
import { directionWords } from './direction-words.ts'
import { averagingWords } from './reading-choices.ts'
import { saffirSimpsonCategory } from './saffir-simpson.ts'
import { fromKnots } from './speed.ts'
import type { Gap, StationWind, WindPeak } from './station-wind.ts'
import type { WeatherSource } from './weather-records.ts'

/** "52 kt (60 mph)". */
export function speedWords(kt: number): string {
  return `${Math.round(kt)} kt (${Math.round(fromKnots(kt, 'mph'))} mph)`
}

/** "2026-11-04 16:20 -05:00" in a zone. */
export function windTimeWords(atMs: number, zone: string): string {
  const at = Temporal.Instant.fromEpochMilliseconds(atMs).toZonedDateTimeISO(zone)
  return `${at.toPlainDateTime().toString({ smallestUnit: 'minute' }).replace('T', ' ')} ${at.offset}`
}

/** What kind of value a peak is, so that a gust is never read as a mean. */
export function peakKindWords({ by, observation }: WindPeak): string {
  switch (by) {
    case 'gust':
      return 'gust in a report'
    case 'peak-remark':
      return 'peak wind remark'
    case 'mean':
      return averagingWords[observation.source.averaging]
  }
}

/** "52 kt (60 mph) from 190° (S)". */
export function peakWords(peak: WindPeak | null): string {
  if (peak === null) return 'not reported'
  const direction = peak.fromDeg === null ? `direction ${directionWords(peak)}` : `from ${directionWords(peak)}`
  return `${speedWords(peak.kt)} ${direction}`
}

/** Where a value stands: the file and its line, or that it was typed. */
export function placeInSource({ observation }: WindPeak): string {
  const { source, line } = observation
  if (source.fileName === '') return `typed by hand: ${source.provenance}`
  return line === null ? source.fileName : `${source.fileName}, line ${line}`
}

/**
 * The mean wind on the scales it may be put on. Beaufort goes by mean wind. The hurricane scale is for a 1-minute mean
 * only, and left out for any other.
 */
export function scaleWords(peak: WindPeak): string {
  const beaufort = `Beaufort force ${beaufortForce(peak.kt)}`
  if (peak.observation.source.averaging !== 'one-minute') return beaufort
  const category = saffirSimpsonCategory(peak.kt)
  return `${beaufort}; ${category === 0 ? 'below hurricane strength' : `within the speeds of hurricane category ${category}`} by its 1-minute mean`
}

/** "2 gaps, the longest 5 h 10 min", or that there is none. */
export function gapWords(gaps: readonly Gap[]): string {
  if (gaps.length === 0) return 'none longer than 90 minutes'
  const longest = Math.max(...gaps.map(({ startMs, endMs }) => endMs - startMs))
  const minutes = Math.round(longest / 60_000)
  return `${gaps.length} ${gaps.length === 1 ? 'gap' : 'gaps'}, the longest ${Math.floor(minutes / 60)} h ${minutes % 60} min`
}

/** Reports, and how many of them lack a gust or are in doubt. */
export function completenessWords({ observations, withoutGust, withoutMean, doubtful }: StationWind): string {
  const parts = [
    `${observations.length} reports`,
    `${withoutGust} without a gust`,
    ...(withoutMean > 0 ? [`${withoutMean} without a mean wind`] : []),
    ...(doubtful > 0 ? [`${doubtful} in doubt`] : []),
  ]
  return parts.join(', ')
}

/** Where observations come from, in one sentence a reader can follow back. */
export function sourceWords(source: WeatherSource): string {
  const from = source.provenance === '' ? 'where it was got is not stated' : source.provenance
  if (source.fileName === '') return `Typed by hand: ${from}`
  const left = source.leftOut === 0 ? '' : ` ${source.leftOut} rows could not be read and were left out.`
  return `${source.fileName}: ${from.replace(/\.?$/, '.')}${left}`
}
