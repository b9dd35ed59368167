import { memo, useDeferredValue } from 'react'
import { findingLabel } from '../../app/evidence/finding.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import { whatWords } from '../../app/packet/finding-words.ts'
import { PlanInset } from '../plan/plan-inset.tsx'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { PhotoFacts, PhotoTimes } from './photo-facts.tsx'
import styles from './photo-details.module.css'
import { PhotoThumb } from './photo-thumb.tsx'
import { TagFields } from './tag-fields.tsx'
import { useTagging } from './use-tagging.ts'

/** Pictures shown of a selection of several photos. */
const AT_MOST = 12

/** The selected photo's picture, tags, findings and facts; for several, what they have in common. */
export function PhotoDetails() {
  // Stepping through the sheet goes first; the details follow as soon as there is time.
  const photos = useDeferredValue(useTagging().photos)
  return <DetailsOf photos={photos} />
}

const DetailsOf = memo(function DetailsOf({ photos }: { photos: readonly Photo[] }) {
  const [first] = photos
  if (first === undefined) return <p className={styles['quiet']}>This photo is not in the job.</p>
  const isOne = photos.length === 1
  return (
    <div className={styles['details']}>
      {isOne ? (
        <div className={styles['picture']}>
          <PhotoThumb photo={first} />
        </div>
      ) : (
        <SeveralPictures photos={photos} />
      )}
      <TagFields photos={photos} />
      <FindingsOfPhotos photos={photos} />
      {isOne ? <OnePhoto photo={first} /> : null}
    </div>
  )
})

function OnePhoto({ photo }: { photo: Photo }) {
  return (
    <>
      {photo.file.problems.length === 0 ? null : (
        <ul className={styles['problems']} aria-label="Problems of the file">
          {photo.file.problems.map((problem) => (
            <li key={problem.text}>{problem.text}</li>
          ))}
        </ul>
      )}
      <PlanInset photoId={photo.id} facetId={photo.tags.facetId} />
      <PhotoTimes photo={photo} />
      <PhotoFacts photo={photo} />
    </>
  )
}

function SeveralPictures({ photos }: { photos: readonly Photo[] }) {
  return (
    <ul className={styles['several']}>
      {photos.slice(0, AT_MOST).map((photo) => (
        <li key={photo.id}>
          <PhotoThumb photo={photo} />
        </li>
      ))}
      {photos.length > AT_MOST ? <li className={styles['more']}>and {photos.length - AT_MOST} more</li> : null}
    </ul>
  )
}

function FindingsOfPhotos({ photos }: { photos: readonly Photo[] }) {
  const { findings } = useJob()
  const { select } = useSelection()
  const ids = new Set(photos.map(({ id }) => id))
  const own = findings.filter((finding) => finding.photos.some(({ photoId }) => ids.has(photoId)))
  return (
    <section className={styles['findings']} aria-label="Findings">
      <h3>Findings</h3>
      {own.length === 0 ? <p className={styles['quiet']}>Shown by no finding yet.</p> : null}
      <ul>
        {own.map((finding) => (
          <li key={finding.id}>
            <button
              type="button"
              className={styles['link']}
              onClick={() => select({ kind: 'finding', id: finding.id })}
            >
              <strong>{findingLabel(finding.number)}</strong> {whatWords(finding)}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}
