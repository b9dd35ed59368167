import { type KeyboardEvent, useMemo, useRef, useState } from 'react'
import { useJob } from '../state/job-state.tsx'
import { dayWords, type JobClock, jobClock, timeWords } from '../state/job-clock.ts'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { useDropToPlace, UntimedTray } from './untimed-tray.tsx'
import { useStoredFlag } from '../ui/use-stored-flag.ts'
import { useElementSize } from '../ui/use-element-size.ts'
import { type StripContent, stripContent } from './strip-lanes.ts'
import { StripPicture } from './strip-picture.tsx'
import { stripScale, type TimeWindow } from './strip-scale.ts'
import { whenWords } from './strip-words.ts'
import styles from './time-strip.module.css'

/** The inspection minute by minute: photos as ticks in a lane per camera, findings at their first photo's time. */
export function TimeStrip() {
  const job = useJob()
  const content = useMemo(() => stripContent(job), [job])
  const clock = useMemo(() => jobClock(job), [job])
  const [isFolded, setFolded] = useStoredFlag('battenbook-strip-folded')
  const [window, setWindow] = useState<TimeWindow | null>(null)
  const timed = content.lanes.reduce((sum, lane) => sum + lane.photos.length, 0)
  if (job.photos.length === 0 && job.videos.length === 0) return null
  const words =
    window === null
      ? `${countWords(timed, 'photo')} with a time, ${clock.zoneWords}`
      : `${dayWords(window.fromMs, clock)}, ${timeWords(window.fromMs, clock)} to ${timeWords(window.toMs, clock)}`
  return (
    <section className={styles['strip']} aria-label="Time strip">
      <header className={styles['head']}>
        <IconButton
          icon={isFolded ? 'up' : 'down'}
          label={isFolded ? 'Show the time strip' : 'Fold the time strip away'}
          onPress={() => setFolded(!isFolded)}
        />
        <h2 className={styles['title']}>Time</h2>
        <span className={styles['words']}>{words}</span>
        <SelectedMoment />
        {window === null ? null : (
          <Button look="quiet" onPress={() => setWindow(null)}>
            Show the whole inspection
          </Button>
        )}
      </header>
      {isFolded ? null : <StripBody content={content} clock={clock} window={window} onWindow={setWindow} />}
    </section>
  )
}

function SelectedMoment() {
  const job = useJob()
  const { selection } = useSelection()
  const clock = useMemo(() => jobClock(job), [job])
  if (selection.kind !== 'photos') return null
  const photo = job.photos.find((one) => one.id === selection.lead)
  if (photo === undefined) return null
  return <span className={styles['current']}>{whenWords(photo, clock)}</span>
}

interface BodyProps {
  readonly content: StripContent
  readonly clock: JobClock
  readonly window: TimeWindow | null
  readonly onWindow: (window: TimeWindow | null) => void
}

function StripBody({ content, clock, window, onWindow }: BodyProps) {
  const holder = useRef<HTMLDivElement>(null)
  const { widthPx } = useElementSize(holder)
  const scale = useMemo(() => {
    return stripScale(instantsOf(content), { widthPx, window })
  }, [content, widthPx, window])
  const move = usePhotoSteps(content)
  const dropping = useDropToPlace(scale)
  function onKeyDown(event: KeyboardEvent) {
    const step = { ArrowRight: 1, ArrowLeft: -1, PageDown: 10, PageUp: -10, Home: -Infinity, End: Infinity }[event.key]
    if (step === undefined) return
    event.preventDefault()
    move.by(step)
  }
  return (
    <div className={styles['body']}>
      <ul className={styles['names']} aria-hidden="true">
        <li>Findings</li>
        {content.readings.length === 0 ? null : <li>Field tests</li>}
        {content.videos.length === 0 ? null : <li>Video</li>}
        {content.cues.length === 0 ? null : <li>Narration</li>}
        {content.lanes.map((lane) => (
          <li key={lane.cameraId ?? ''} title={lane.name}>
            {lane.name}
          </li>
        ))}
      </ul>
      <div
        ref={holder}
        className={styles['holder']}
        role="slider"
        tabIndex={0}
        aria-label="Moment of the inspection; arrow keys go from photo to photo"
        aria-valuemin={0}
        aria-valuemax={Math.max(move.photos.length - 1, 0)}
        aria-valuenow={Math.max(move.at, 0)}
        aria-valuetext={move.current === null ? 'No photo selected' : whenWords(move.current, clock)}
        onKeyDown={onKeyDown}
        {...dropping}
      >
        {widthPx > 0 ? <StripPicture content={content} clock={clock} scale={scale} onWindow={onWindow} /> : null}
      </div>
      {content.untimed.length === 0 ? null : <UntimedTray photos={content.untimed} />}
    </div>
  )
}

/** Every moment that the strip has to hold. */
function instantsOf({ lanes, readings, videos, cues }: StripContent): readonly number[] {
  return [
    ...lanes.flatMap((lane) => lane.photos.map((one) => one.instantMs)),
    ...readings.map((one) => one.instantMs),
    ...videos.flatMap(({ fromMs, toMs }) => [fromMs, toMs]),
    ...cues.map((one) => one.instantMs),
  ].toSorted((a, b) => a - b)
}

/** Steps through the photos in order of time. */
function usePhotoSteps(content: StripContent) {
  const { selection, select } = useSelection()
  const photos = useMemo(
    () =>
      content.lanes
        .flatMap((lane) => lane.photos)
        .toSorted((a, b) => a.instantMs - b.instantMs)
        .map((one) => one.photo),
    [content],
  )
  const lead = selection.kind === 'photos' ? selection.lead : null
  const at = photos.findIndex((photo) => photo.id === lead)
  return {
    photos,
    at,
    current: photos[at] ?? null,
    by(step: number) {
      const to = photos[Math.min(Math.max(at + step, 0), photos.length - 1)]
      if (to !== undefined) select({ kind: 'photos', ids: [to.id], lead: to.id })
    },
  }
}
