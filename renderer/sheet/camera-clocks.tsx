import { type FocusEvent, useEffect, useMemo, useRef, useState } from 'react'
import { cameraName } from '../../app/evidence/camera-name.ts'
import type { Camera, CameraClock } from '../../app/evidence/camera.ts'
import { type Photo, photoLabel } from '../../app/evidence/photo.ts'
import { ClockDialog } from '../clocks/clock-dialog.tsx'
import { dayWords, jobClock, timeWords } from '../state/job-clock.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useProblems } from '../state/problems.tsx'
import { Button } from '../ui/button.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { TextField } from '../ui/text-field.tsx'
import { clockText, readClock } from './clock-text.ts'
import { correctedExample } from './corrected-example.ts'
import styles from './sheet.module.css'
import { TypedField } from './typed-field.tsx'

type TypedClock = Pick<CameraClock, 'correctionMs' | 'why'>

/** The cameras of the job, and how far each one's clock was off. */
export function CameraClocks() {
  const { cameras, photos } = useJob()
  return (
    <section className={styles['section']} aria-label="Cameras" data-field="cameras">
      <header className={styles['side']}>
        <h3 className={styles['sectionTitle']}>Cameras</h3>
        <p className={styles['note']}>
          What is added to each camera's clock, and how that is known. The files stay as they are.
        </p>
      </header>
      <div className={styles['cameras']}>
        {cameras.length === 0 ? <p className={styles['quiet']}>Cameras appear here when photos are taken in.</p> : null}
        {cameras.map((camera) => (
          <CameraRow key={camera.id} camera={camera} photos={photos.filter((photo) => photo.cameraId === camera.id)} />
        ))}
      </div>
    </section>
  )
}

function CameraRow({ camera, photos }: { camera: Camera; photos: readonly Photo[] }) {
  const { draft, change, save } = useClockDraft(camera)
  const leaving = {
    onBlur(event: FocusEvent) {
      if (!event.currentTarget.contains(event.relatedTarget)) save()
    },
  }
  return (
    <div className={styles['camera']} role="group" aria-label={cameraName(camera)} {...leaving}>
      <CameraFacts camera={camera} photos={photos} />
      <TypedField
        label="Add to its clock"
        name={`cameras.${camera.id}`}
        placeholder="+7 min 0 s"
        value={draft.correctionMs}
        write={clockText}
        read={readClock}
        onChange={(correctionMs) => change({ correctionMs })}
      />
      <TextField
        label="How that is known"
        placeholder="Photo of a phone's clock, P-001"
        value={draft.why}
        onChange={(why) => change({ why })}
      />
      <CameraActions camera={camera} photos={photos} />
      <Example photos={photos} correctionMs={draft.correctionMs} />
    </div>
  )
}

/** Ways to find the amount by comparing, what is suggested, and the way back. */
function CameraActions({ camera, photos }: { camera: Camera; photos: readonly Photo[] }) {
  const edit = useEdit()
  const problems = useProblems()
  const [isOpen, setOpen] = useState(false)
  const suggested = problems
    .flatMap(({ fixes = [] }) => fixes)
    .find((fix) => fix.kind === 'set-clock' && fix.cameraId === camera.id)
  const { comparisons = [], correctionMs } = camera.clock
  return (
    <div className={styles['cameraActions']}>
      <Button isDisabled={photos.length === 0} onPress={() => setOpen(true)}>
        Compare with another clock…
      </Button>
      {suggested === undefined || suggested.kind !== 'set-clock' ? null : (
        <Button onPress={() => void edit('cameras.set-clock', { id: camera.id, clock: suggested.clock })}>
          {suggested.label}
        </Button>
      )}
      {correctionMs === 0 && comparisons.length === 0 ? null : (
        <Button
          look="quiet"
          onPress={() => void edit('cameras.set-clock', { id: camera.id, clock: { correctionMs: 0, why: '' } })}
        >
          Take the correction back
        </Button>
      )}
      {comparisons.length < 2 ? null : (
        <span className={styles['quiet']}>
          A straight line from {comparisons.map(({ correctionMs: ms }) => clockText(ms) || '0 s').join(' to ')}. An
          amount typed above replaces it.
        </span>
      )}
      {isOpen ? <ClockDialog camera={camera} onClose={() => setOpen(false)} /> : null}
    </div>
  )
}

/** A camera's clock while a person works on it; saved as one step. */
function useClockDraft(camera: Camera) {
  const edit = useEdit()
  const [draft, setDraft] = useState<TypedClock>(camera.clock)
  // The field commits and the row saves in one and the same event, before React has drawn the new draft.
  const latest = useRef<TypedClock>(camera.clock)
  // By value: the job is read again while somebody types here.
  const { correctionMs, why, comparisons } = camera.clock
  useEffect(() => {
    latest.current = { correctionMs, why }
    setDraft(latest.current)
  }, [correctionMs, why])
  return {
    draft,
    change(patch: Partial<TypedClock>) {
      latest.current = { ...latest.current, ...patch }
      setDraft(latest.current)
    },
    save() {
      const clock = latest.current
      if (clock.correctionMs === correctionMs && clock.why === why) return
      // Comparisons stay as long as their amount does; an amount that is typed has none.
      const kept = clock.correctionMs === correctionMs && comparisons !== undefined ? { comparisons } : {}
      void edit('cameras.set-clock', { id: camera.id, clock: { ...clock, ...kept } })
    },
  }
}

function CameraFacts({ camera, photos }: { camera: Camera; photos: readonly Photo[] }) {
  const job = useJob()
  const clock = useMemo(() => jobClock(job), [job])
  const instants = photos.flatMap((photo) => photo.time.instantMs ?? [])
  const first = Math.min(...instants)
  const last = Math.max(...instants)
  return (
    <div>
      <p className={styles['cameraName']}>{cameraName(camera)}</p>
      <p className={styles['quiet']}>
        {camera.serial === '' ? 'No serial number' : `Serial ${camera.serial}`}, {countWords(photos.length, 'photo')}
      </p>
      <p className={styles['quiet']}>
        {instants.length === 0
          ? 'No times'
          : `${dayWords(first, clock)} ${timeWords(first, clock)} to ${dayWords(first, clock) === dayWords(last, clock) ? '' : `${dayWords(last, clock)} `}${timeWords(last, clock)}`}
      </p>
    </div>
  )
}

function Example({ photos, correctionMs }: { photos: readonly Photo[]; correctionMs: number }) {
  const photo = photos.find((one) => one.file.written.local !== null)
  const written = photo?.file.written.local ?? null
  if (photo === undefined || written === null || correctionMs === 0) return null
  const example = correctedExample(written, correctionMs)
  return (
    <p className={styles['example']}>
      {photoLabel(photo.number)}: the camera wrote {example.before}, it is read as <strong>{example.after}</strong>.
    </p>
  )
}
