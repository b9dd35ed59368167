import { useState } from 'react'
import type { NarrationId } from '../../app/job/ids.ts'
import { useEdit } from '../state/job-state.tsx'
import { Badge } from '../ui/badge.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { SelectField } from '../ui/select-field.tsx'
import styles from './narration.module.css'
import type { ReadNarration } from './use-narration.ts'

interface NarrationBarProps {
  readonly read: ReadNarration
  readonly all: readonly ReadNarration[]
  readonly onChoose: (id: NarrationId) => void
}

/** Which narration is shown, how far its drafts are decided, what of its file could not be read, and taking it out again. */
export function NarrationBar({ read, all, onChoose }: NarrationBarProps) {
  const { narration, drafts } = read
  const edit = useEdit()
  const open = drafts.filter(({ decision }) => decision === null).length
  return (
    <div className={styles['bar']}>
      {all.length > 1 ? (
        <SelectField
          label="Narration"
          hideLabel
          options={all.map((one) => ({ key: one.narration.id, label: one.narration.name }))}
          value={narration.id}
          onChange={(id) => (id === null ? undefined : onChoose(id))}
        />
      ) : (
        <strong>{narration.name}</strong>
      )}
      <span className={styles['quiet']}>
        {countWords(narration.cues.length, 'cue')}, {countWords(drafts.length, 'draft')}
      </span>
      {open === 0 ? <Badge tone="good">All decided</Badge> : <Badge tone="caution">{open} not decided</Badge>}
      <FileProblems read={read} />
      <span className={styles['gap']} />
      <Button look="quiet" onPress={() => void edit('narrations.remove', { id: narration.id })}>
        Remove the narration
      </Button>
    </div>
  )
}

function FileProblems({ read: { narration } }: Pick<NarrationBarProps, 'read'>) {
  const [isOpen, setOpen] = useState(false)
  if (narration.problems.length === 0) return null
  return (
    <>
      <Button look="quiet" onPress={() => setOpen(true)}>
        {countWords(narration.problems.length, 'place')} of the file not read
      </Button>
      <Dialog title={`Not read in ${narration.name}`} isOpen={isOpen} onClose={() => setOpen(false)}>
        <ul>
          {narration.problems.map(({ line, reason }) => (
            <li key={`${line} ${reason}`}>
              Line {line}: {reason}
            </li>
          ))}
        </ul>
      </Dialog>
    </>
  )
}
