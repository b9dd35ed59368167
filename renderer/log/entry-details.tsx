import type { LogEntry } from '../../app/evidence/log-entry.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { entryWords } from './entry-words.ts'
import { nameRecord, type RecordName } from './record-names.ts'
import styles from './log.module.css'

/** At most this many records are linked; an entry can change thousands. */
const LINKS_SHOWN = 200

/** One log entry in full: what it says, what it changed, and its place in the chain. */
export function EntryDetails() {
  const { entry } = useSelection()
  const job = useJob()
  if (entry === null) return <p className={styles['quiet']}>Reading the entry…</p>
  const clock = jobClock(job)
  return (
    <div className={styles['entry']}>
      <p className={styles['said']}>{entryWords(entry.event)}</p>
      <dl className={styles['facts']}>
        <dt>When</dt>
        <dd>
          {dayWords(entry.atMs, clock)} {timeWords(entry.atMs, clock)}, {clock.zoneWords}
        </dd>
        <dt>Who</dt>
        <dd>{entry.actor === '' ? 'not named' : entry.actor}</dd>
      </dl>
      <RecordLinks entry={entry} />
      <h3 className={styles['part']}>In the chain</h3>
      <dl className={styles['stack']}>
        <dt>This entry</dt>
        <dd>
          <code className={styles['hash']}>{entry.hash}</code>
        </dd>
        <dt>The one before</dt>
        <dd>
          <code className={styles['hash']}>{entry.previous ?? 'none, this is the first'}</code>
        </dd>
        {'sha256' in entry.event ? (
          <>
            <dt>SHA-256 of the file</dt>
            <dd>
              <code className={styles['hash']}>{entry.event.sha256}</code>
            </dd>
          </>
        ) : null}
      </dl>
    </div>
  )
}

function RecordLinks({ entry }: { entry: LogEntry }) {
  const job = useJob()
  const goTo = useGoTo()
  const records = recordsOf(entry)
  if (records.length === 0) return null
  const linked = records.slice(0, LINKS_SHOWN).map((record) => ({ ...record, ...nameRecord(record, job) }))
  return (
    <>
      <h3 className={styles['part']}>About</h3>
      <ul className={styles['links']}>
        {linked.map(({ kind, id, name, place }) => (
          <li key={`${kind}-${id}`}>
            {place === null ? (
              <span className={styles['quiet']}>{name}</span>
            ) : (
              <button type="button" className={styles['link']} onClick={() => goTo(place)}>
                {name}
              </button>
            )}
          </li>
        ))}
        {records.length > LINKS_SHOWN ? (
          <li className={styles['quiet']}>and {records.length - LINKS_SHOWN} more</li>
        ) : null}
      </ul>
    </>
  )
}

function recordsOf({ event }: LogEntry): readonly RecordName[] {
  if ('changes' in event) return event.changes.map((change) => ({ kind: change.record, id: change.id }))
  return [
    ...('photoId' in event ? [{ kind: 'photo' as const, id: event.photoId }] : []),
    ...('videoId' in event ? [{ kind: 'video' as const, id: event.videoId }] : []),
    ...('attachmentId' in event ? [{ kind: 'attachment' as const, id: event.attachmentId }] : []),
  ]
}
