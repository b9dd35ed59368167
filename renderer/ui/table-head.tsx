import { classNames } from './class-names.ts'
import styles from './data-table.module.css'
import type { Sorting } from './table-sorting.ts'

interface HeadColumn {
  readonly key: string
  readonly title: string
  readonly align?: 'start' | 'end'
  readonly sortBy?: unknown
}

interface TableHeadProps {
  readonly columns: readonly HeadColumn[]
  /** Grid tracks shared with the rows. */
  readonly template: string
  readonly sorting: Sorting | null
  readonly onSort: (sorting: Sorting) => void
}

/** The titles of a table; those that sort are buttons. */
export function TableHead({ columns, template, sorting, onSort }: TableHeadProps) {
  return (
    <div role="rowgroup" className={styles['headGroup']}>
      <div role="row" aria-rowindex={1} className={styles['head']} style={{ gridTemplateColumns: template }}>
        {columns.map((column) => {
          const own = sorting?.column === column.key ? sorting.direction : 'none'
          return (
            <div
              key={column.key}
              role="columnheader"
              aria-sort={({ none: 'none', up: 'ascending', down: 'descending' } as const)[own]}
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
                  <span aria-hidden="true">{{ none: '', up: ' ↑', down: ' ↓' }[own]}</span>
                </button>
              )}
            </div>
          )
        })}
      </div>
    </div>
  )
}
