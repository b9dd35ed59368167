import { Temporal } from 'temporal-polyfill'
import { readMetar, type MetarWind } from './metar-report.ts'
import { peakInstant } from './metar-time.ts'
import type { Doubt, Observation, StationNote } from './observation.ts'
import { collected, newCollector, type RawRows, type RowCollector } from './raw-rows.ts'
import type { ReadingChoices, TimeBasis } from './reading-choices.ts'
import { toKnots } from './speed.ts'
import { cellOf, type TableFile } from './table-file.ts'
import { unitByRatio } from './unit-proof.ts'
import { readNumber } from './written-number.ts'
import { readWrittenTime } from './written-time.ts'

const HOURLY = new Set(['FM-12', 'FM-15', 'FM-16'])
const FEET_PER_METRE = 1 / 0.3048

/** True for a table of local climatological data; version 1 and 2 share the names of their wind columns, not the unit. */
export function isLcdTable({ header }: TableFile): boolean {
  return ['STATION', 'DATE', 'REPORT_TYPE', 'HourlyWindSpeed', 'HourlyWindGustSpeed'].every((one) =>
    header.includes(one),
  )
}

/** Reads such a table. The report inside its REM column proves the unit of the speeds and the offset of the times. */
export function readLcdFile(table: TableFile, choices: ReadingChoices): RawRows {
  const rows = newCollector()
  const pairs: { value: number; kt: number }[] = []
  const offsets: number[] = []
  for (const row of table.rows) {
    const cell = (title: string) => cellOf(table, row.cells, title)
    const station = cell('STATION')
    const type = cell('REPORT_TYPE')
    if (station === '') {
      rows.problems.push({ line: row.line, sentence: 'The row names no station.' })
      continue
    }
    noteStation(rows, station, cell)
    if (type === 'SOD') readDay(rows, { station, line: row.line, cell, choices })
    if (!HOURLY.has(type)) continue
    const report = reportIn(cell('REM'))
    const read = readHour({ station, line: row.line, cell, choices, report })
    if (typeof read === 'string') {
      rows.problems.push({ line: row.line, sentence: read })
      continue
    }
    rows.observations.push(read.observation)
    rows.writtenSpeeds.push(...read.written)
    if (report === null || type === 'FM-12') continue
    if (read.gust !== null && report.gustKt !== null) pairs.push({ value: read.gust, kt: report.gustKt })
    const offset = offsetOf(cell('DATE'), report)
    if (offset !== null) offsets.push(offset)
  }
  return collected(rows, proofOf(pairs, offsets))
}

type Cell = (title: string) => string
interface Row {
  readonly station: string
  readonly line: number
  readonly cell: Cell
  readonly choices: ReadingChoices
}

function noteStation(rows: RowCollector, code: string, cell: Cell): void {
  if (rows.stations.has(code)) return
  const figure = (title: string) => (cell(title) === '' ? Number.NaN : Number(cell(title)))
  const [latDeg, lonDeg, elevationM] = [figure('LATITUDE'), figure('LONGITUDE'), figure('ELEVATION')]
  const note: StationNote = {
    code,
    name: cell('NAME'),
    position: Math.abs(latDeg) <= 90 && Math.abs(lonDeg) <= 180 ? { latDeg, lonDeg } : null,
    elevationFt: Number.isFinite(elevationM) ? elevationM * FEET_PER_METRE : null,
  }
  rows.stations.set(code, note)
}

/** The daily summary is no observation: its hour is the end of the day, not that of the wind. */
function readDay(rows: RowCollector, { station, line, cell, choices }: Row): void {
  const speed = readNumber(cell('DailyPeakWindSpeed'), false)
  const direction = readNumber(cell('DailyPeakWindDirection'), false)
  const date = /^\d{4}-\d{2}-\d{2}/.exec(cell('DATE'))?.[0]
  if (speed.kind !== 'value' || date === undefined) return
  rows.dailyPeaks.push({
    station,
    date,
    line,
    kt: toKnots(speed.value, choices.unit),
    fromDeg: direction.kind === 'value' && direction.value <= 360 ? direction.value : null,
  })
}

