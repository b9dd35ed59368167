import { useMemo } from 'react'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { type Still, stillWords } from '../../app/evidence/still.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import { sunCheck } from '../../app/evidence/sun-check.ts'
import { shortHash } from '../../app/packet/format/files.ts'
import { correctionWords } from '../../app/packet/format/times.ts'
import { positionWords, whenTakenWords } from '../../app/packet/photo-words.ts'
import { useJob } from '../state/job-state.tsx'
import { bytesWords } from '../ui/quantity-words.ts'
import { photosById } from './photo-index.ts'
import styles from './photo-details.module.css'
import { TimeActions } from './time-actions.tsx'

type Line = readonly [string, string]

/** When the photo was taken: what was written, what was corrected and what follows, apart; and what the sun says of it. */
export function PhotoTimes({ photo }: { photo: Photo }) {
  const { cameras, photos, job } = useJob()
  const camera = cameras.find(({ id }) => id === photo.cameraId)
  const sun = useMemo(() => sunWords(photo, job), [photo, job])
  const lines: readonly Line[] = [
    ...(photo.still === null ? [['Written', writtenWords(photo)] as const] : originLines(photo.still)),
    ['Corrected', correctedWords(photo, camera?.clock.why ?? '')],
    ['Taken', whenTakenWords(photo, photosById(photos))],
    ['Sun', sun],
  ]
  return (
    <section aria-label="Time">
      <h3>Time</h3>
      <Lines lines={lines} />
      <TimeActions photo={photo} />
    </section>
  )
}

/** What the file brings beside its time: place, name, size and camera. */
export function PhotoFacts({ photo }: { photo: Photo }) {
  const { file } = photo
  const lines: readonly Line[] = [
    ['Place', positionWords(photo) ?? 'the camera wrote none'],
    ['File', file.fileName],
    ['Picture', pictureWords(photo)],
    ['Camera', cameraWords(photo)],
  ]
  return (
    <section aria-label="Facts of the file">
      <h3>The file</h3>
      <Lines lines={lines} />
      <dl className={styles['facts']}>
        <dt>SHA-256</dt>
        <dd>
          <code title={file.sha256}>{shortHash(file.sha256)}…</code>
        </dd>
      </dl>
    </section>
  )
}

function Lines({ lines }: { lines: readonly Line[] }) {
  return (
    <dl className={styles['facts']}>
      {lines.map(([label, value]) => (
        <Fact key={label} label={label} value={value} />
      ))}
    </dl>
  )
}

function Fact({ label, value }: { label: string; value: string }) {
  return (
    <>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </>
  )
}

/** What stands in place of a camera's notes: which frame of which video, and which bytes of it. */
function originLines(still: Still): readonly Line[] {
  return [
    ['Origin', `${stillWords(still)}, stored here from the player; the frame was not decoded again for comparison`],
    ['Video', `${videoLabel(still.videoNumber)}, SHA-256 ${shortHash(still.videoSha256)}…`],
  ]
}

/** "22° up in the south-east (azimuth 141°)", how far into the night it is, or what is missing to tell. */
function sunWords(photo: Photo, job: JobSnapshot['job']): string {
  const check = sunCheck(photo, job)
  switch (check.kind) {
    case 'no-time':
      return 'not known without a time'
    case 'no-place':
      return 'not known: neither the photo nor the house has a position'
    case 'day':
      return `${check.sun.elevationDeg.toFixed(0)}° up, at azimuth ${check.sun.azimuthDeg.toFixed(0)}°`
    case 'twilight':
      return `down, twilight, ${check.words}`
    case 'night':
      return `down, night by its clock, ${check.words}`
  }
}

function correctedWords({ time }: Photo, why: string): string {
  if (time.correctionMs === 0) return 'no: the camera’s clock is taken as it is'
  return `${correctionWords(time.correctionMs)}, ${why.trim() === '' ? 'no reason given' : why.trim()}`
}

function writtenWords({ file }: Photo): string {
  const { raw, tag } = file.written
  if (raw === null) return 'no date in the file'
  return tag === null ? `“${raw}”, not believed` : `${raw} in ${tag}`
}

function pictureWords({ file }: Photo): string {
  const type = file.mediaType.replace('image/', '').toUpperCase()
  const size =
    file.widthPx === null || file.heightPx === null ? 'size not readable' : `${file.widthPx} × ${file.heightPx} px`
  return `${type}, ${size}, ${bytesWords(file.bytes)}`
}

function cameraWords({ file }: Photo): string {
  const { make, model, serial } = file.camera
  const name = `${make} ${model}`.trim()
  if (name === '') return 'not written in the file'
  return serial === '' ? name : `${name}, serial ${serial}`
}
