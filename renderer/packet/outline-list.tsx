import styles from './packet.module.css'

interface OutlineListProps {
  readonly outline: readonly { readonly title: string; readonly page: number }[]
  readonly page: number
  readonly onPage: (page: number) => void
}

/** The sections of the packet; a click turns to one. */
export function OutlineList({ outline, page, onPage }: OutlineListProps) {
  const current = outline.findLastIndex((entry) => entry.page <= page)
  return (
    <nav className={styles['outline']} aria-label="Sections of the packet">
      <ol>
        {outline.map((entry, at) => (
          <li key={`${entry.title} ${at}`}>
            <button
              type="button"
              className={styles['outlineLine']}
              aria-current={at === current ? 'true' : undefined}
              onClick={() => onPage(entry.page)}
            >
              <span className={styles['outlineTitle']}>{entry.title}</span>
              <span className={styles['quiet']}>{entry.page}</span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  )
}
