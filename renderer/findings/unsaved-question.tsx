import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'

interface UnsavedQuestionProps {
  readonly isOpen: boolean
  /** What is unsaved: `F-12` or `the new finding`. */
  readonly what: string
  readonly onSave: () => void
  readonly onDiscard: () => void
  readonly onKeep: () => void
}

/** Asks before a changed form is left. */
export function UnsavedQuestion({ isOpen, what, onSave, onDiscard, onKeep }: UnsavedQuestionProps) {
  return (
    <Dialog
      title={`Save the changes to ${what}?`}
      isOpen={isOpen}
      onClose={onKeep}
      role="alertdialog"
      size="small"
      actions={
        <>
          <Button look="quiet" onPress={onKeep}>
            Go on editing
          </Button>
          <Button onPress={onDiscard}>Discard</Button>
          <Button look="main" onPress={onSave}>
            Save
          </Button>
        </>
      }
    >
      <p>The form has changes that are not saved yet.</p>
    </Dialog>
  )
}
