import type { Photo } from '../../app/evidence/photo.ts'
import { PhotoThumb } from '../photos/photo-thumb.tsx'
import { photoByTypedNumber } from '../photos/typed-photo.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './clock-dialog.module.css'

interface NumberedPhotoProps {
  readonly label: string
  readonly photos: readonly Photo[]
  readonly text: string
  readonly onText: (text: string) => void
  /** What is wrong with the photo that is named, if anything is. */
  readonly refuse: (photo: Photo) => string | null
}

/** A photo named by its number, with its picture. */
export function NumberedPhoto({ label, photos, text, onText, refuse }: NumberedPhotoProps) {
  const photo = photoByTypedNumber(photos, text)
  const error = text.trim() === '' ? null : photo === null ? 'There is no such photo here.' : refuse(photo)
  return (
    <div className={styles['photo']}>
      <TextField label={label} placeholder="P-001" value={text} onChange={onText} error={error} />
      {photo === null ? null : (
        <span className={styles['picture']}>
          <PhotoThumb photo={photo} />
        </span>
      )}
    </div>
  )
}
