import { z } from 'zod'
import { facetIdSchema, findingIdSchema, type FacetId, type FindingId } from '../job/ids.ts'
import { areaCell, methodCell, outcomeCell, pullDirectionCell, pullPointCell, timeCell } from './csv-cells.ts'
import { readTitles, type CsvField } from './csv-columns.ts'
import { readFigure } from './typed-figure.ts'
import { readForce } from './typed-force.ts'
import { readLift } from './typed-lift.ts'
import { readingSchema } from './reading.ts'

/** A reading without identity and number, as it is handed in. */
export const newReadingSchema = readingSchema.omit({ id: true, number: true })

/** One row of a file: the reading that it makes, or why it makes none. */
export const csvRowSchema = z.object({
  /** Line of the file, the titles being line 1. */
  line: z.number().int(),
  cells: z.array(z.string()),
  /** Null where the row is refused. Where kilograms are offered as pounds, the reading holds the pounds. */
  reading: newReadingSchema.nullable(),
  needs: z.enum(['nothing', 'kilograms-confirmed', 'mending']),
  messages: z.array(z.string()),
})
export type CsvRow = z.output<typeof csvRowSchema>

/** A file of readings as it was understood, before anything of it is kept. */
export const csvReadingsSchema = z.object({
  titles: z.array(z.string()),
  rows: z.array(csvRowSchema),
  /** What the file as a whole lacks or has too much of. */
  notes: z.array(z.string()),
})
export type CsvReadings = z.output<typeof csvReadingsSchema>

/** The records that a file can name, by what people call them. */
export interface NamedRecords {
  readonly facets: readonly { readonly id: FacetId; readonly letter: string }[]
  readonly findings: readonly { readonly id: FindingId; readonly number: number }[]
}

/** Reads the rows of a file, titles first. Every row is told for itself; no row is dropped or mended silently. */
export function readCsvReadings(table: readonly (readonly string[])[], named: NamedRecords): CsvReadings {
  const [titles = [], ...rows] = table
  const { known, unused } = readTitles(titles)
  const has = (field: CsvField) => known.some((column) => column.field === field)
  if (!has('lift') && !has('force')) {
    const sentence =
      'No column is called lift or force, so no reading can be taken from this file. Its first line must hold the titles.'
    return { titles: [...titles], rows: [], notes: [sentence] }
  }
  const notes = [
    ...(has('lift') ? [] : ['No column is called lift: the readings come in without a lift and can’t be judged.']),
    ...(has('force') ? [] : ['No column is called force: the readings come in without a force and can’t be judged.']),
    ...(has('facet') ? [] : ['No column is called facet: the readings come in on no facet.']),
    ...(unused.length === 0 ? [] : [`Not used: ${unused.join(', ')}.`]),
  ]
  const cellOf = (row: readonly string[]) => (field: CsvField) => {
    const column = known.find((one) => one.field === field)
    const text = column === undefined ? '' : (row[column.at] ?? '').trim().replace(/^'(?=[=+\-@])/, '')
    const isBare = /^[-−+]?[\d.,\s/]+$/.test(text)
    return column !== undefined && column.unit !== '' && isBare ? `${text} ${column.unit}` : text
  }
  return {
    titles: [...titles],
    rows: rows.map((row, i) => readRow(cellOf(row), { line: i + 2, cells: row, named })),
    notes,
  }
}

interface RowPlace {
  readonly line: number
  readonly cells: readonly string[]
  readonly named: NamedRecords
}

function readRow(cell: (field: CsvField) => string, { line, cells, named }: RowPlace): CsvRow {
  const faults: string[] = []
  const told: string[] = []
  const orFault = <T>(value: T | undefined, sentence: string): T | null => {
    if (value === undefined) faults.push(sentence)
    return value ?? null
  }
  const lift = readLift(cell('lift'))
  const force = readForce(cell('force'))
  for (const typed of [lift, force]) {
    if (typed.kind === 'refused') faults.push(typed.sentence)
    if (typed.kind === 'offer') told.push(typed.sentence)
    if (typed.kind === 'read' && typed.caution !== null) told.push(typed.caution)
    if (typed.kind === 'read' && typed.typed !== '') told.push(`Converted from ${typed.typed}.`)
  }
  if (lift.kind === 'none' && force.kind === 'none') faults.push('Neither lift nor force is given.')
  const hasForce = force.kind === 'read' || force.kind === 'offer'
  const reading = {
    facetId: facetOf(cell('facet'), named, faults),
    findingId: findingOf(cell('finding'), named, faults),
    at: pointOf(cell('x'), cell('y'), faults),
    area: orFault(areaCell(cell('area')), `"${cell('area')}" is no area. Write field, edge, corner or ridge.`),
    liftIn: lift.kind === 'read' ? lift.liftIn : null,
    liftTyped: lift.kind === 'read' ? lift.typed : '',
    forceLbf: hasForce ? force.forceLbf : null,
    forceTyped: hasForce ? force.typed : '',
    method:
      orFault(methodCell(cell('method')), `"${cell('method')}" is no method. Write gauge or by hand.`) ??
      (hasForce ? 'gauge' : 'by-hand'),
    pullPoint:
      orFault(pullPointCell(cell('pull-point')), `"${cell('pull-point')}" is no point of pull.`) ?? 'not-stated',
    pullDirection:
      orFault(pullDirectionCell(cell('pull-direction')), `"${cell('pull-direction')}" is no direction of pull.`) ??
      'not-stated',
    outcome:
      orFault(
        outcomeCell(cell('outcome')),
        `"${cell('outcome')}" is no outcome. Write held, came loose or tile broke.`,
      ) ?? 'not-stated',
    instrument: cell('instrument'),
    tester: cell('tester'),
    takenAt: orFault(timeCell(cell('time')), `"${cell('time')}" is no time. Write 2026-11-12 10:40.`),
    note: cell('note'),
  }
  const whole = newReadingSchema.safeParse(reading)
  if (!whole.success && faults.length === 0) faults.push(whole.error.issues[0]?.message ?? 'A value does not fit.')
  const kept = whole.success && faults.length === 0 ? whole.data : null
  const needs = kept === null ? 'mending' : force.kind === 'offer' ? 'kilograms-confirmed' : 'nothing'
  return { line, cells: [...cells], reading: kept, needs, messages: [...faults, ...told] }
}

function facetOf(cell: string, { facets }: NamedRecords, faults: string[]): string | null {
  if (cell === '') return null
  const found = facets.find(({ letter }) => letter.toLowerCase() === cell.toLowerCase())
  if (found === undefined) faults.push(`There is no facet "${cell}" on the plan.`)
  return found === undefined ? null : facetIdSchema.parse(found.id)
}

function findingOf(cell: string, { findings }: NamedRecords, faults: string[]): string | null {
  if (cell === '') return null
  const number = Number(/^(?:F-?)?(\d+)$/i.exec(cell)?.[1] ?? Number.NaN)
  const found = findings.find((one) => one.number === number)
  if (found === undefined) faults.push(`There is no finding "${cell}".`)
  return found === undefined ? null : findingIdSchema.parse(found.id)
}

function pointOf(x: string, y: string, faults: string[]): { xFt: number; yFt: number } | null {
  if (x === '' && y === '') return null
  const [xFt, yFt] = [x, y].map((text) => readFigure(text)?.value)
  if (xFt !== undefined && yFt !== undefined) return { xFt, yFt }
  faults.push('A place on the plan needs both x and y, in feet.')
  return null
}
