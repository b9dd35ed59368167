import { useEffect, useState } from 'react'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './tag-bar.module.css'

interface LeaveOutDialogProps {
  readonly isOpen: boolean
  readonly count: number
  /** Reasons to choose from, each by its digit. */
  readonly reasons: readonly string[]
  readonly onLeaveOut: (reason: string) => void
  readonly onClose: () => void
}

/** Asks why photos stay out of the packet. */
export function LeaveOutDialog({ isOpen, count, reasons, onLeaveOut, onClose }: LeaveOutDialogProps) {
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
        <TextField
          label="Why"
          value={reason}
          onChange={setReason}
          maxLength={400}
          placeholder="Type a reason, or the digit of one below"
          onKeyDown={(event) => {
            const chosen = reason === '' ? reasons[Number(event.key) - 1] : undefined
            if (chosen === undefined) return
            event.preventDefault()
            onLeaveOut(chosen)
          }}
        />
        <div className={styles['reasons']} role="group" aria-label="Reasons">
          {reasons.map((words, at) => (
            <Button key={words} onPress={() => onLeaveOut(words)}>
              <KeyHint keys={`${at + 1}`} /> {words}
            </Button>
          ))}
        </div>
      </form>
    </Dialog>
  )
}
