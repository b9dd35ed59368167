import type { CalendarDate } from '../job/calendar.ts'
import { readMetar, type MetarWind } from './metar-report.ts'
import { reportTexts } from './metar-text.ts'
import { peakInstant, reportInstant } from './metar-time.ts'
import type { Doubt, Observation } from './observation.ts'
import { collected, newCollector, type RawRows } from './raw-rows.ts'

const TWO_HOURS_MS = 7_200_000

/** Reads METAR and SPECI reports from a list or from bulletins; each is dated near `near`. */
export function readMetarFile(text: string, near: CalendarDate): RawRows {
  const rows = newCollector()
  for (const { line, text: report } of reportTexts(text)) {
    const wind = readMetar(report)
    if (wind.kind === 'refused') {
      rows.problems.push({ line, sentence: wind.sentence })
      continue
    }
    rows.stations.set(wind.station, { code: wind.station, name: '', position: null, elevationFt: null })
    rows.observations.push(metarObservation(wind, { station: wind.station, atMs: reportInstant(wind, near), line }))
  }
  return collected(rows)
}

/** A report as an observation at a known instant. */
export function metarObservation(
  wind: MetarWind,
  { station, atMs, line }: { station: string; atMs: number; line: number },
): Observation {
  const { fromDeg, isVariable, between, meanKt, gustKt, peak } = wind
  const peakMs = peak === null ? null : peakInstant(peak, atMs)
  const doubts: readonly Doubt[] =
    peakMs !== null && atMs - peakMs > TWO_HOURS_MS ? [...wind.doubts, 'peak-long-before'] : wind.doubts
  return {
    station,
    atMs,
    line,
    fromDeg,
    isVariable,
    between,
    meanKt,
    gustKt,
    peak: peak === null || peakMs === null ? null : { kt: peak.kt, fromDeg: peak.fromDeg, atMs: peakMs },
    doubts: [...doubts],
  }
}
