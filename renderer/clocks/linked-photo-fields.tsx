import { useEffect, useMemo, useState } from 'react'
import { correctionFor } from '../../app/evidence/camera-clock.ts'
import { cameraName } from '../../app/evidence/camera-name.ts'
import type { ClockComparison } from '../../app/evidence/camera.ts'
import { zoneOfPhoto } from '../../app/evidence/photo-zone.ts'
import { type Photo, photoLabel } from '../../app/evidence/photo.ts'
import { photoClockWords } from '../../app/packet/format/times.ts'
import { useJob } from '../state/job-state.tsx'
import { photoByTypedNumber } from '../photos/typed-photo.ts'
import styles from './clock-dialog.module.css'
import type { ComparisonFields } from './comparison-fields.ts'
import { NumberedPhoto } from './numbered-photo.tsx'

/** Two photos of two cameras that show the same moment: the other camera's time is taken. */
export function LinkedPhotoFields({ camera, onComparison }: ComparisonFields) {
  const { photos, cameras, job } = useJob()
  const own = useMemo(() => photos.filter(({ cameraId }) => cameraId === camera.id), [photos, camera.id])
  const others = useMemo(() => photos.filter(({ cameraId }) => cameraId !== camera.id), [photos, camera.id])
  const [number, setNumber] = useState('')
  const [otherNumber, setOtherNumber] = useState('')
  const photo = photoByTypedNumber(own, number)
  const other = photoByTypedNumber(others, otherNumber)
  const comparison = useMemo((): ClockComparison | null => {
    const cameraLocal = photo?.file.written.local ?? null
    if (photo === null || other === null || cameraLocal === null || other.time.instantMs === null) return null
    const correctionMs = correctionFor(photo.file.written, other.time.instantMs, zoneOfPhoto(photo.file, job.sheet))
    const name = cameraName(cameras.find(({ id }) => id === other.cameraId))
    const trueWords = `${photoLabel(other.number)} of ${name}, ${photoClockWords(other.time)}`.slice(0, 200)
    return correctionMs === null
      ? null
      : { by: 'linked-photo', photoId: photo.id, cameraLocal, correctionMs, trueWords }
  }, [photo, other, job.sheet, cameras])
  useEffect(() => onComparison(comparison), [comparison, onComparison])
  return (
    <div className={styles['fields']}>
      <NumberedPhoto
        label={`Photo of ${cameraName(camera)}`}
        photos={own}
        text={number}
        onText={setNumber}
        refuse={({ file }) => (file.written.local === null ? 'This file has no time to compare.' : null)}
      />
      <NumberedPhoto
        label="Photo of the other camera, the same moment"
        photos={others}
        text={otherNumber}
        onText={setOtherNumber}
        refuse={noInstant}
      />
      <p className={styles['note']}>The other camera’s time is taken as right, with its own correction.</p>
    </div>
  )
}

function noInstant({ time }: Photo): string | null {
  return time.instantMs === null ? 'The time of this photo is not known.' : null
}
