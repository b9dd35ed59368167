import { useState } from 'react'
import { useSelection } from '../state/selection.tsx'
import { useMessages } from '../ui/message.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import type { FindingDraft } from './finding-draft.ts'
import { FindingFormFields } from './finding-form.tsx'
import { UnsavedQuestion } from './unsaved-question.tsx'
import { type FormStart, useFindingForm } from './use-finding-form.ts'

interface FindingDialogProps {
  /** What the new finding starts with. */
  readonly start: FindingDraft
  /** Saves the finding in place of the usual way; null when it was refused. */
  readonly onSaved?: FormStart['onSaved']
  /** Called when the finding is saved or given up. */
  readonly onClose: () => void
}

/** A new finding in a window over the desk, so that the work under it stays where it is. */
export function FindingDialog({ start, onSaved, onClose }: FindingDialogProps) {
  const form = useFindingForm({ start, id: null, onSaved })
  const { say } = useMessages()
  const { select } = useSelection()
  const [asking, setAsking] = useState(false)
  async function save() {
    setAsking(false)
    const id = await form.save()
    if (id === null) return
    if (onSaved === undefined) select({ kind: 'finding', id })
    say({ tone: 'done', text: 'The finding is saved.' })
    onClose()
  }
  function leave() {
    if (form.isChanged) setAsking(true)
    else onClose()
  }
  return (
    <>
      <Dialog
        title="New finding"
        isOpen
        onClose={leave}
        size="large"
        actions={
          <>
            <Button onPress={leave}>Cancel</Button>
            <Button look="main" onPress={() => void save()}>
              Save the finding <KeyHint keys="Ctrl+Enter" />
            </Button>
          </>
        }
      >
        <FindingFormFields form={form} onSave={() => void save()} />
      </Dialog>
      <UnsavedQuestion
        isOpen={asking}
        what="the new finding"
        onSave={() => void save()}
        onDiscard={onClose}
        onKeep={() => setAsking(false)}
      />
    </>
  )
}
