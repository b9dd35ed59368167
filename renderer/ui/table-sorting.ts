/** Which column a table is sorted by, and whether values go up or down. */
export interface Sorting {
  readonly column: string
  readonly direction: 'up' | 'down'
}

interface SortableColumn<Row> {
  readonly key: string
  readonly sortBy?: (row: Row) => string | number | null
}

/** Words compare as people do: `F-2` before `F-10`, case aside. */
const collator = new Intl.Collator('en', { numeric: true, sensitivity: 'base' })

/** Rows in the order asked for; equal rows keep theirs, and rows without a value come last either way. */
export function sortedRows<Row>(
  rows: readonly Row[],
  columns: readonly SortableColumn<Row>[],
  sorting: Sorting | null,
): readonly Row[] {
  const sortBy = columns.find((column) => column.key === sorting?.column)?.sortBy
  if (sorting === null || sortBy === undefined) return rows
  const sign = sorting.direction === 'up' ? 1 : -1
  return rows.toSorted((rowA, rowB) => {
    const a = sortBy(rowA)
    const b = sortBy(rowB)
    if (a === null || b === null) return Number(a === null) - Number(b === null)
    if (typeof a === 'number' && typeof b === 'number') return sign * (a - b)
    return sign * collator.compare(String(a), String(b))
  })
}
