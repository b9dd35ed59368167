import { cameraName } from '../../app/evidence/camera-name.ts'
import { frameSentence } from '../../app/evidence/placement/frame-words.ts'
import { useJob } from '../state/job-state.tsx'
import { usePlacement } from '../state/placement.tsx'
import styles from './accept-suggestions.module.css'

/** What suggestions rest on: what is missing for them, or what was learned of the cameras' positions. */
export function PlacementBasis() {
  const { facets, photos, job, cameras } = useJob()
  const { placement } = usePlacement(false)
  if (facets.length === 0) {
    return <p>Draw the outline of the roof first: suggestions choose among its facets.</p>
  }
  const located = photos.filter(({ file }) => file.position !== null).length
  if (located === 0) {
    return (
      <p className={styles['basis']}>
        No photo has a position. Suggestions rest on the order of the photos and on what is tagged already: tag the
        first photo on every slope, and they follow.
      </p>
    )
  }
  if (job.frame.anchor === null) {
    return (
      <p className={styles['basis']}>
        The plan has no place on the earth yet, so positions say nothing. Set it on the roof plan under “Sheet…”.
      </p>
    )
  }
  const frames = placement?.frames ?? []
  return (
    <div className={styles['basis']}>
      {frames.length === 0 ? (
        <p>
          Positions are taken as the cameras wrote them. Tag the facet of three photos or more, and what they are
          shifted by is learned.
        </p>
      ) : (
        frames.map((frame) => (
          <p key={frame.cameraId}>
            {cameras.length > 1 ? `${cameraName(cameras.find(({ id }) => id === frame.cameraId))}: ` : ''}
            {frameSentence(frame, job.frame.upAzimuthDeg)}
          </p>
        ))
      )}
    </div>
  )
}
