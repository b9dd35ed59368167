import type { SearchHit } from '../../app/contract/search.ts'
import styles from './jobs-screen.module.css'

interface FoundListProps {
  /** Null while the answer is awaited. */
  readonly found: readonly SearchHit[] | null
  readonly onChoose: (hit: SearchHit) => void
}

const kindWords = {
  job: 'Job sheet',
  photo: 'Photo',
  finding: 'Finding',
  facet: 'Facet',
  attachment: 'File',
  video: 'Video',
  diary: 'Diary',
} as const satisfies Record<SearchHit['kind'], string>

/** What a search over all jobs found, under the job it is in. */
export function FoundList({ found, onChoose }: FoundListProps) {
  if (found === null) return null
  if (found.length === 0) return <p className={styles['none']}>Nothing in the library has these words.</p>
  const groups = byJob(found)
  return (
    <div className={styles['found']}>
      {[...groups].map(([number, hits]) => (
        <section key={number} className={styles['foundJob']}>
          <h2 className={styles['foundNumber']}>{number}</h2>
          <ul>
            {hits.map((hit) => (
              <li key={`${hit.kind}-${hit.id}`}>
                <button type="button" className={styles['hit']} onClick={() => onChoose(hit)}>
                  <span className={styles['quiet']}>{kindWords[hit.kind]}</span>
                  <span className={styles['hitName']}>{hit.label}</span>
                  <span className={styles['excerpt']}>{hit.excerpt}</span>
                </button>
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  )
}

function byJob(found: readonly SearchHit[]): ReadonlyMap<string, readonly SearchHit[]> {
  const groups = new Map<string, SearchHit[]>()
  for (const hit of found) {
    const group = groups.get(hit.jobNumber)
    if (group === undefined) groups.set(hit.jobNumber, [hit])
    else group.push(hit)
  }
  return groups
}
