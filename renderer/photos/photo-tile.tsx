import { memo } from 'react'
import { components } from '../../app/evidence/catalog/components.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import type { PhotoRole } from '../../app/evidence/catalog/keys.ts'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import { stillWords } from '../../app/evidence/still.ts'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import { isPlacedByHand } from '../../app/evidence/walk-order.ts'
import { classNames } from '../ui/class-names.ts'
import styles from './contact-sheet.module.css'
import { PhotoThumb } from './photo-thumb.tsx'

interface PhotoTileProps {
  readonly id: string
  readonly photo: Photo
  /** Letter of the facet it is tagged with; null for none. */
  readonly facetLetter: string | null
  /** The likeliest place while it has no facet, such as "B? 84 %"; null for none. */
  readonly suggested: string | null
  readonly widthPx: number
  readonly isPicked: boolean
  readonly isLead: boolean
  readonly isRelated: boolean
}

/** One photo of the contact sheet with its number and tags. */
export const PhotoTile = memo(function PhotoTile(props: PhotoTileProps) {
  const { id, photo, facetLetter, suggested, widthPx, isPicked, isLead, isRelated } = props
  const { leftOutBecause, caption } = photo.tags
  return (
    <div
      id={id}
      role="gridcell"
      data-photo-id={photo.id}
      aria-selected={isPicked}
      aria-current={isRelated && !isPicked ? 'true' : undefined}
      className={classNames(
        styles['tile'],
        isRelated && styles['related'],
        isPicked && styles['picked'],
        isLead && styles['lead'],
        leftOutBecause !== null && styles['leftOut'],
      )}
      style={{ width: widthPx }}
    >
      <span className={styles['picture']}>
        <PhotoThumb photo={photo} />
        {leftOutBecause === null ? null : <span className={styles['mark']}>Left out: {leftOutBecause}</span>}
      </span>
      <span className={styles['words']}>
        <span className={styles['wordsHead']}>
          <strong>{photoLabel(photo.number)}</strong>
          <TagWords letter={facetLetter} role={photo.tags.role} />
          {suggested === null ? null : <span className={styles['suggested']}>{suggested}</span>}
          {isPlacedByHand(photo) ? <span className={styles['byHand']}>placed by hand</span> : null}
          {photo.file.problems.length === 0 ? null : (
            <span className={styles['problem']} title={photo.file.problems.map(({ text }) => text).join(' ')}>
              ▲<span className={styles['hidden']}>has problems</span>
            </span>
          )}
        </span>
        <span className={styles['caption']}>{caption === '' ? whatWords(photo) : caption}</span>
        {photo.still === null ? null : <span className={styles['caption']}>{stillWords(photo.still)}</span>}
      </span>
    </div>
  )
})

function TagWords({ letter, role }: { letter: string | null; role: PhotoRole | null }) {
  return (
    <>
      {letter === null ? null : <span className={styles['facet']}>{letter}</span>}
      {role === null ? null : <span className={styles['role']}>{photoRoleLabels[role]}</span>}
    </>
  )
}

function whatWords({ tags }: Photo): string {
  const parts = [
    ...(tags.component === null ? [] : [components[tags.component].label]),
    ...(tags.condition === null ? [] : [conditions[tags.condition].label.toLowerCase()]),
  ]
  return parts.join(', ')
}
