import { safeCell } from './csv-cell.ts'

/** A table for a spreadsheet: a file name, a header and rows of cells that can't start a formula. Not yet quoted. */
export interface CsvTable {
  readonly name: string
  readonly header: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

type Value = string | number | null
/** A column: its title and what stands in it for a record. */
export type Columns<T> = readonly (readonly [title: string, value: (record: T) => Value])[]

/** A table with a column for each pair and a row for each record, its cells made safe. */
export function table<T>(name: string, columns: Columns<T>, records: readonly T[]): CsvTable {
  return {
    name,
    header: columns.map(([title]) => title),
    rows: records.map((record) => columns.map(([, value]) => safeCell(value(record)))),
  }
}
