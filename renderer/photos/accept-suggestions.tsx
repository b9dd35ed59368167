import { useState } from 'react'
import { useCommands } from '../state/commands.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { usePlacement } from '../state/placement.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { useMessages } from '../ui/message.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './accept-suggestions.module.css'
import { likelyCounts, readThreshold } from './likely-counts.ts'
import { PlacementBasis } from './placement-basis.tsx'
import tally from './photos-workspace.module.css'

const FIRST_PERCENT = '90'

/** Opens the question whether all suggestions that are sure enough shall be taken over. */
export function AcceptSuggestions() {
  const [isOpen, setOpen] = useState(false)
  useCommands([
    {
      id: 'photos.accept-suggestions',
      label: 'Take over all sure suggestions',
      keys: 'Shift+G',
      enabled: true,
      perform: () => setOpen(true),
    },
  ])
  return (
    <>
      <button type="button" className={tally['countButton']} onClick={() => setOpen(true)}>
        Suggested facets…
      </button>
      {isOpen ? <AcceptDialog onClose={() => setOpen(false)} /> : null}
    </>
  )
}

function AcceptDialog({ onClose }: { onClose: () => void }) {
  const { photos, facets } = useJob()
  const { placement } = usePlacement()
  const edit = useEdit()
  const { say } = useMessages()
  const [text, setText] = useState(FIRST_PERCENT)
  const threshold = readThreshold(text)
  const likely = likelyCounts({ placement, photos, facets, least: threshold.ok ? threshold.share : 1 })
  const count = threshold.ok ? likely.count : 0
  async function accept() {
    if (!threshold.ok || count === 0) return
    onClose()
    const done = await edit('placement.accept', { leastProbability: threshold.share })
    if (done === null) return
    say({
      tone: 'done',
      text: `${countWords(done.tagged, 'photo')} tagged as suggested.`,
      help: 'One undo takes it all back.',
    })
  }
  return (
    <Dialog
      title="Take over suggested facets"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={count === 0} onPress={() => void accept()}>
            {count === 0 ? 'Tag none' : `Tag ${countWords(count, 'photo')}`}
          </Button>
        </>
      }
    >
      <form
        className={styles['form']}
        onSubmit={(event) => {
          event.preventDefault()
          void accept()
        }}
      >
        <PlacementBasis />
        {facets.length === 0 ? null : (
          <>
            <div className={styles['threshold']}>
              <TextField
                label="At least this sure, %"
                value={text}
                onChange={setText}
                inputMode="decimal"
                error={threshold.ok ? null : threshold.error}
              />
            </div>
            <p role="status">{placement === null ? 'Suggestions are being worked out…' : likely.sentence}</p>
          </>
        )}
      </form>
    </Dialog>
  )
}
