import { useVirtualizer } from '@tanstack/react-virtual'
import {
  type KeyboardEvent,
  type MouseEvent,
  type ReactNode,
  type RefObject,
  useEffect,
  useId,
  useMemo,
  useRef,
  useState,
} from 'react'
import { classNames } from './class-names.ts'
import styles from './data-table.module.css'
import { TableHead } from './table-head.tsx'
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
  const { label, columns, rowKey, selectedKey = null } = props
  const id = useId()
  const [sorting, setSorting] = useState<Sorting | null>(props.initialSorting ?? null)
  const rows = useMemo(() => sortedRows(props.rows, columns, sorting), [props.rows, columns, sorting])
  const selectedAt = rows.findIndex((row) => rowKey(row) === selectedKey)
  const rowOf = (event: MouseEvent) => rows[rowIndexAt(event)]
  const scroller = useRef<HTMLDivElement>(null)
  return (
    <div
      ref={scroller}
      className={styles['table']}
      role="grid"
      tabIndex={0}
      aria-label={label}
      aria-rowcount={rows.length + 1}
      aria-colcount={columns.length}
      aria-activedescendant={selectedAt < 0 ? undefined : `${id}-${selectedAt}`}
      onKeyDown={(event) => moveByKey(event, { ...props, rows, selectedAt })}
      onClick={(event) => {
        const row = rowOf(event)
        if (row !== undefined) props.onSelect?.(row)
      }}
      onDoubleClick={(event) => {
        const row = rowOf(event)
        if (row !== undefined) props.onOpen?.(row)
      }}
    >
      <TableHead columns={columns} template={templateOf(columns)} sorting={sorting} onSort={setSorting} />
      <Rows table={props} rows={rows} selectedAt={selectedAt} id={id} scroller={scroller} />
    </div>
  )
}

interface RowsProps<Row> {
  readonly table: DataTableProps<Row>
  readonly rows: readonly Row[]
  readonly selectedAt: number
  readonly id: string
  readonly scroller: RefObject<HTMLDivElement | null>
}

/** Height of the titles, which stay in sight while rows scroll under them. */
const HEAD_PX = 31

function Rows<Row>({ table, rows, selectedAt, id, scroller }: RowsProps<Row>) {
  const { columns, rowKey, relatedKeys, rowHeightPx = 34 } = table
  useSecondDrawing()
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => scroller.current,
    estimateSize: () => rowHeightPx,
    overscan: 12,
    scrollMargin: HEAD_PX,
    scrollPaddingStart: HEAD_PX,
  })
  // The scroller is only there after the first drawing: a table that nothing else redraws would stay empty.
  const [, redraw] = useState(false)
  useEffect(() => redraw(true), [])
  useEffect(() => {
    if (selectedAt >= 0) virtual.scrollToIndex(selectedAt, { align: 'auto' })
  }, [selectedAt, virtual])
  return (
    <div role="rowgroup">
      {rows.length === 0 ? table.empty : null}
      <div role="presentation" className={styles['rows']} style={{ height: virtual.getTotalSize() }}>
        {virtual.getVirtualItems().map((item) => {
          const row = rows[item.index]
          if (row === undefined) return null
          const key = rowKey(row)
          const isSelected = item.index === selectedAt
          const isRelated = !isSelected && relatedKeys?.has(key) === true
          return (
            <div
              key={key}
              id={`${id}-${item.index}`}
              role="row"
              data-index={item.index}
              aria-rowindex={item.index + 2}
              aria-selected={isSelected}
              aria-current={isRelated ? 'true' : undefined}
              className={classNames(styles['row'], isSelected && styles['selected'], isRelated && styles['related'])}
              style={{
                gridTemplateColumns: templateOf(columns),
                height: item.size,
                transform: `translateY(${item.start - HEAD_PX}px)`,
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
  )
}

/** What scrolls stands around the rows and is known only once they were drawn: without this none would be seen at first. */
function useSecondDrawing(): void {
  const [, setDrawn] = useState(false)
  useEffect(() => setDrawn(true), [])
}

function templateOf<Row>(columns: readonly Column<Row>[]): string {
  return columns.map((column) => column.width).join(' ')
}

/** Index of the row that was clicked; -1 when it was none, or a control inside a row that acts for itself. */
function rowIndexAt(event: MouseEvent): number {
  if (!(event.target instanceof Element)) return -1
  if (event.target.closest('input, textarea, button, a, [role="button"]') !== null) return -1
  const row = event.target.closest('[data-index]')
  return row instanceof HTMLElement ? Number(row.dataset['index']) : -1
}

interface Movement<Row> extends DataTableProps<Row> {
  readonly selectedAt: number
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
    Enter: selectedAt,
  }
  const row = rows[steps[event.key] ?? -1]
  if (row === undefined) return
  event.preventDefault()
  if (event.key === 'Enter') onOpen?.(row)
  else onSelect?.(row)
}
