import { fileAddress } from '../../app/contract/files.ts'
import type { PacketSummary } from '../../app/contract/jobs.ts'
import { dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useJob } from '../state/job-state.tsx'
import { Icon } from '../ui/icon.tsx'
import { bytesWords, countWords } from '../ui/quantity-words.ts'
import styles from './packet.module.css'

/** The revisions issued so far, newest first, with what proves them. */
export function IssuedList() {
  const job = useJob()
  const { packets } = job
  if (packets.length === 0) return <p className={styles['quiet']}>No revision is issued yet.</p>
  const clock = jobClock(job)
  return (
    <ul>
      {packets
        .toSorted((a, b) => b.revision - a.revision)
        .map((packet) => (
          <IssuedPacket
            key={packet.id}
            packet={packet}
            when={`${dayWords(packet.issuedAtMs, clock)} ${timeWords(packet.issuedAtMs, clock)}`}
          />
        ))}
    </ul>
  )
}

function IssuedPacket({ packet, when }: { packet: PacketSummary; when: string }) {
  return (
    <li className={styles['issued']}>
      <p className={styles['issuedHead']}>
        <strong>Revision {packet.revision}</strong>
        <span className={styles['quiet']}>{when}</span>
      </p>
      <p className={styles['links']}>
        <a href={fileAddress({ kind: 'packet', id: packet.id })} download={packet.pdfName}>
          <Icon name="download" />
          Packet, {countWords(packet.pages, 'page')}, {bytesWords(packet.pdfBytes)}
        </a>
        <a href={fileAddress({ kind: 'bundle', id: packet.id })} download={packet.bundleName}>
          <Icon name="download" />
          Evidence bundle, {bytesWords(packet.bundleBytes)}
        </a>
      </p>
      <dl className={styles['hashes']}>
        <dt>SHA-256 of the PDF</dt>
        <dd>{packet.pdfSha256}</dd>
        <dt>Head of the log</dt>
        <dd>{packet.headHash}</dd>
      </dl>
    </li>
  )
}
