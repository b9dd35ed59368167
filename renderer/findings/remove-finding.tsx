import { useState } from 'react'
import { type Finding, findingLabel } from '../../app/evidence/finding.ts'
import { useEdit } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'

interface RemoveFindingProps {
  readonly finding: Finding
  readonly onRemoved?: () => void
}

/** Takes a finding off the record, after saying what becomes of its number. */
export function RemoveFinding({ finding, onRemoved }: RemoveFindingProps) {
  const edit = useEdit()
  const { select } = useSelection()
  const [asking, setAsking] = useState(false)
  const label = findingLabel(finding.number)
  async function remove() {
    setAsking(false)
    if ((await edit('findings.remove', { id: finding.id })) === null) return
    select({ kind: 'none' })
    onRemoved?.()
  }
  return (
    <>
      <Button look="danger" onPress={() => setAsking(true)}>
        Remove
      </Button>
      <Dialog
        title={`Remove ${label}?`}
        isOpen={asking}
        onClose={() => setAsking(false)}
        role="alertdialog"
        size="small"
        actions={
          <>
            <Button onPress={() => setAsking(false)}>Keep it</Button>
            <Button look="danger" onPress={() => void remove()}>
              Remove {label}
            </Button>
          </>
        }
      >
        <p>
          The number {label} stays unused: no later finding gets it, and the evidence log says when it was removed. Its
          photos stay in the job. Undo brings it back.
        </p>
      </Dialog>
    </>
  )
}
