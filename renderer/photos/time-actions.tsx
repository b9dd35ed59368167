import { useState } from 'react'
import type { Photo } from '../../app/evidence/photo.ts'
import { isPlacedByHand } from '../../app/evidence/walk-order.ts'
import { useEdit } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { PlaceDialog } from './place-dialog.tsx'

const passes = [
  { key: 'first', label: 'First' },
  { key: 'second', label: 'Second' },
] as const

/** What a person can say of a photo's time: which of two hours, or between which others it belongs. */
export function TimeActions({ photo }: { photo: Photo }) {
  const edit = useEdit()
  const [isPlacing, setPlacing] = useState(false)
  const photoIds = [photo.id]
  if (photo.time.changeOfClocks === 'repeated') {
    return (
      <SegmentedChoice
        label="Which of the two hours"
        options={passes}
        value={photo.tags.repeatedHour ?? 'first'}
        onChange={(repeatedHour) => void edit('photos.tag', { photoIds, set: { repeatedHour } })}
      />
    )
  }
  if (photo.time.instantMs !== null) return null
  return (
    <>
      <Button onPress={() => setPlacing(true)}>Place by hand…</Button>
      {isPlacedByHand(photo) ? (
        <Button look="quiet" onPress={() => void edit('photos.tag', { photoIds, set: { placedBetween: null } })}>
          Take the place back
        </Button>
      ) : null}
      {isPlacing ? <PlaceDialog photos={[photo]} onClose={() => setPlacing(false)} /> : null}
    </>
  )
}
