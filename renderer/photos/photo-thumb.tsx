import { fileAddress } from '../../app/contract/files.ts'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import { photoSubject } from '../../app/packet/photo-words.ts'
import styles from './photo-thumb.module.css'

/** A photo's small picture; a photo that can't be shown says why instead. */
export function PhotoThumb({ photo }: { photo: Photo }) {
  if (photo.preview === 'none') {
    return (
      <span className={styles['none']}>
        <strong>No picture to show</strong>
        <span>{whyNoPicture(photo)}</span>
      </span>
    )
  }
  return (
    <img
      className={styles['thumb']}
      src={fileAddress({ kind: 'thumbnail', id: photo.id })}
      alt={`${photoLabel(photo.number)}: ${photoSubject(photo)}`}
      loading="lazy"
      decoding="async"
      draggable={false}
    />
  )
}

/** Why a photo has no preview, in words. */
export function whyNoPicture(photo: Photo): string {
  const problem = photo.file.problems.find(({ about }) => about === 'picture' || about === 'preview')
  return problem?.text ?? 'The file could not be made into a picture. The original is kept as it came.'
}
