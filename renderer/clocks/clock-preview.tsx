import { useMemo } from 'react'
import { driftSecondsADay } from '../../app/evidence/camera-clock.ts'
import type { Camera, CameraClock } from '../../app/evidence/camera.ts'
import { clockPreview, type ClockPreview as Preview } from '../../app/evidence/clock-preview.ts'
import { type Photo, photoLabel } from '../../app/evidence/photo.ts'
import { correctionWords, photoClockWords } from '../../app/packet/format/times.ts'
import { useJob } from '../state/job-state.tsx'
import { countWords } from '../ui/quantity-words.ts'
import styles from './clock-dialog.module.css'

/** What a correction would change, before it is applied: how many photos, from when to when, and their order. */
export function ClockPreview({ camera, clock }: { camera: Camera; clock: CameraClock | null }) {
  const { job, photos } = useJob()
  const preview = useMemo(
    () => (clock === null ? null : clockPreview({ job, photos }, camera, clock)),
    [job, photos, camera, clock],
  )
  return (
    <section className={styles['preview']} aria-label="What would change" aria-live="polite">
      <h3>What would change</h3>
      {clock === null || preview === null ? (
        <p className={styles['note']}>Fill in the fields above to see it.</p>
      ) : (
        <PreviewBody preview={preview} clock={clock} />
      )}
    </section>
  )
}

function PreviewBody({ preview, clock }: { preview: Preview; clock: CameraClock }) {
  const { changed, untimed, amongOthers } = preview
  const first = changed[0]
  const last = changed.at(-1)
  if (first === undefined || last === undefined) return <p>No photo’s time changes.</p>
  return (
    <>
      <p>
        <strong>{countWords(changed.length, 'photo')}</strong> {amountWords(clock)}
        {untimed === 0 ? '' : `; ${countWords(untimed, 'photo')} without a time stay so`}.
      </p>
      <table className={styles['times']}>
        <thead>
          <tr>
            <th>Photo</th>
            <th>Now</th>
            <th>Then</th>
            <th>Comes after</th>
          </tr>
        </thead>
        <tbody>
          {[first, ...(last === first ? [] : [last])].map(({ before, after }) => (
            <tr key={before.id}>
              <th>{photoLabel(before.number)}</th>
              <td>{photoClockWords(before.time)}</td>
              <td>{photoClockWords(after.time)}</td>
              <td>{orderWords(before, preview)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {amongOthers.others === 0 ? null : (
        <p>
          Between the first and the last photo of other cameras: {amongOthers.before} now, {amongOthers.after} then.
        </p>
      )}
    </>
  )
}

function amountWords(clock: CameraClock): string {
  const [one, other] = clock.comparisons ?? []
  const drift = driftSecondsADay(clock)
  if (one === undefined || other === undefined || drift === null) {
    return clock.correctionMs === 0 ? 'as the camera wrote them' : `with ${correctionWords(clock.correctionMs)} in all`
  }
  const line = `from ${correctionWords(one.correctionMs)} to ${correctionWords(other.correctionMs)} in a straight line`
  return `${line} (the clock ${drift < 0 ? 'gains' : 'loses'} ${Math.abs(drift).toFixed(1)} s a day)`
}

/** Where a photo stands among all: "P-004" where that stays, else "P-009, then P-004". */
function orderWords(photo: Photo, { order }: Preview): string {
  const now = neighbour(order.before, photo)
  const then = neighbour(order.after, photo)
  return now === then ? now : `${now}, then ${then}`
}

function neighbour(order: readonly Photo[], photo: Photo): string {
  const before = order[order.findIndex(({ id }) => id === photo.id) - 1]
  return before === undefined ? 'none' : photoLabel(before.number)
}
