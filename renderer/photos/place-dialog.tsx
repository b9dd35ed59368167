import { useState } from 'react'
import { type Photo, photoLabel } from '../../app/evidence/photo.ts'
import { inWalkOrder, placeAfter } from '../../app/evidence/walk-order.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { TextField } from '../ui/text-field.tsx'
import { photoByTypedNumber } from './typed-photo.ts'
import styles from './tag-bar.module.css'

interface PlaceDialogProps {
  /** Photos without a time. */
  readonly photos: readonly Photo[]
  readonly onClose: () => void
}

/** Asks after which photo others without a time belong. Their time stays unknown. */
export function PlaceDialog({ photos: moving, onClose }: PlaceDialogProps) {
  const { photos } = useJob()
  const edit = useEdit()
  const ids = moving.map(({ id }) => id)
  const others = inWalkOrder(photos).filter((photo) => !ids.includes(photo.id))
  const [typed, setTyped] = useState('')
  const [isFirst, setFirst] = useState(false)
  const after = isFirst ? null : photoByTypedNumber(others, typed)
  const place = !isFirst && after === null ? null : placeAfter(photos, { afterId: after?.id ?? null, moving: ids })
  const error = typed === '' || isFirst || place !== null ? null : 'No photo of this number has a place yet.'
  const before = photos.find(({ id }) => id === place?.beforeId)
  async function save() {
    if (place === null) return
    const saved = await edit('photos.tag', { photoIds: ids, set: { placedBetween: place } })
    if (saved !== null) onClose()
  }
  return (
    <Dialog
      title={`Place ${moving.length === 1 ? photoLabel(moving[0]?.number ?? 0) : countWords(moving.length, 'photo')} by hand`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" isDisabled={place === null} onPress={() => void save()}>
            Place
          </Button>
        </>
      }
    >
      <form
        className={styles['reasonForm']}
        onSubmit={(event) => {
          event.preventDefault()
          void save()
        }}
      >
        <p>The order is kept and shown as yours. No time is made up.</p>
        <TextField
          label="After photo"
          placeholder="P-012"
          value={typed}
          onChange={setTyped}
          isDisabled={isFirst}
          error={error}
        />
        <Checkbox isSelected={isFirst} onChange={setFirst}>
          Before all others
        </Checkbox>
        <p aria-live="polite">{placeWords({ isReady: place !== null, after, before })}</p>
      </form>
    </Dialog>
  )
}

function placeWords(place: { isReady: boolean; after: Photo | null; before: Photo | undefined }): string {
  const { isReady, after, before } = place
  if (!isReady) return 'Type the number of the photo that was taken before.'
  const from = after === null ? 'before all others' : `after ${photoLabel(after.number)}`
  return before === undefined ? `Comes ${from}.` : `Comes ${from} and before ${photoLabel(before.number)}.`
}
