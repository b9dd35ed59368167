import { basisWords } from '../../app/evidence/catalog/basis.ts'
import { type PublishedViewKey, publishedViews } from '../../app/evidence/catalog/published-views.ts'
import styles from './finding-form.module.css'

/** Published statements that a reader may bring to this condition, for the inspector to have in mind. */
export function PublishedViews({ keys }: { keys: readonly PublishedViewKey[] }) {
  return (
    <details>
      <summary className={styles['summary']}>Published views that a reader may bring</summary>
      <ul className={styles['views']}>
        {keys.map((key) => {
          const { statement, source, basis, contested } = publishedViews[key]
          return (
            <li key={key}>
              {statement}{' '}
              <span className={styles['quiet']}>
                {source}; {basisWords[basis]}
                {contested ? '; contested' : ''}.
              </span>
            </li>
          )
        })}
      </ul>
    </details>
  )
}
