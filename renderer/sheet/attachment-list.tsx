import { fileAddress } from '../../app/contract/files.ts'
import { useJob } from '../state/job-state.tsx'
import { bytesWords } from '../ui/quantity-words.ts'
import styles from './sheet.module.css'

/** Files of the job that are kept but not shown as photos. */
export function AttachmentList() {
  const { attachments } = useJob()
  if (attachments.length === 0) return null
  return (
    <section className={styles['section']} aria-label="Other files">
      <header className={styles['side']}>
        <h3 className={styles['sectionTitle']}>Other files</h3>
        <p className={styles['note']}>Kept byte for byte beside the photos.</p>
      </header>
      <ul className={styles['files']}>
        {attachments.map((attachment) => (
          <li key={attachment.id} className={styles['file']}>
            <a href={fileAddress({ kind: 'attachment', id: attachment.id })} download={attachment.file.fileName}>
              {attachment.file.fileName}
            </a>
            <span className={styles['quiet']}>{bytesWords(attachment.file.bytes)}</span>
            <span className={styles['quiet']}>
              {attachment.typeLabel}. {attachment.why}
            </span>
          </li>
        ))}
      </ul>
    </section>
  )
}
