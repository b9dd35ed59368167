import { type FormEvent, useMemo, useState } from 'react'
import { videoLabel } from '../../app/evidence/video-label.ts'
import type { Video } from '../../app/evidence/video.ts'
import type { RecordingStart } from '../../app/narration/narration.ts'
import { type JobClock, dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/text-field.tsx'
import { cueTimeWords, instantOfClock } from './cue-times.ts'
import styles from './narration.module.css'
import { PinToPhoto } from './pin-to-photo.tsx'
import { TieToVideo } from './tie-to-video.tsx'
import type { ReadNarration } from './use-narration.ts'

/** Where the recording stands in time, and the ways to say so: a cue's time of day, a photo taken while it was spoken, the video it is the sound of, or none. */
export function AlignBar({ read }: { read: ReadNarration }) {
  const job = useJob()
  const edit = useEdit()
  const { selection } = useSelection()
  const clock = useMemo(() => jobClock(job), [job])
  const { narration } = read
  const cue = selection.kind === 'cue' && selection.narrationId === narration.id ? selection.cue : 0
  const align = (start: RecordingStart) => void edit('narrations.align', { id: narration.id, start })
  return (
    <div className={styles['bar']} role="group" aria-label="Time of the recording">
      <span className={styles['quiet']}>
        {startWords(read, { clock, videoWords: videoWords(narration.start, job.videos) })}
      </span>
      <span className={styles['gap']} />
      <ClockForm read={read} cue={cue} clock={clock} onAlign={align} />
      <PinToPhoto cue={cue} onAlign={align} />
      <TieToVideo onAlign={align} />
      {narration.start.kind === 'not-known' ? null : (
        <Button look="quiet" onPress={() => align({ kind: 'not-known' })}>
          Take off the clock
        </Button>
      )}
    </div>
  )
}

/** "V-002 walk.mp4": the video that the words are tied to. */
function videoWords(start: RecordingStart, videos: readonly Video[]): string {
  const video = start.kind === 'video' ? videos.find(({ id }) => id === start.videoId) : undefined
  return video === undefined ? 'a video that was removed' : `${videoLabel(video.number)} ${video.file.fileName}`
}

interface Worded {
  readonly clock: JobClock
  readonly videoWords: string
}

function startWords({ narration: { start }, startMs }: ReadNarration, worded: Worded): string {
  const { clock } = worded
  if (startMs === null && start.kind === 'video')
    return `The sound of ${worded.videoWords}, which is not on the clock yet: set in Video when it begins.`
  if (startMs === null) return 'Not on the clock yet: photos and cues can’t be brought together.'
  const at = `Recording begins ${dayWords(startMs, clock)}, ${timeWords(startMs, clock)} (${clock.zoneWords})`
  switch (start.kind) {
    case 'recorded':
    case 'not-known':
      return `${at}, by its file.`
    case 'video':
      return `${at}, with ${worded.videoWords}.`
    case 'clock':
      return `${at}, by the time given for cue ${start.cue + 1}.`
    case 'photo':
      return `${at}, by a photo pinned to cue ${start.cue + 1}.`
  }
}

interface ClockFormProps {
  readonly read: ReadNarration
  readonly cue: number
  readonly clock: JobClock
  readonly onAlign: (start: RecordingStart) => void
}

/** The time of day at which the selected cue was spoken. */
function ClockForm({ read, cue, clock, onAlign }: ClockFormProps) {
  const { photos, job } = useJob()
  const [text, setText] = useState('')
  const nearMs = read.startMs ?? photos.find(({ time }) => time.instantMs !== null)?.time.instantMs ?? job.createdAtMs
  const instantMs = instantOfClock(text, nearMs, clock)
  const present = cueTimeWords(read.narration.cues[cue]?.startMs ?? 0, read.startMs, clock)
  function keep(event: FormEvent) {
    event.preventDefault()
    if (instantMs === null) return
    onAlign({ kind: 'clock', cue, instantMs })
    setText('')
  }
  return (
    <form className={styles['clock']} onSubmit={keep}>
      <TextField
        label={`Time of day of cue ${cue + 1}`}
        hideLabel
        placeholder={`Cue ${cue + 1}: ${present}`}
        value={text}
        onChange={setText}
        error={text === '' || instantMs !== null ? null : 'Write hours and minutes, for example 10:44:36.'}
      />
      <Button type="submit" isDisabled={instantMs === null}>
        Set
      </Button>
    </form>
  )
}
