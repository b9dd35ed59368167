import { fileAddress } from '../../app/contract/files.ts'
import { diaryTimeWords } from '../../app/diary/diary-time.ts'
import { diaryLabel } from '../../app/diary/entry.ts'
import { headWords } from '../../app/diary/entry-words.ts'
import { handovers } from '../../app/diary/handovers.ts'
import { useDesk } from '../client/client-context.tsx'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { useMessages } from '../ui/message.tsx'
import styles from './diary.module.css'

/** Documents that came in and went out, to print and to sign. */
export function DocumentsPane() {
  const { job, diary } = useJob()
  const desk = useDesk()
  const { say } = useMessages()
  const listed = handovers(diary.entries)
  async function print() {
    const reply = await desk.call('diary.handover-list', { jobId: job.id })
    if (!reply.ok) return say({ tone: 'error', text: reply.error.message, help: reply.error.help })
    const link = document.createElement('a')
    link.href = fileAddress({ kind: 'draft', id: reply.value.draftId })
    link.download = `${job.number}-handovers.pdf`
    link.click()
  }
  return (
    <div className={styles['pane']}>
      <div className={styles['actions']}>
        <Button isDisabled={listed.length === 0} onPress={() => void print()}>
          Save the list as PDF
        </Button>
        <span className={styles['quiet']}>
          Printed with the hashes of packets handed over and lines to sign. Nothing else of the diary is on it.
        </span>
      </div>
      {listed.length === 0 ? (
        <p className={styles['quiet']}>Nothing received or handed over is noted yet. Add it under Entries.</p>
      ) : (
        <table className={styles['list']} aria-label="Documents received and handed over">
          <thead>
            <tr>
              <th scope="col">Entry</th>
              <th scope="col">When</th>
              <th scope="col">What</th>
              <th scope="col">How</th>
              <th scope="col">Signed by</th>
            </tr>
          </thead>
          <tbody>
            {listed.map(({ number, content }) => (
              <tr key={number}>
                <td>{diaryLabel(number)}</td>
                <td>{diaryTimeWords(content.at)}</td>
                <td>{headWords(content)}</td>
                <td>{content.medium}</td>
                <td>{content.kind === 'handed-over' ? content.signedBy : ''}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </div>
  )
}
