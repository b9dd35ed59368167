import { type FormEvent, useState } from 'react'
import { useLibrary } from '../state/library.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './operator-question.module.css'

interface OperatorQuestionProps {
  readonly isOpen: boolean
  readonly onClose: () => void
}

/** Asks who works here. */
export function OperatorQuestion({ isOpen, onClose }: OperatorQuestionProps) {
  const { info } = useLibrary()
  return (
    <Dialog title="Who works here?" isOpen={isOpen} onClose={onClose} size="small">
      <OperatorForm key={info?.operator ?? ''} known={info?.operator ?? ''} onDone={onClose} />
    </Dialog>
  )
}

function OperatorForm({ known, onDone }: { known: string; onDone: () => void }) {
  const { setOperator } = useLibrary()
  const [name, setName] = useState(known)
  async function keep(event: FormEvent) {
    event.preventDefault()
    if (await setOperator(name.trim())) onDone()
  }
  return (
    <form className={styles['form']} onSubmit={(event) => void keep(event)}>
      <TextField
        label="Your name"
        value={name}
        onChange={setName}
        maxLength={120}
        help="Each entry of a job's evidence log says who made it. The name stays in this library."
      />
      <div className={styles['foot']}>
        <Button look="main" type="submit" isDisabled={name.trim() === ''}>
          Use this name
        </Button>
      </div>
    </form>
  )
}
