import type { TaskState } from '../../app/contract/intake.ts'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import styles from './task-cards.module.css'

interface TaskReportProps {
  readonly task: TaskState
  readonly isOpen: boolean
  readonly onClose: () => void
}

/** What a take-in brought beside photos, and what it left out and why, file by file. */
export function TaskReport({ task, isOpen, onClose }: TaskReportProps) {
  const { intake } = task
  if (intake === null) return null
  const doubles = intake.doubles.map(({ fileName, sameAs }) => ({ fileName, reason: `The same file as ${sameAs}.` }))
  return (
    <Dialog
      title={task.title}
      isOpen={isOpen}
      onClose={onClose}
      actions={
        <Button look="main" onPress={onClose}>
          Done
        </Button>
      }
    >
      <NoteList title="Videos" notes={intake.videos} />
      <NoteList title="Not taken in" notes={intake.failed} />
      <NoteList title="Doubles, kept once" notes={doubles} />
      <NoteList title="Kept as files, not as photos" notes={intake.attached} />
    </Dialog>
  )
}

function NoteList({
  title,
  notes,
}: {
  title: string
  notes: readonly { readonly fileName: string; readonly reason: string }[]
}) {
  if (notes.length === 0) return null
  return (
    <section className={styles['notes']}>
      <h3 className={styles['notesTitle']}>
        {title} <span className={styles['count']}>{notes.length}</span>
      </h3>
      <ul>
        {notes.map((note, at) => (
          <li key={`${note.fileName} ${at}`} className={styles['note']}>
            <span className={styles['file']}>{note.fileName}</span>
            <span className={styles['reason']}>{note.reason}</span>
          </li>
        ))}
      </ul>
    </section>
  )
}
