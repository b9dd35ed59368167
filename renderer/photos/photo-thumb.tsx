import { fileAddress } from '../../app/contract/files.ts'
import { photoLabel, type Photo } from '../../app/evidence/photo.ts'
import { MarkedPicture } from './marks/marked-picture.tsx'
import { useMarkupDrawing } from './marks/use-markup.ts'
import { photoSubject } from '../../app/packet/photo-words.ts'
import styles from './photo-thumb.module.css'

/** A photo's small picture with its marks; a photo that can't be shown says why instead. */
export function PhotoThumb({ photo }: { photo: Photo }) {
  const drawing = useMarkupDrawing(photo)
  if (photo.preview === 'none') {
    return (
      <span className={styles['none']}>
        <strong>No picture to show</strong>
        <span>{whyNoPicture(photo)}</span>
      </span>
    )
  }
  const src = fileAddress({ kind: 'thumbnail', id: photo.id })
  const alt = `${photoLabel(photo.number)}: ${photoSubject(photo)}`
  if (drawing !== null) return <MarkedPicture src={src} alt={alt} drawing={drawing} />
  return <img className={styles['thumb']} src={src} alt={alt} loading="lazy" decoding="async" draggable={false} />
}

/** Why a photo has no preview, in words. */
export function whyNoPicture(photo: Photo): string {
  const problem = photo.file.problems.find(({ about }) => about === 'picture' || about === 'preview')
  return problem?.text ?? 'The file could not be made into a picture. The original is kept as it came.'
}
