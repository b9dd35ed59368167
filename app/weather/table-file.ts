/** A file cut into rows and cells; `line` counts from 1 and the header is apart. */
export interface TableFile {
  readonly header: readonly string[]
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[]
}

/** A file as it comes to a reader: its text, and cut into cells where it is a table. */
export interface StationFile {
  readonly text: string
  readonly table: TableFile | null
}

/** The cell of a row under a title; empty where the row has none. Where a title stands twice, the first counts. */
export function cellOf(table: TableFile, cells: readonly string[], title: string): string {
  const at = table.header.indexOf(title)
  return at < 0 ? '' : (cells[at] ?? '').trim()
}
