import { useState } from 'react'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import type { FacetId, PhotoId } from '../../app/job/ids.ts'
import { photoSubject } from '../../app/packet/photo-words.ts'
import { PhotoThumb } from '../photos/photo-thumb.tsx'
import { sortedPhotos } from '../photos/photo-order.ts'
import { useJob } from '../state/job-state.tsx'
import { useRelated } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import styles from './photo-picker.module.css'

type Offer = 'facet' | 'selected' | 'all'

interface PhotoPickerProps {
  /** The finding's facet; its photos are offered first. */
  readonly facetId: FacetId | null
  readonly chosen: readonly PhotoId[]
  /** The photos to attach, in the order of their numbers for those added. */
  readonly onChosen: (ids: readonly PhotoId[]) => void
  readonly onClose: () => void
}

/** Thumbnails to pick a finding's photos from. */
export function PhotoPicker({ facetId, chosen, onChosen, onClose }: PhotoPickerProps) {
  const { photos } = useJob()
  const related = useRelated()
  const [offer, setOffer] = useState<Offer>(facetId === null ? 'all' : 'facet')
  const [picked, setPicked] = useState<readonly PhotoId[]>(chosen)
  const isOffered: Record<Offer, (photo: Photo) => boolean> = {
    facet: (photo) => photo.tags.facetId === facetId,
    selected: (photo) => related.photoIds.has(photo.id),
    all: () => true,
  }
  const shown = sortedPhotos(photos, 'number').filter((photo) => isOffered[offer](photo) || chosen.includes(photo.id))
  const toggle = (id: PhotoId) =>
    setPicked(picked.includes(id) ? picked.filter((other) => other !== id) : [...picked, id])
  return (
    <Dialog
      title="Photos of this finding"
      isOpen
      onClose={onClose}
      size="full"
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => onChosen(picked)}>
            Attach {countWords(picked.length, 'photo')}
          </Button>
        </>
      }
    >
      <SegmentedChoice
        label="Show"
        options={[
          ...(facetId === null ? [] : [{ key: 'facet' as const, label: 'On its facet' }]),
          { key: 'selected', label: 'Selected now' },
          { key: 'all', label: 'All photos' },
        ]}
        value={offer}
        onChange={setOffer}
      />
      {shown.length === 0 ? <p className={styles['none']}>No photo fits this. Show all photos instead.</p> : null}
      <PickTiles photos={shown} picked={picked} onToggle={toggle} />
    </Dialog>
  )
}

interface PickTilesProps {
  readonly photos: readonly Photo[]
  readonly picked: readonly PhotoId[]
  readonly onToggle: (id: PhotoId) => void
}

function PickTiles({ photos, picked, onToggle }: PickTilesProps) {
  return (
    <ul className={styles['grid']}>
      {photos.map((photo) => (
        <li key={photo.id}>
          <button
            type="button"
            className={styles['tile']}
            aria-pressed={picked.includes(photo.id)}
            onClick={() => onToggle(photo.id)}
          >
            <span className={styles['picture']}>
              <PhotoThumb photo={photo} />
            </span>
            <span className={styles['name']}>
              <strong>{photoLabel(photo.number)}</strong> {photoSubject(photo)}
            </span>
          </button>
        </li>
      ))}
    </ul>
  )
}
