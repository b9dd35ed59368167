import { findingLabel } from '../../app/evidence/finding.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import { whatWords } from '../../app/packet/finding-words.ts'
import { PlanInset } from '../plan/plan-inset.tsx'
import { useJob } from '../state/job-state.tsx'
import { useRelated, useSelection } from '../state/selection.tsx'
import { PhotoFacts } from './photo-facts.tsx'
import styles from './photo-details.module.css'
import { PhotoThumb } from './photo-thumb.tsx'
import { TagFields } from './tag-fields.tsx'
import { useTagging } from './use-tagging.ts'

/** Pictures shown of a selection of several photos. */
const AT_MOST = 12

/** The selected photo's picture, tags, findings and facts; for several, what they have in common. */
export function PhotoDetails() {
  const { selection } = useSelection()
  const { photos } = useTagging()
  const lead = photos.find((photo) => selection.kind === 'photos' && photo.id === selection.lead)
  if (lead === undefined) return <p className={styles['quiet']}>This photo is not in the job.</p>
  return (
    <div className={styles['details']}>
      {photos.length === 1 ? (
        <div className={styles['picture']}>
          <PhotoThumb photo={lead} />
        </div>
      ) : (
        <SeveralPictures photos={photos} />
      )}
      <TagFields />
      <FindingsOfPhotos />
      {photos.length === 1 ? <OnePhoto photo={lead} /> : null}
    </div>
  )
}

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

function FindingsOfPhotos() {
  const { findings } = useJob()
  const { select } = useSelection()
  const { findingIds } = useRelated()
  const own = findings.filter(({ id }) => findingIds.has(id))
  return (
    <section className={styles['findings']} aria-label="Findings">
      <h3>Findings</h3>
      {own.length === 0 ? <p className={styles['quiet']}>Shown by no finding yet. N starts one.</p> : null}
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
