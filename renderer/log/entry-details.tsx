import { type LogEntry, type RecordKind } from '../../app/evidence/log-entry.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { Place } from '../frame/places.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { entryWords } from './entry-words.ts'
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

interface RecordName {
  readonly kind: RecordKind
  readonly id: string
}

function recordsOf({ event }: LogEntry): readonly RecordName[] {
  if ('changes' in event) return event.changes.map((change) => ({ kind: change.record, id: change.id }))
  return 'photoId' in event ? [{ kind: 'photo', id: event.photoId }] : []
}

/** What a record is called now, and where it is; no place when it is gone. */
function nameRecord({ kind, id }: RecordName, job: JobSnapshot): { name: string; place: Place | null } {
  switch (kind) {
    case 'photo': {
      const photo = job.photos.find((one) => one.id === id)
      if (photo === undefined) return { name: 'a photo', place: null }
      return { name: photoLabel(photo.number), place: { workspace: 'photos', target: { kind, id } } }
    }
    case 'finding': {
      const finding = job.findings.find((one) => one.id === id)
      if (finding === undefined) return { name: 'a finding that was removed', place: null }
      return { name: findingLabel(finding.number), place: { workspace: 'findings', target: { kind, id } } }
    }
    case 'facet': {
      const facet = job.facets.find((one) => one.id === id)
      if (facet === undefined) return { name: 'a facet that was removed', place: null }
      return { name: `Facet ${facet.letter}`, place: { workspace: 'plan', target: { kind, id } } }
    }
    case 'outline': {
      const outline = job.outlines.find((one) => one.id === id)
      if (outline === undefined) return { name: 'an outline that was removed', place: null }
      return { name: `Outline "${outline.name}"`, place: { workspace: 'plan', target: null } }
    }
    case 'reading': {
      const reading = job.readings.find((one) => one.id === id)
      if (reading === undefined) return { name: 'a reading that was removed', place: null }
      return { name: `Reading ${reading.number}`, place: { workspace: 'findings', target: { kind, id } } }
    }
    case 'sheet':
      return { name: 'Job sheet', place: { workspace: 'sheet', target: null } }
    case 'camera':
      return { name: 'Camera clock', place: { workspace: 'sheet', target: { kind: 'field', id: 'cameras' } } }
    case 'weather-station': {
      const station = job.weather.stations.find((one) => one.id === id)
      if (station === undefined) return { name: 'a station that was removed', place: null }
      return { name: `Station ${station.code}`, place: { workspace: 'weather', target: null } }
    }
    case 'weather-source':
    case 'weather-choices':
      return { name: 'Weather', place: { workspace: 'weather', target: null } }
    case 'frame':
      return { name: 'Roof plan', place: { workspace: 'plan', target: null } }
  }
}
