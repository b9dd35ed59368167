import { useEffect, useState } from 'react'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './tag-bar.module.css'

const reasons = [
  'blurred',
  'taken by accident',
  'same view as another',
  'shows people or private things',
  'not of this property',
]

interface LeaveOutDialogProps {
  readonly isOpen: boolean
  readonly count: number
  readonly onLeaveOut: (reason: string) => void
  readonly onClose: () => void
}

/** Asks why photos stay out of the packet. */
export function LeaveOutDialog({ isOpen, count, onLeaveOut, onClose }: LeaveOutDialogProps) {
  const [reason, setReason] = useState('')
  useEffect(() => {
    if (isOpen) setReason('')
  }, [isOpen])
  const isReady = reason.trim() !== ''
  return (
    <Dialog
      title={`Leave ${countWords(count, 'photo')} out of the packet`}
      isOpen={isOpen}
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={!isReady} onPress={() => onLeaveOut(reason.trim())}>
            Leave out
          </Button>
        </>
      }
    >
      <form
        className={styles['reasonForm']}
        onSubmit={(event) => {
          event.preventDefault()
          if (isReady) onLeaveOut(reason.trim())
        }}
      >
        <p>The originals stay in custody, and the packet lists them as left out with this reason.</p>
        <TextField label="Why" value={reason} onChange={setReason} maxLength={400} />
        <div className={styles['reasons']} role="group" aria-label="Usual reasons">
          {reasons.map((words) => (
            <Button key={words} onPress={() => onLeaveOut(words)}>
              {words}
            </Button>
          ))}
        </div>
      </form>
    </Dialog>
  )
}
