import { z } from 'zod'
import { decimalMarkSchema, MOST_PRICES, priceRowSchema, type DecimalMark, type PriceRow } from './price-book.ts'
import { markShown, readPrice } from './typed-price.ts'
import { readUnit, scopeUnits } from './units.ts'

/** A row of the file, as it stands and as it was understood. */
const bookRowSchema = z.object({
  line: z.number().int(),
  cells: z.array(z.string()),
  /** Null for a row that can't be taken; then a message says why. */
  price: priceRowSchema.nullable(),
  messages: z.array(z.string()),
})

/** A price book as it was understood; nothing of it is kept yet. */
export const readBookSchema = z.object({
  titles: z.array(z.string()),
  /** What the file as a whole lacks; with any of these no row can be taken. */
  lacks: z.array(z.string()),
  /** The mark before decimals, chosen or proven by the prices; null where it can't be told. */
  decimalMark: decimalMarkSchema.nullable(),
  rows: z.array(bookRowSchema),
  good: z.number().int(),
})
export type ReadBook = z.output<typeof readBookSchema>
type BookRow = z.output<typeof bookRowSchema>

/** A line of a file, split into cells. */
export interface FileLine {
  readonly line: number
  readonly cells: readonly string[]
}

const columnTitles = {
  code: ['code', 'item', 'item code', 'key', 'no', 'number'],
  description: ['description', 'words', 'text', 'name', 'work'],
  unit: ['unit', 'per', 'uom', 'unit of measure'],
  price: ['unit price', 'price', 'price per unit', 'rate', 'unit cost'],
} as const
type Field = keyof typeof columnTitles
const fields = ['code', 'description', 'unit', 'price'] as const satisfies readonly Field[]

/**
 * Reads a price book row by row. Formulas, negative, empty and absurd prices, unknown units and codes that stand twice are
 * refused with a message in the row; the rest of the file is read on.
 *
 * @param lines of the file, titles first
 * @param chosenMark the mark before decimals that a person chose; null: as the prices show it
 */
export function readPriceBook(lines: readonly FileLine[], chosenMark: DecimalMark | null): ReadBook {
  const [head, ...rest] = lines
  const titles = head?.cells.map((cell) => cell.trim()) ?? []
  const at = columnsOf(titles)
  const lacks = lacksOf(at, rest.length)
  const mark = chosenMark ?? provenMark(rest.map(({ cells }) => cells[at.price ?? -1] ?? ''))
  const seen = new Map<string, PriceRow>()
  const rows = rest.map((line) => readRow(line, { at, mark, seen, isWhole: lacks.length === 0 }))
  return {
    titles,
    lacks: [...lacks],
    decimalMark: mark === 'unsure' ? null : mark,
    rows,
    good: rows.filter(({ price }) => price !== null).length,
  }
}

type Columns = Readonly<Partial<Record<Field, number>>>

function columnsOf(titles: readonly string[]): Columns {
  const words = titles.map((title) =>
    title
      .toLowerCase()
      .replaceAll(/[\s_.-]+/g, ' ')
      .trim(),
  )
  return Object.fromEntries(
    fields.flatMap((field) => {
      const at = words.findIndex((word) =>
        columnTitles[field].some((known) => known === word || word.startsWith(`${known} (`)),
      )
      return at < 0 ? [] : [[field, at]]
    }),
  )
}

const fieldWords = {
  code: 'code',
  description: 'description',
  unit: 'unit',
  price: 'unit price',
} as const satisfies Record<Field, string>

function lacksOf(at: Columns, rows: number): readonly string[] {
  const missing = fields.filter((field) => field !== 'description' && at[field] === undefined)
  return [
    ...missing.map(
      (field) =>
        `No column is titled "${fieldWords[field]}". The first line must have: code, description, unit, unit price.`,
    ),
    ...(rows === 0 ? ['The file has no rows after its titles.'] : []),
    ...(rows > MOST_PRICES
      ? [`The file has ${rows} rows; at most ${MOST_PRICES} are taken. Keep those that this job needs.`]
      : []),
  ]
}

/** The one mark that prices prove; `unsure` where they prove both, or where none is proven and one could be either. */
function provenMark(cells: readonly string[]): DecimalMark | 'unsure' {
  const shown = new Set(cells.map(markShown))
  if (shown.has('point') && shown.has('comma')) return 'unsure'
  if (shown.has('comma')) return 'comma'
  return shown.has('either') && !shown.has('point') ? 'unsure' : 'point'
}

interface Reading {
  readonly at: Columns
  readonly mark: DecimalMark | 'unsure'
  readonly seen: Map<string, PriceRow>
  readonly isWhole: boolean
}

function readRow({ line, cells }: FileLine, { at, mark, seen, isWhole }: Reading): BookRow {
  const cell = (field: Field) => (cells[at[field] ?? -1] ?? '').trim()
  const kept = { line, cells: [...cells] }
  if (!isWhole) return { ...kept, price: null, messages: [] }
  const unit = readUnit(cell('unit'))
  const price = priceOf(cell('price'), mark)
  const formula = formulaFault(cells)
  if (formula !== null) return { ...kept, price: null, messages: [formula] }
  const messages = [
    ...(cell('code') === '' ? ['The row has no code.'] : []),
    ...(cell('code').length > 60 ? ['The code is longer than 60 characters.'] : []),
    ...(unit === null ? [unitFault(cell('unit'))] : []),
    ...(price.kind === 'wrong' ? [price.sentence] : []),
    ...(price.kind === 'none' ? ['The row has no price.'] : []),
  ]
  if (messages.length > 0 || unit === null || price.kind !== 'price') return { ...kept, price: null, messages }
  const row = { line, code: cell('code'), description: cell('description').slice(0, 400), unit, price: price.price }
  const key = row.code.toLowerCase()
  const before = seen.get(key)
  if (before !== undefined) return { ...kept, price: null, messages: [doubleWords(before, row)] }
  seen.set(key, row)
  return { ...kept, price: row, messages: [] }
}

function priceOf(cell: string, mark: DecimalMark | 'unsure'): ReturnType<typeof readPrice> {
  if (mark !== 'unsure') return readPrice(cell, mark)
  const shown = markShown(cell)
  if (shown === null) return readPrice(cell, 'point')
  return {
    kind: 'wrong',
    sentence: `The file does not show whether "." or "," stands before decimals, so "${cell}" can't be read. Choose the mark above.`,
  }
}

/** What is wrong with a row that has a cell that a spreadsheet would run. */
function formulaFault(cells: readonly string[]): string | null {
  const found = cells.find((cell) => /^\s*[=+@]/.test(cell))
  return found === undefined
    ? null
    : `The cell "${found.trim().slice(0, 40)}" is a formula. Put its value in its place.`
}

function unitFault(unit: string): string {
  const known = Object.values(scopeUnits).map(({ per }) => per)
  return `${unit === '' ? 'The row has no unit' : `The unit "${unit}" is not known`}; units are: ${known.join(', ')}.`
}

function doubleWords(before: PriceRow, row: PriceRow): string {
  const isSame = before.price === row.price && before.unit === row.unit
  return isSame
    ? `The code "${row.code}" stands on line ${before.line} already, with the same price.`
    : `The code "${row.code}" stands on line ${before.line} already, with another price or unit. Give each its own code.`
}
