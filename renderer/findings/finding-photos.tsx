import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import type { Finding } from '../../app/evidence/finding.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { photosById } from '../photos/photo-index.ts'
import { PhotoThumb } from '../photos/photo-thumb.tsx'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import styles from './finding-details.module.css'

/** A finding's photos; pressing one selects it. */
export function FindingPhotos({ finding }: { finding: Finding }) {
  const { photos } = useJob()
  const { select } = useSelection()
  if (finding.photos.length === 0) return <p className={styles['quiet']}>No photo shows it yet.</p>
  return (
    <ul className={styles['photos']}>
      {finding.photos.map(({ photoId, role }) => {
        const photo = photosById(photos).get(photoId)
        if (photo === undefined) return null
        return (
          <li key={photoId}>
            <button
              type="button"
              className={styles['photo']}
              onClick={() => select({ kind: 'photos', ids: [photoId], lead: photoId })}
            >
              <span className={styles['photoPicture']}>
                <PhotoThumb photo={photo} />
              </span>
              <span>
                <strong>{photoLabel(photo.number)}</strong> {photoRoleLabels[role].toLowerCase()}
              </span>
            </button>
          </li>
        )
      })}
    </ul>
  )
}
