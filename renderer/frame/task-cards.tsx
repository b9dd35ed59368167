import { useState } from 'react'
import type { TaskState } from '../../app/contract/intake.ts'
import type { JobId } from '../../app/job/ids.ts'
import { type Sending, useTasks } from '../state/tasks.tsx'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { Progress } from '../ui/progress.tsx'
import { bytesWords, countWords, durationWords } from '../ui/quantity-words.ts'
import styles from './task-cards.module.css'
import { TaskReport } from './task-report.tsx'
import { rateWords } from './task-words.ts'

/** The long-running work: of one job, or of all when `jobId` is null. */
export function TaskCards({ jobId }: { jobId: JobId | null }) {
  const { tasks, sending } = useTasks()
  const shown = tasks.filter((task) => jobId === null || task.jobId === jobId)
  const ownSending = sending !== null && (jobId === null || sending.jobId === jobId) ? sending : null
  if (shown.length === 0 && ownSending === null) return null
  return (
    <div className={styles['cards']} role="region" aria-label="Work in progress">
      {ownSending === null ? null : <SendingCard sending={ownSending} />}
      {shown.map((task) => (
        <TaskCard key={task.taskId} task={task} />
      ))}
    </div>
  )
}

function SendingCard({ sending }: { sending: Sending }) {
  return (
    <div className={styles['card']}>
      <Progress
        label={`Sending ${countWords(sending.files, 'file')}`}
        done={sending.sentBytes}
        total={sending.totalBytes}
        words={`${bytesWords(sending.sentBytes)} of ${bytesWords(sending.totalBytes)}`}
      />
    </div>
  )
}

function TaskCard({ task }: { task: TaskState }) {
  const { cancel, putAway } = useTasks()
  const [isOpen, setOpen] = useState(false)
  const hasReport = task.intake !== null && hasNotes(task.intake)
  return (
    <div className={styles['card']}>
      {task.state === 'running' ? <RunningTask task={task} /> : <EndedTask task={task} />}
      <div className={styles['actions']}>
        {hasReport ? (
          <Button look="quiet" onPress={() => setOpen(true)}>
            What happened
          </Button>
        ) : null}
        {task.state === 'running' ? (
          <Button look="quiet" onPress={() => void cancel(task.taskId)}>
            Cancel
          </Button>
        ) : (
          <IconButton icon="close" label="Put this away" onPress={() => putAway(task.taskId)} />
        )}
      </div>
      <TaskReport task={task} isOpen={isOpen} onClose={() => setOpen(false)} />
    </div>
  )
}

function RunningTask({ task }: { task: TaskState }) {
  const left = task.leftMs === null ? '' : `, ${durationWords(task.leftMs)} left`
  return (
    <>
      <Progress label={task.title} done={task.done} total={task.total} />
      <p className={styles['doing']}>
        {rateWords(task)}
        {left}
      </p>
    </>
  )
}

function EndedTask({ task }: { task: TaskState }) {
  const words = { running: '', done: '', cancelled: 'Cancelled. ', failed: 'Failed. ' } as const satisfies Record<
    TaskState['state'],
    string
  >
  return (
    <>
      <p className={styles['ended']}>{task.title}</p>
      <p className={styles['doing']} role="status">
        {words[task.state]}
        {outcomeWords(task)}
      </p>
    </>
  )
}

function hasNotes(intake: NonNullable<TaskState['intake']>): boolean {
  return intake.failed.length + intake.doubles.length + intake.attached.length + intake.videos.length > 0
}

function outcomeWords(task: TaskState): string {
  if (task.error !== null) return task.error
  if (task.intake === null) return task.state === 'done' ? 'Done.' : ''
  const { photosAdded, videosAdded, failed, doubles, attached } = task.intake
  const videos = videosAdded === 0 ? '' : ` and ${countWords(videosAdded, 'video')}`
  const parts = [`${countWords(photosAdded, 'photo')}${videos} taken in`]
  if (attached.length > 0) parts.push(`${countWords(attached.length, 'other file')} kept`)
  if (doubles.length > 0) parts.push(`${countWords(doubles.length, 'double')} skipped`)
  if (failed.length > 0) parts.push(`${countWords(failed.length, 'file')} not taken in`)
  return parts.join(', ')
}
