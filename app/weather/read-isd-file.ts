import type { Doubt, Observation } from './observation.ts'
import { collected, newCollector, type RawRows, type RowCollector } from './raw-rows.ts'
import { toKnots } from './speed.ts'
import { cellOf, type TableFile } from './table-file.ts'
import { readWrittenTime } from './written-time.ts'

/** Marks by which the archive calls a value suspect (2, 6) or wrong (3, 7). */
const SUSPECT = new Set(['2', '3', '6', '7'])
const FEET_PER_METRE = 1 / 0.3048

/** True for integrated surface data as a table. */
export function isIsdTable({ header }: TableFile): boolean {
  return ['STATION', 'DATE', 'WND', 'REPORT_TYPE'].every((title) => header.includes(title))
}

/** True for a line of integrated surface data in fixed columns. */
export function isIsdLine(line: string): boolean {
  return /^\d{4}[0-9A-Z]{6}\d{5}\d{12}.[+-]\d{5}[+-]\d{6}/.test(line) && line.length >= 105
}

/** Reads integrated surface data as a table: UTC, metres per second times ten, by the format. */
export function readIsdTable(table: TableFile): RawRows {
  const rows = newCollector()
  for (const { line, cells } of table.rows) {
    const cell = (title: string) => cellOf(table, cells, title)
    const figure = (title: string) => (cell(title) === '' ? Number.NaN : Number(cell(title)))
    const [fromDeg = '', , type = '', speed = '', quality = ''] = cell('WND').split(',')
    const [gust = '', gustQuality = ''] = cell('OC1').split(',')
    noteStation(rows, {
      code: cell('STATION'),
      name: cell('NAME'),
      latDeg: figure('LATITUDE'),
      lonDeg: figure('LONGITUDE'),
      elevationM: figure('ELEVATION'),
    })
    add(rows, { line, station: cell('STATION'), time: cell('DATE'), fromDeg, type, speed, quality, gust, gustQuality })
  }
  return collected(rows)
}

/** Reads integrated surface data in fixed columns; gusts stand in the additional section behind the mark OC1. */
export function readIsdLines(text: string): RawRows {
  const rows = newCollector()
  for (const [index, written] of text.split('\n').entries()) {
    const line = written.replace(/[\r\ufeff]/g, '')
    if (line.trim() === '') continue
    if (!isIsdLine(line)) {
      rows.problems.push({ line: index + 1, sentence: 'The line is not a record in fixed columns, or is cut short.' })
      continue
    }
    const station = line.slice(4, 15)
    noteStation(rows, {
      code: station,
      name: line.slice(51, 56).trim().replace(/^9+$/, ''),
      latDeg: Number(line.slice(28, 34)) / 1000,
      lonDeg: Number(line.slice(34, 41)) / 1000,
      elevationM: Number(line.slice(46, 51)),
    })
    const gust = /OC1(\d{4})(\w)/.exec(line.slice(105).split('REM')[0] ?? '')
    add(rows, {
      line: index + 1,
      station,
      time: line.slice(15, 27),
      fromDeg: line.slice(60, 63),
      type: line.slice(64, 65),
      speed: line.slice(65, 69),
      quality: line.slice(69, 70),
      gust: gust?.[1] ?? '',
      gustQuality: gust?.[2] ?? '',
    })
  }
  return collected(rows)
}

interface WrittenStation {
  readonly code: string
  readonly name: string
  readonly latDeg: number
  readonly lonDeg: number
  readonly elevationM: number
}

/** Zero north, zero east stands for "no position" in the archive, as does anything off the globe; 9999 for no elevation. */
function noteStation(rows: RowCollector, { code, name, latDeg, lonDeg, elevationM }: WrittenStation): void {
  if (code === '' || rows.stations.has(code)) return
  const isPlace = (latDeg !== 0 || lonDeg !== 0) && Math.abs(latDeg) <= 90 && Math.abs(lonDeg) <= 180
  const isKnown = isPlace && Number.isFinite(elevationM) && elevationM < 7000
  rows.stations.set(code, {
    code,
    name,
    position: isPlace ? { latDeg, lonDeg } : null,
    elevationFt: isKnown ? elevationM * FEET_PER_METRE : null,
  })
}

interface WrittenRow {
  readonly line: number
  readonly station: string
  readonly time: string
  readonly fromDeg: string
  readonly type: string
  readonly speed: string
  readonly quality: string
  readonly gust: string
  readonly gustQuality: string
}

function add(rows: RowCollector, row: WrittenRow): void {
  const time = readWrittenTime(row.time, { kind: 'utc' })
  if (row.station === '' || time === null) {
    rows.problems.push({ line: row.line, sentence: `"${row.time}" is not a date and time.` })
    return
  }
  const meanKt = tenths(row.speed, '9999')
  const gustKt = tenths(row.gust, '9999')
  const fromDeg = /^\d{3}$/.test(row.fromDeg) && Number(row.fromDeg) <= 360 ? Number(row.fromDeg) : null
  const doubts: Doubt[] =
    (meanKt !== null && SUSPECT.has(row.quality)) || (gustKt !== null && SUSPECT.has(row.gustQuality))
      ? ['marked-suspect']
      : []
  const observation: Observation = {
    station: row.station,
    atMs: time.atMs,
    line: row.line,
    fromDeg: row.type === 'C' || meanKt === 0 ? null : fromDeg,
    isVariable: row.type === 'V',
    between: null,
    meanKt,
    gustKt,
    peak: null,
    doubts,
  }
  rows.observations.push(observation)
}

function tenths(written: string, missing: string): number | null {
  return !/^\d+$/.test(written) || written === missing ? null : toKnots(Number(written) / 10, 'm/s')
}
