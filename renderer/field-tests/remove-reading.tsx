import { readingLabel } from '../../app/evidence/reading-label.ts'
import type { Reading } from '../../app/fieldtest/reading.ts'
import { useEdit } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'

/** Takes a reading away; undo brings it back. */
export function RemoveReading({ reading }: { reading: Reading }) {
  const edit = useEdit()
  const { select } = useSelection()
  async function remove() {
    if ((await edit('readings.remove', { id: reading.id })) !== null) select({ kind: 'none' })
  }
  return (
    <p>
      <Button look="danger" onPress={() => void remove()}>
        Remove {readingLabel(reading.number)}
      </Button>
    </p>
  )
}
