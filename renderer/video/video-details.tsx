import { fileAddress } from '../../app/contract/files.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { codecName, type Video } from '../../app/evidence/video.ts'
import { frameTimeWords } from '../../app/evidence/video-label.ts'
import type { VideoId } from '../../app/job/ids.ts'
import { correctionWords, instantWords, photoTimeWords } from '../../app/packet/format/times.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { bytesWords } from '../ui/quantity-words.ts'
import { PhotoThumb } from '../photos/photo-thumb.tsx'
import { SavedLine } from '../ui/saved-line.tsx'
import { StartField } from './start-field.tsx'
import styles from './video.module.css'

/** The selected video: what it shows, when it begins, its stills, and what the file brings. */
export function VideoDetails({ id }: { id: VideoId }) {
  const { videos } = useJob()
  const edit = useEdit()
  const video = videos.find((one) => one.id === id)
  if (video === undefined) return <p className={styles['quiet']}>This video is not in the job.</p>
  return (
    <div className={styles['details']}>
      <SavedLine
        label="What it shows"
        value={video.tags.caption}
        onSave={(caption) => void edit('videos.tag', { id, set: { caption } })}
      />
      <StartField video={video} />
      <Stills video={video} />
      <Facts video={video} />
    </div>
  )
}

function Stills({ video }: { video: Video }) {
  const { photos } = useJob()
  const goTo = useGoTo()
  const stills = photos
    .filter((photo) => photo.still?.videoId === video.id)
    .toSorted((a, b) => (a.still?.offsetMs ?? 0) - (b.still?.offsetMs ?? 0))
  return (
    <section aria-label="Stills">
      <h3>Stills</h3>
      {stills.length === 0 ? <p className={styles['quiet']}>No frame is stored as a photo yet.</p> : null}
      <ul className={styles['stills']}>
        {stills.map((photo) => (
          <li key={photo.id}>
            <button
              type="button"
              className={styles['still']}
              onClick={() => goTo({ workspace: 'photos', target: { kind: 'photo', id: photo.id } })}
            >
              <PhotoThumb photo={photo} />
              <span>
                <strong>{photoLabel(photo.number)}</strong> at {frameTimeWords(photo.still?.offsetMs ?? 0)}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}

function Facts({ video }: { video: Video }) {
  const { file } = video
  return (
    <section aria-label="Facts of the file">
      <h3>The file</h3>
      {file.problems.length === 0 ? null : (
        <ul className={styles['problems']} aria-label="Remarks on the file">
          {file.problems.map(({ text }) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      )}
      <dl className={styles['facts']}>
        {factsOf(video).map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
        <div>
          <dt>SHA-256</dt>
          <dd>
            <code className={styles['hash']}>{file.sha256}</code>
          </dd>
        </div>
      </dl>
      <a href={fileAddress({ kind: 'video', id: video.id })} download={file.fileName}>
        Save a copy
      </a>
    </section>
  )
}

function factsOf({ file, time }: Video): readonly (readonly [string, string])[] {
  const camera = [file.camera.make, file.camera.model].filter((part) => part !== '').join(' ')
  const { position, framesPerSecond } = file
  return [
    ['Begins', time.instantMs === null ? 'not known' : photoTimeWords(time)],
    ...(time.correctionMs === 0 ? [] : [['Corrected', correctionWords(time.correctionMs)] as const]),
    ['Camera wrote', file.written.raw ?? 'no date of recording'],
    ['Container', file.containerUtcMs === null ? 'no time' : instantWords(file.containerUtcMs, 'UTC')],
    ['Length', frameTimeWords(file.durationMs)],
    [
      'Picture',
      `${codecName(file.codec)}, ${file.widthPx} × ${file.heightPx} px${file.rotationDeg === 0 ? '' : `, turned ${file.rotationDeg}°`}`,
    ],
    ['Frames', framesPerSecond === null ? 'rate not known' : `${framesPerSecond.toFixed(2)} a second`],
    ['Sound', file.audioCodec === null ? 'none' : codecName(file.audioCodec)],
    [
      'Place',
      position === null ? 'the camera wrote none' : `${position.latDeg.toFixed(5)}, ${position.lonDeg.toFixed(5)}`,
    ],
    ['Camera', camera === '' ? 'not written in the file' : camera],
    ['File', `${file.fileName}, ${bytesWords(file.bytes)}`],
  ]
}
