import { useEffect, useMemo } from 'react'
import { gpsComparison } from '../../app/evidence/gps-comparison.ts'
import { correctionWords } from '../../app/packet/format/times.ts'
import { useJob } from '../state/job-state.tsx'
import { countWords } from '../ui/quantity-words.ts'
import styles from './clock-dialog.module.css'
import type { ComparisonFields } from './comparison-fields.ts'

/** The middle difference between a camera's clock and the GPS time in its own photos. */
export function GpsFields({ camera, onComparison }: ComparisonFields) {
  const { photos, job } = useJob()
  const compared = useMemo(
    () =>
      gpsComparison(
        photos.filter(({ cameraId }) => cameraId === camera.id),
        job.sheet,
      ),
    [photos, camera.id, job.sheet],
  )
  useEffect(() => {
    const local = compared?.photo.file.written.local ?? null
    if (compared === null || local === null) return onComparison(null)
    onComparison({
      by: 'gps-time',
      photoId: null,
      cameraLocal: local,
      correctionMs: Math.round(compared.correctionMs / 1000) * 1000,
      trueWords: `middle of ${countWords(compared.count, 'photo')}`,
    })
  }, [compared, onComparison])
  if (compared === null) {
    return (
      <p className={styles['note']}>
        No photo of this camera has GPS time with a zone to compare it in. Set the house’s position or time zone, or
        compare another way.
      </p>
    )
  }
  const { count, correctionMs, leastMs, mostMs } = compared
  return (
    <>
      <p>
        Middle of {countWords(count, 'photo')}: <strong>{correctionWords(correctionMs)}</strong>, from{' '}
        {correctionWords(leastMs)} to {correctionWords(mostMs)}.
      </p>
      <p className={styles['note']}>
        A GPS fix can be minutes old, and then lags behind. Small differences are no proof of a wrong clock; whole hours
        usually mean a wrong zone or daylight saving.
      </p>
    </>
  )
}
