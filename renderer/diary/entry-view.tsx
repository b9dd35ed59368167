import { useMemo, useState } from 'react'
import { fileAddress } from '../../app/contract/files.ts'
import { diaryTimeWords } from '../../app/diary/diary-time.ts'
import { diaryLabel, type DiaryEntry } from '../../app/diary/entry.ts'
import { headWords } from '../../app/diary/entry-words.ts'
import { dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './diary.module.css'

interface EntryViewProps {
  readonly entry: DiaryEntry
  readonly onCorrect: () => void
}

/** One entry whole: what was said, its files, what it said before, and why it was struck out. */
export function EntryView({ entry, onCorrect }: EntryViewProps) {
  const job = useJob()
  const clock = useMemo(() => jobClock(job), [job])
  const { content, number, struck, earlier, madeAtMs, madeBy } = entry
  const at = (ms: number) => `${dayWords(ms, clock)} ${timeWords(ms, clock)}`
  return (
    <section className={styles['view']} aria-label={`Entry ${diaryLabel(number)}`}>
      <h3>
        {diaryLabel(number)} {headWords(content)}
      </h3>
      <p className={styles['quiet']}>
        {diaryTimeWords(content.at)}. Written {at(madeAtMs)} by {madeBy}.
      </p>
      <p className={styles['words']}>{content.text}</p>
      <EntryFiles entry={entry} />
      {struck === null ? null : (
        <p className={styles['caution']}>
          Struck out {at(struck.atMs)} by {struck.by}: {struck.because}
        </p>
      )}
      {earlier.length === 0 ? null : (
        <details>
          <summary>Before corrections ({earlier.length})</summary>
          {earlier.map((before) => (
            <p key={before.replacedAtMs} className={styles['words']}>
              <span className={styles['quiet']}>
                Until {at(before.replacedAtMs)}, corrected by {before.replacedBy}
                {before.because === '' ? '' : `: ${before.because}`}.
              </span>{' '}
              {diaryTimeWords(before.content.at)}. {headWords(before.content)}. {before.content.text}
            </p>
          ))}
        </details>
      )}
      <EntryActions key={entry.id} entry={entry} onCorrect={onCorrect} />
    </section>
  )
}

function EntryFiles({ entry }: { entry: DiaryEntry }) {
  const { attachments } = useJob()
  const files = attachments.filter(({ id }) => entry.content.attachmentIds.includes(id))
  if (files.length === 0) return null
  return (
    <p>
      {files.map(({ id, file }) => (
        <a key={id} href={fileAddress({ kind: 'attachment', id })} download={file.fileName}>
          {file.fileName}{' '}
        </a>
      ))}
    </p>
  )
}

function EntryActions({ entry, onCorrect }: EntryViewProps) {
  const edit = useEdit()
  const [because, setBecause] = useState('')
  const { id, content, struck } = entry
  if (struck !== null) {
    return (
      <div className={styles['actions']}>
        <Button onPress={() => void edit('diary.strike', { id, because: null })}>Take the striking out back</Button>
      </div>
    )
  }
  return (
    <div className={styles['actions']}>
      <Button onPress={onCorrect}>Correct…</Button>
      {content.kind === 'reminder' ? (
        <Button onPress={() => void edit('diary.save', { id, content: { ...content, isDone: !content.isDone } })}>
          {content.isDone ? 'Not done after all' : 'Done'}
        </Button>
      ) : null}
      <TextField
        label="Why it is struck out"
        hideLabel
        placeholder="Why it is struck out"
        value={because}
        onChange={setBecause}
      />
      <Button
        look="danger"
        isDisabled={because.trim().length < 3}
        onPress={() => void edit('diary.strike', { id, because })}
      >
        Strike out
      </Button>
    </div>
  )
}
