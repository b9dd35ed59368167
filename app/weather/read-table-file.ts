import type { Doubt, RowProblem } from './observation.ts'
import { collected, newCollector, type RawRows } from './raw-rows.ts'
import type { ReadingChoices } from './reading-choices.ts'
import { toKnots } from './speed.ts'
import { cellOf, type TableFile } from './table-file.ts'
import { unitBySteps } from './unit-proof.ts'
import { readNumber, type ReadNumber } from './written-number.ts'
import { readWrittenTime } from './written-time.ts'

/** What the choices lack before a table can be read; empty when nothing. */
export function lackingColumns(table: TableFile, { columns, stationCode }: ReadingChoices): readonly string[] {
  const named = Object.values(columns).flatMap((title) => title ?? [])
  return [
    ...(columns.time === null ? ['Choose the column with the time.'] : []),
    ...(columns.mean === null && columns.gust === null ? ['Choose a column with the mean wind or the gust.'] : []),
    ...(columns.station === null && stationCode === ''
      ? ['Name the station, or choose the column that names it.']
      : []),
    ...named.filter((title) => !table.header.includes(title)).map((title) => `The file has no column "${title}".`),
  ]
}

/** Reads a table by the columns that a person chose. Rows that can't be read are named with their reason. */
export function readTableFile(table: TableFile, choices: ReadingChoices): RawRows {
  const rows = newCollector()
  for (const row of table.rows) {
    const read = readRow(table, row, choices)
    if ('problem' in read) {
      rows.problems.push(read.problem)
      continue
    }
    const { station, time, from, mean, gust } = read
    const figures = [from, mean, gust].flatMap((one) => (one.kind === 'value' ? [one] : []))
    const doubts: Doubt[] = figures.some(({ isSuspect }) => isSuspect) ? ['marked-suspect'] : []
    if (time.isUncertain) doubts.push('clock-change')
    const knots = (one: ReadNumber) => (one.kind === 'value' ? toKnots(one.value, choices.unit) : null)
    rows.stations.set(station, { code: station, name: '', position: null, elevationFt: null })
    rows.observations.push({
      station,
      atMs: time.atMs,
      line: row.line,
      fromDeg: from.kind === 'value' && knots(mean) !== 0 ? from.value : null,
      isVariable: read.isVariable,
      between: null,
      meanKt: knots(mean),
      gustKt: knots(gust),
      peak: null,
      doubts,
    })
    rows.writtenSpeeds.push(...[mean, gust].flatMap((one) => (one.kind === 'value' ? [one.value] : [])))
  }
  const proof = unitBySteps(rows.writtenSpeeds)
  return collected(rows, {
    unit: proof?.unit ?? null,
    timeBasis: null,
    sentences: proof === null ? [] : [proof.sentence],
  })
}

type Row = TableFile['rows'][number]
interface ReadRow {
  readonly station: string
  readonly time: { readonly atMs: number; readonly isUncertain: boolean }
  readonly from: ReadNumber
  readonly isVariable: boolean
  readonly mean: ReadNumber
  readonly gust: ReadNumber
}

function readRow(table: TableFile, { line, cells }: Row, choices: ReadingChoices): ReadRow | { problem: RowProblem } {
  const { columns, hasDecimalComma } = choices
  const cell = (title: string | null) => (title === null ? '' : cellOf(table, cells, title))
  const refused = (sentence: string) => ({ problem: { line, sentence } })
  if (cells.length < table.header.length) {
    return refused(`The row has ${cells.length} cells; the header names ${table.header.length}.`)
  }
  const station = columns.station === null ? choices.stationCode : cell(columns.station)
  if (station === '' || station.length > 60) return refused('The row names no station.')
  const time = readWrittenTime(cell(columns.time), choices.timeBasis)
  if (time === null) return refused(`"${cell(columns.time)}" is not a date and time.`)
  const isVariable = /^(VRB|VAR)$/i.test(cell(columns.direction))
  const from = readNumber(isVariable ? '' : cell(columns.direction), hasDecimalComma)
  const mean = readNumber(cell(columns.mean), hasDecimalComma)
  const gust = readNumber(cell(columns.gust), hasDecimalComma)
  for (const [name, read, written] of [
    ['direction', from, cell(columns.direction)],
    ['mean wind', mean, cell(columns.mean)],
    ['gust', gust, cell(columns.gust)],
  ] as const) {
    if (read.kind !== 'nonsense') continue
    const hint = /^\d+,\d+$/.test(written) && !hasDecimalComma ? ' If commas stand for decimals, say so above.' : ''
    return refused(`The ${name} "${written}" is not a figure.${hint}`)
  }
  if (from.kind === 'value' && from.value > 360) return refused(`A direction of ${from.value} degrees is none.`)
  if ([mean, gust].some((one) => one.kind === 'value' && one.value > 500)) {
    return refused(`A speed above 500 ${choices.unit} is none; nothing is taken from this row.`)
  }
  return { station, time, from, isVariable, mean, gust }
}