interface Hour {
  readonly observation: Observation
  readonly gust: number | null
  readonly written: readonly number[]
}

function readHour({ station, line, cell, choices, report }: Row & { report: MetarWind | null }): Hour | string {
  const time = readWrittenTime(cell('DATE'), choices.timeBasis)
  if (time === null) return `"${cell('DATE')}" is not a date and time.`
  const direction = cell('HourlyWindDirection')
  const isVariable = direction === 'VRB'
  const from = isVariable ? readNumber('', false) : readNumber(direction, false)
  const mean = readNumber(cell('HourlyWindSpeed'), false)
  const gust = readNumber(cell('HourlyWindGustSpeed'), false)
  if (mean.kind === 'nonsense' || gust.kind === 'nonsense' || from.kind === 'nonsense') {
    return `Direction "${direction}", speed "${cell('HourlyWindSpeed')}", gust "${cell('HourlyWindGustSpeed')}": one of them is not a figure.`
  }
  const values = [from, mean, gust].flatMap((one) => (one.kind === 'value' ? [one] : []))
  const doubts: Doubt[] = values.some(({ isSuspect }) => isSuspect) ? ['marked-suspect'] : []
  if (time.isUncertain) doubts.push('clock-change')
  const knots = (one: typeof mean) => (one.kind === 'value' ? toKnots(one.value, choices.unit) : null)
  const meanKt = knots(mean)
  const isCalm = meanKt === 0 && from.kind === 'value' && from.value === 0
  return {
    observation: {
      station,
      atMs: time.atMs,
      line,
      fromDeg: from.kind === 'value' && !isCalm && from.value <= 360 ? from.value : null,
      isVariable,
      between: report?.between ?? null,
      meanKt,
      gustKt: knots(gust),
      peak: peakIn(report, time.atMs),
      doubts,
    },
    gust: gust.kind === 'value' ? gust.value : null,
    written: [mean, gust].flatMap((one) => (one.kind === 'value' ? [one.value] : [])),
  }
}

function peakIn(report: MetarWind | null, atMs: number): Observation['peak'] {
  const peak = report?.peak ?? null
  return peak === null ? null : { kt: peak.kt, fromDeg: peak.fromDeg, atMs: peakInstant(peak, atMs) }
}

/** The METAR or SPECI that the archive keeps beside the decoded columns. */
function reportIn(remark: string): MetarWind | null {
  const at = /\b(?:METAR|SPECI) [A-Z0-9]{4} \d{6}Z.*/.exec(remark)
  const read = at === null ? null : readMetar(at[0])
  return read?.kind === 'report' ? read : null
}

/** Minutes by which the row's time is ahead of its report's UTC time, between -12 and +12 hours. */
function offsetOf(date: string, report: MetarWind): number | null {
  const written = readWrittenTime(date, { kind: 'utc' })
  if (written === null) return null
  const local = Temporal.Instant.fromEpochMilliseconds(written.atMs).toZonedDateTimeISO('UTC')
  const minutes = local.hour * 60 + local.minute - (report.hour * 60 + report.minute)
  return ((minutes + 720 + 1440) % 1440) - 720
}

function proofOf(pairs: readonly { value: number; kt: number }[], offsets: readonly number[]): RawRows['proof'] {
  const unit = unitByRatio(pairs)
  const [first] = offsets
  const isOneOffset = offsets.length >= 3 && first !== undefined && offsets.every((offset) => offset === first)
  const timeBasis: TimeBasis | null = isOneOffset ? { kind: 'fixed-offset', offsetMinutes: first } : null
  return {
    unit: unit?.unit ?? null,
    timeBasis,
    sentences: [
      ...(unit === null ? [] : [unit.sentence]),
      ...(isOneOffset
        ? [`Times are ${first / 60} h from UTC all through: ${offsets.length} rows hold a report with its UTC time.`]
        : []),
    ],
  }
}
