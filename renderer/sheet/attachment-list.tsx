import { useMemo } from 'react'
import { fileAddress } from '../../app/contract/files.ts'
import { attachmentKind, attachmentKindLabels, type Attachment } from '../../app/evidence/attachment.ts'
import { shortHash } from '../../app/packet/format/files.ts'
import { dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { SavedLine } from '../ui/saved-line.tsx'
import { bytesWords } from '../ui/quantity-words.ts'
import styles from './sheet.module.css'

/** Files of the job that are kept but are neither photos nor videos: what each is, where it can be saved, what it is for. */
export function AttachmentList() {
  const { attachments } = useJob()
  return (
    <section className={styles['section']} aria-label="Other files">
      <header className={styles['side']}>
        <h3 className={styles['sectionTitle']}>Other files</h3>
        <p className={styles['note']}>Kept byte for byte beside photos and videos, and listed in the packet.</p>
      </header>
      {attachments.length === 0 ? (
        <p className={styles['quiet']}>
          None yet. Drop permits, letters, subtitles or sound recordings on the window to keep them with the job.
        </p>
      ) : null}
      <ul className={styles['files']}>
        {attachments.map((attachment) => (
          <AttachmentRow key={attachment.id} attachment={attachment} />
        ))}
      </ul>
    </section>
  )
}

function AttachmentRow({ attachment }: { attachment: Attachment }) {
  const job = useJob()
  const edit = useEdit()
  const clock = useMemo(() => jobClock(job), [job])
  const { id, file, typeLabel, why, tags, takenInAtMs } = attachment
  return (
    <li className={styles['file']}>
      <div>
        <p>
          <a href={fileAddress({ kind: 'attachment', id })} download={file.fileName} title="Save a copy">
            {file.fileName}
          </a>
        </p>
        <p className={styles['quiet']}>
          {attachmentKindLabels[attachmentKind(attachment)]}: {typeLabel}, {bytesWords(file.bytes)}
        </p>
        <p className={styles['quiet']}>
          Taken in {dayWords(takenInAtMs, clock)} {timeWords(takenInAtMs, clock)}, SHA-256{' '}
          <code title={file.sha256}>{shortHash(file.sha256)}…</code>
        </p>
      </div>
      <div>
        <SavedLine
          label={`What ${file.fileName} is`}
          hideLabel
          placeholder="What this file is, in a few words"
          value={tags.description}
          onSave={(description) => void edit('attachments.describe', { id, description })}
        />
        <p className={styles['quiet']}>
          {[why, ...file.problems.map(({ text }) => text)].filter((text) => text !== '').join(' ')}
        </p>
      </div>
    </li>
  )
}
