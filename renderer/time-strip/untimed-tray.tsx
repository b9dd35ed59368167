import type { DragEvent } from 'react'
import { type Photo, photoLabel } from '../../app/evidence/photo.ts'
import { inWalkOrder, placeAfter } from '../../app/evidence/walk-order.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import type { StripScale } from './strip-scale.ts'
import styles from './time-strip.module.css'

/** What is carried from the tray to the strip; files that are dropped never have it. */
const CARRIED = 'application/x-battenbook-photo'
/** Photos that can be taken hold of; the rest are in the selection that the button makes. */
const AT_MOST = 3

/** Photos without a time, to be dragged to their place on the strip, or selected and placed by key. */
export function UntimedTray({ photos }: { photos: readonly Photo[] }) {
  const { select } = useSelection()
  return (
    <div className={styles['tray']}>
      {photos.slice(0, AT_MOST).map((photo) => (
        <span
          key={photo.id}
          className={styles['chip']}
          draggable
          title="Drag onto the strip to place it there by hand"
          onDragStart={(event) => {
            event.dataTransfer.setData(CARRIED, photo.id)
            event.dataTransfer.effectAllowed = 'move'
          }}
        >
          {photoLabel(photo.number)}
        </span>
      ))}
      <Button
        look="quiet"
        onPress={() => {
          const ids = photos.map((photo) => photo.id)
          const [lead] = ids
          if (lead !== undefined) select({ kind: 'photos', ids, lead })
        }}
      >
        {photos.length} no time
      </Button>
    </div>
  )
}

/** Lets a photo without a time be dropped on the strip: it comes after the last photo before that moment. */
export function useDropToPlace(scale: StripScale) {
  const { photos } = useJob()
  const edit = useEdit()
  const carries = (event: DragEvent) => event.dataTransfer.types.includes(CARRIED)
  return {
    onDragOver(event: DragEvent) {
      if (carries(event)) event.preventDefault()
    },
    onDrop(event: DragEvent) {
      const moved = photos.find(({ id }) => id === event.dataTransfer.getData(CARRIED))
      if (moved === undefined) return
      event.preventDefault()
      const x = event.clientX - event.currentTarget.getBoundingClientRect().left
      const momentMs = scale.instantOf(x)
      const before = inWalkOrder(photos).findLast(({ time }) => time.instantMs !== null && time.instantMs <= momentMs)
      const place = placeAfter(photos, { afterId: before?.id ?? null, moving: [moved.id] })
      if (place !== null) void edit('photos.tag', { photoIds: [moved.id], set: { placedBetween: place } })
    },
  }
}
