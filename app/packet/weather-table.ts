import { Temporal } from 'temporal-polyfill'
import type { CaseFile } from '../evidence/case-file.ts'
import { fromKnots } from '../weather/speed.ts'
import type { SourcedObservation } from '../weather/station-wind.ts'
import { type CsvTable, table } from './csv-table.ts'

/** weather.csv: every observation taken, in order of stations and time, with file and line; speeds in knots and mph. */
export function weatherTable({ weather }: CaseFile): CsvTable {
  const rows = weather.sources
    .flatMap((source) => source.observations.map((one): SourcedObservation => ({ ...one, source })))
    .sort((a, b) => (a.station < b.station ? -1 : a.station > b.station ? 1 : a.atMs - b.atMs))
  return table(
    'weather.csv',
    [
      ['station', ({ station }) => station],
      ['time_utc', ({ atMs }) => iso(atMs)],
      ['from_deg', ({ fromDeg }) => fromDeg],
      [
        'direction_varies',
        ({ isVariable, between }) =>
          between === null ? (isVariable ? 'yes' : '') : `${between.fromDeg} to ${between.toDeg}`,
      ],
      ['mean_kt', ({ meanKt }) => figure(meanKt)],
      ['gust_kt', ({ gustKt }) => figure(gustKt)],
      ['mean_mph', ({ meanKt }) => inMph(meanKt)],
      ['gust_mph', ({ gustKt }) => inMph(gustKt)],
      ['averaging', ({ source }) => source.averaging],
      ['peak_remark_kt', ({ peak }) => figure(peak?.kt ?? null)],
      ['peak_remark_from_deg', ({ peak }) => peak?.fromDeg ?? null],
      ['peak_remark_time_utc', ({ peak }) => (peak === null ? '' : iso(peak.atMs))],
      ['doubts', ({ doubts }) => doubts.join(' ')],
      ['file', ({ source }) => source.fileName],
      ['line', ({ line }) => line],
      ['file_sha256', ({ source }) => source.sha256],
      ['provenance', ({ source }) => source.provenance],
    ],
    rows,
  )
}

function iso(atMs: number): string {
  return Temporal.Instant.fromEpochMilliseconds(atMs).toString({ smallestUnit: 'second' })
}

function figure(kt: number | null): string {
  return kt === null ? '' : kt.toFixed(1)
}

function inMph(kt: number | null): string {
  return kt === null ? '' : fromKnots(kt, 'mph').toFixed(1)
}
