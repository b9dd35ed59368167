import type { Attachment } from '../../app/evidence/attachment.ts'
import { useCommands } from '../state/commands.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useMessages } from '../ui/message.tsx'
import { Button } from '../ui/button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { countWords } from '../ui/quantity-words.ts'
import styles from './narration.module.css'

/** Subtitle files among the attachments whose cues are not in the job yet. */
export function useWaitingFiles(): readonly Attachment[] {
  const { attachments, narrations } = useJob()
  return attachments.filter(
    ({ id, file, typeLabel }) =>
      (/\.(srt|vtt)$/i.test(file.fileName) || /subtitle/i.test(typeLabel)) &&
      !narrations.some((narration) => narration.attachmentId === id),
  )
}

/** Offers each waiting subtitle file for import. */
export function ImportBar({ waiting }: { waiting: readonly Attachment[] }) {
  const edit = useEdit()
  const { say } = useMessages()
  async function take(attachment: Attachment) {
    const read = await edit('narrations.import', { attachmentId: attachment.id })
    if (read === null) return
    const lost = read.problems === 0 ? '' : ` ${countWords(read.problems, 'place')} of the file could not be read.`
    say({ tone: 'done', text: `${countWords(read.cues, 'cue')} imported from ${attachment.file.fileName}.${lost}` })
  }
  const [first] = waiting
  useCommands([
    {
      id: 'narration.import',
      label: 'Import the waiting subtitle file',
      keys: 'I',
      enabled: first !== undefined,
      perform: () => void (first === undefined ? null : take(first)),
    },
  ])
  if (first === undefined) return null
  return (
    <div className={styles['bar']} role="group" aria-label="Subtitle files that wait">
      {waiting.map((attachment) => (
        <Button key={attachment.id} look="main" onPress={() => void take(attachment)}>
          Import {attachment.file.fileName} {attachment === first ? <KeyHint keys="I" /> : null}
        </Button>
      ))}
    </div>
  )
}
