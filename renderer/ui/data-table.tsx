import { useVirtualizer } from '@tanstack/react-virtual'
import { type KeyboardEvent, type MouseEvent, type ReactNode, useEffect, useMemo, useRef, useState } from 'react'
import { classNames } from './class-names.ts'
import styles from './data-table.module.css'
import { sortedRows, type Sorting } from './table-sorting.ts'

export interface Column<Row> {
  readonly key: string
  readonly title: string
  /** A grid track: `120px`, `2fr`, `minmax(140px, 1fr)`. */
  readonly width: string
  readonly align?: 'start' | 'end'
  /** What stands in the cell; an editor may, and then edits in place. */
  readonly cell: (row: Row) => ReactNode
  /** What the column sorts by; a column without it does not sort. */
  readonly sortBy?: (row: Row) => string | number | null
}

export interface DataTableProps<Row> {
  /** What the table holds, for screen readers. */
  readonly label: string
  readonly columns: readonly Column<Row>[]
  readonly rows: readonly Row[]
  readonly rowKey: (row: Row) => string
  readonly selectedKey?: string | null
  /** Rows that belong to what is selected elsewhere. */
  readonly relatedKeys?: ReadonlySet<string>
  readonly onSelect?: (row: Row) => void
  /** Enter or double click. */
  readonly onOpen?: (row: Row) => void
  readonly rowHeightPx?: number
  readonly initialSorting?: Sorting
  readonly empty?: ReactNode
}

/** A table of any length: only the rows in sight are drawn; arrow keys move, Enter opens, a click on a title sorts. */
export function DataTable<Row>(props: DataTableProps<Row>) {
  const { label, columns, rowKey, selectedKey = null, relatedKeys, rowHeightPx = 34 } = props
  const [sorting, setSorting] = useState<Sorting | null>(props.initialSorting ?? null)
  const rows = useMemo(() => sortedRows(props.rows, columns, sorting), [props.rows, columns, sorting])
  const scroller = useRef<HTMLDivElement>(null)
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowHeightPx,
    overscan: 12,
  })
  const selectedAt = rows.findIndex((row) => rowKey(row) === selectedKey)
  useEffect(() => {
    if (selectedAt >= 0) virtual.scrollToIndex(selectedAt, { align: 'auto' })
  }, [selectedAt, virtual])
  const template = columns.map((column) => column.width).join(' ')
  return (
    <div
      className={styles['table']}
      role="grid"
      aria-label={label}
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length}
    >
      <HeadRow columns={columns} template={template} sorting={sorting} onSort={setSorting} />
      <div
        ref={scroller}
        role="rowgroup"
        className={styles['scroller']}
        tabIndex={0}
        aria-label={label}
        onKeyDown={(event) => moveByKey(event, { ...props, rows, selectedAt })}
      >
        {rows.length === 0 ? props.empty : null}
        <div role="presentation" className={styles['rows']} style={{ height: virtual.getTotalSize() }}>
          {virtual.getVirtualItems().map((item) => {
            const row = rows[item.index]
            if (row === undefined) return null
            const key = rowKey(row)
            return (
              <div
                key={key}
                role="row"
                aria-rowindex={item.index + 2}
                aria-selected={key === selectedKey}
                className={classNames(
                  styles['row'],
                  key === selectedKey && styles['selected'],
                  relatedKeys?.has(key) === true && styles['related'],
                )}
                style={{ gridTemplateColumns: template, height: item.size, transform: `translateY(${item.start}px)` }}
                onClick={(event) => {
                  if (!cameFromControl(event)) props.onSelect?.(row)
                }}
                onDoubleClick={(event) => {
                  if (!cameFromControl(event)) props.onOpen?.(row)
                }}
              >
                {columns.map((column) => (
                  <div
                    key={column.key}
                    role="gridcell"
                    className={classNames(styles['cell'], column.align === 'end' && styles['end'])}
                  >
                    {column.cell(row)}
                  </div>
                ))}
              </div>
            )
          })}
        </div>
      </div>
    </div>
  )
}

interface HeadRowProps<Row> {
  readonly columns: readonly Column<Row>[]
  readonly template: string
  readonly sorting: Sorting | null
  readonly onSort: (sorting: Sorting) => void
}

function HeadRow<Row>({ columns, template, sorting, onSort }: HeadRowProps<Row>) {
  return (
    <div role="row" aria-rowindex={1} className={styles['head']} style={{ gridTemplateColumns: template }}>
      {columns.map((column) => {
        const own = sorting?.column === column.key ? sorting.direction : null
        return (
          <div
            key={column.key}
            role="columnheader"
            aria-sort={own === null ? 'none' : own === 'up' ? 'ascending' : 'descending'}
            className={classNames(styles['headCell'], column.align === 'end' && styles['end'])}
          >
            {column.sortBy === undefined ? (
              column.title
            ) : (
              <button
                type="button"
                className={styles['sort']}
                onClick={() => onSort({ column: column.key, direction: own === 'up' ? 'down' : 'up' })}
              >
                {column.title}
                <span aria-hidden="true">{own === null ? '' : own === 'up' ? ' ↑' : ' ↓'}</span>
              </button>
            )}
          </div>
        )
      })}
    </div>
  )
}

interface Movement<Row> {
  readonly rows: readonly Row[]
  readonly selectedAt: number
  readonly onSelect?: (row: Row) => void
  readonly onOpen?: (row: Row) => void
}

function moveByKey<Row>(event: KeyboardEvent, { rows, selectedAt, onSelect, onOpen }: Movement<Row>): void {
  if (event.target !== event.currentTarget) return
  const last = rows.length - 1
  const steps: Readonly<Record<string, number>> = {
    ArrowDown: Math.min(selectedAt + 1, last),
    ArrowUp: Math.max(selectedAt - 1, 0),
    PageDown: Math.min(selectedAt + 15, last),
    PageUp: Math.max(selectedAt - 15, 0),
    Home: 0,
    End: last,
  }
  const to = steps[event.key]
  const row = rows[event.key === 'Enter' ? selectedAt : (to ?? -1)]
  if (row === undefined) return
  event.preventDefault()
  if (event.key === 'Enter') onOpen?.(row)
  else onSelect?.(row)
}

function cameFromControl(event: MouseEvent): boolean {
  return event.target instanceof Element && event.target.closest('input, textarea, button, a, [role="button"]') !== null
}
