import { type Still, stillWords } from '../../app/evidence/still.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import { shortHash } from '../../app/packet/format/files.ts'
import { correctionWords } from '../../app/packet/format/times.ts'
import { positionWords, whenTakenWords } from '../../app/packet/photo-words.ts'
import { useJob } from '../state/job-state.tsx'
import { bytesWords } from '../ui/quantity-words.ts'
import styles from './photo-details.module.css'

/** What the file brings: name, size, times as written and as corrected, place and direction. */
export function PhotoFacts({ photo }: { photo: Photo }) {
  const { cameras } = useJob()
  const { file } = photo
  const camera = cameras.find(({ id }) => id === photo.cameraId)
  const facts: readonly (readonly [string, string])[] = [
    ['Taken', whenTakenWords(photo)],
    ...(photo.still === null ? [['Written', writtenWords(photo)] as const] : originFacts(photo.still)),
    ...(photo.time.correctionMs === 0 ? [] : [['Corrected', correctedWords(photo, camera?.clock.why ?? '')] as const]),
    ['Place', positionWords(photo) ?? 'the camera wrote none'],
    ['File', file.fileName],
    ['Picture', pictureWords(photo)],
    ['Camera', cameraWords(photo)],
  ]
  return (
    <section aria-label="Facts of the file">
      <h3>The file</h3>
      <dl className={styles['facts']}>
        {facts.map(([label, value]) => (
          <Fact key={label} label={label} value={value} />
        ))}
        <dt>SHA-256</dt>
        <dd>
          <code title={file.sha256}>{shortHash(file.sha256)}…</code>
        </dd>
      </dl>
    </section>
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
function originFacts(still: Still): readonly (readonly [string, string])[] {
  return [
    ['Origin', `${stillWords(still)}, stored here from the player; the frame was not decoded again for comparison`],
    ['Video', `${videoLabel(still.videoNumber)}, SHA-256 ${shortHash(still.videoSha256)}…`],
  ]
}

function correctedWords({ time }: Photo, why: string): string {
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
