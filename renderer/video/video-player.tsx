import { type RefObject, useRef } from 'react'
import { fileAddress } from '../../app/contract/files.ts'
import { codecName, timeOfFrame, type Video } from '../../app/evidence/video.ts'
import { frameTimeWords, videoLabel } from '../../app/evidence/video-label.ts'
import { photoTimeWords } from '../../app/packet/format/times.ts'
import { useCommands } from '../state/commands.ts'
import { Button } from '../ui/button.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { type Cue, CueList } from './cue-list.tsx'
import { type Playing, usePlaying } from './use-playing.ts'
import { useTakeStill } from './use-take-still.ts'
import styles from './video.module.css'

const LEAP_MS = 5_000
const speeds = [
  { key: '0.25', label: '¼' },
  { key: '0.5', label: '½' },
  { key: '1', label: '1' },
  { key: '2', label: '2' },
  { key: '4', label: '4' },
] as const

interface VideoPlayerProps {
  readonly video: Video
  /** Narration of this video, if there is any. */
  readonly cues: readonly Cue[]
}

/** Plays a video from the desk, steps frame by frame, and stores the frame in sight as a photo. */
export function VideoPlayer({ video, cues }: VideoPlayerProps) {
  const element = useRef<HTMLVideoElement>(null)
  const address = fileAddress({ kind: 'video', id: video.id })
  const playing = usePlaying(element, { framesPerSecond: video.file.framesPerSecond, address })
  const still = useTakeStill(element, video)
  const takeStill = () => {
    playing.pause()
    void still.take(playing.atMs)
  }
  const isReady = playing.state === 'ready'
  usePlayerKeys({ playing, takeStill, isReady })
  return (
    <section className={styles['player']} aria-label={`Player, ${videoLabel(video.number)}`}>
      <Screen element={element} address={address} video={video} state={playing.state} />
      {playing.state === 'unplayable' ? null : (
        <>
          <Scrubber video={video} playing={playing} />
          <div className={styles['controls']}>
            <PlayButtons playing={playing} isReady={isReady} />
            <SegmentedChoice
              label="Speed"
              hideLabel
              options={speeds}
              value={speeds.find(({ key }) => Number(key) === playing.speed)?.key ?? '1'}
              onChange={(key) => playing.setSpeed(Number(key))}
            />
            <span className={styles['gap']} />
            <Button look="main" isDisabled={!isReady || still.isBusy} onPress={takeStill}>
              Take still <KeyHint keys="S" />
            </Button>
          </div>
          <Moment video={video} atMs={playing.atMs} />
        </>
      )}
      <CueList cues={cues} atMs={playing.atMs} onJump={playing.seek} />
    </section>
  )
}

interface ScreenProps {
  readonly element: RefObject<HTMLVideoElement | null>
  readonly address: string
  readonly video: Video
  readonly state: Playing['state']
}

function Screen({ element, address, video, state }: ScreenProps) {
  return (
    <div className={styles['screen']}>
      {/* oxlint-disable-next-line jsx-a11y/media-has-caption -- an inspector's recording has none; narration stands beneath */}
      <video
        ref={element}
        key={address}
        className={styles['video']}
        src={address}
        preload="auto"
        playsInline
        hidden={state === 'unplayable'}
        aria-label={`${videoLabel(video.number)}: ${video.tags.caption === '' ? video.file.fileName : video.tags.caption}`}
      />
      {state === 'unplayable' ? <Unplayable video={video} address={address} /> : null}
    </div>
  )
}

function Unplayable({ video, address }: { video: Video; address: string }) {
  const { codec, fileName } = video.file
  return (
    <div className={styles['unplayable']} role="status">
      <p>
        <strong>
          {videoLabel(video.number)} can’t be played here: this window does not know its coding, {codecName(codec)}.
        </strong>
      </p>
      <p>The file is kept whole and goes with the evidence. Save a copy and open it in another player.</p>
      <a href={address} download={fileName}>
        Save a copy of {fileName}
      </a>
    </div>
  )
}

function Scrubber({ video, playing }: { video: Video; playing: Playing }) {
  return (
    <input
      type="range"
      className={styles['scrubber']}
      aria-label="Moment of the video"
      aria-valuetext={frameTimeWords(playing.atMs)}
      min={0}
      max={Math.max(video.file.durationMs, 1)}
      step={1}
      value={Math.min(playing.atMs, video.file.durationMs)}
      disabled={playing.state !== 'ready'}
      onChange={(event) => playing.seek(Number(event.currentTarget.value))}
    />
  )
}

function PlayButtons({ playing, isReady }: { playing: Playing; isReady: boolean }) {
  return (
    <>
      <Button isDisabled={!isReady} onPress={playing.toggle}>
        <Icon name={playing.isPlaying ? 'pause' : 'play'} />
        {playing.isPlaying ? 'Pause' : 'Play'} <KeyHint keys="K" />
      </Button>
      <IconButton icon="back" label="One frame back" keys="," isDisabled={!isReady} onPress={() => playing.step(-1)} />
      <IconButton icon="forward" label="One frame on" keys="." isDisabled={!isReady} onPress={() => playing.step(1)} />
    </>
  )
}

/** Where in the video the frame is, and what time of day that was as far as it is known. */
function Moment({ video, atMs }: { video: Video; atMs: number }) {
  const { file, time } = video
  return (
    <p className={styles['moment']}>
      <span className={styles['clock']}>{frameTimeWords(atMs)}</span>
      <span className={styles['quiet']}>of {frameTimeWords(file.durationMs)}</span>
      <span className={styles['quiet']}>
        {time.instantMs === null
          ? 'Time of day not known: the file does not say when it begins. Set it in the details if you know.'
          : photoTimeWords(timeOfFrame(time, atMs))}
      </span>
    </p>
  )
}

function usePlayerKeys(actions: { playing: Playing; takeStill: () => void; isReady: boolean }): void {
  const { playing, takeStill, isReady } = actions
  const command = (id: string, label: string, given: { keys: string; perform: () => void }) => ({
    id: `video.${id}`,
    label,
    enabled: isReady,
    ...given,
  })
  useCommands([
    command('play', 'Play or pause', { keys: 'K', perform: playing.toggle }),
    command('frame-back', 'One frame back', { keys: ',', perform: () => playing.step(-1) }),
    command('frame-on', 'One frame on', { keys: '.', perform: () => playing.step(1) }),
    command('leap-back', 'Five seconds back', { keys: 'J', perform: () => playing.seek(playing.atMs - LEAP_MS) }),
    command('leap-on', 'Five seconds on', { keys: 'L', perform: () => playing.seek(playing.atMs + LEAP_MS) }),
    command('still', 'Take a still of this frame', { keys: 'S', perform: takeStill }),
  ])
}
