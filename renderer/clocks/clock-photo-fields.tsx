import { useEffect, useMemo, useState } from 'react'
import { correctionFor } from '../../app/evidence/camera-clock.ts'
import type { ClockComparison } from '../../app/evidence/camera.ts'
import { zoneOfPhoto } from '../../app/evidence/photo-zone.ts'
import { type Photo, photoLabel } from '../../app/evidence/photo.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { photoByTypedNumber } from '../photos/typed-photo.ts'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './clock-dialog.module.css'
import type { ComparisonFields } from './comparison-fields.ts'
import { NumberedPhoto } from './numbered-photo.tsx'
import { shownTime } from './shown-time.ts'

const UTC = 'UTC'

/** A photo of a phone's or GPS clock: a person types what it shows. */
export function ClockPhotoFields({ camera, onComparison }: ComparisonFields) {
  const { photos, job } = useJob()
  const { selection } = useSelection()
  const own = useMemo(() => photos.filter(({ cameraId }) => cameraId === camera.id), [photos, camera.id])
  const selected = selection.kind === 'photos' ? own.find(({ id }) => id === selection.lead) : undefined
  const [number, setNumber] = useState(selected === undefined ? '' : photoLabel(selected.number))
  const [time, setTime] = useState('')
  const [typedDate, setDate] = useState<string | null>(null)
  const photo = photoByTypedNumber(own, number)
  const houseZone = photo === null ? null : zoneOfPhoto(photo.file, job.sheet)
  const [chosenZone, setZone] = useState<string | null>(null)
  const zone = chosenZone ?? houseZone ?? UTC
  const [onlyDay] = job.sheet.inspection.dates
  const date = typedDate ?? onlyDay ?? photo?.file.written.local?.slice(0, 10) ?? ''
  const shown = shownTime({ time, date, zone })
  const atMs = shown.ok ? shown.atMs : null
  const comparison = useMemo(
    () =>
      comparisonOf({
        photo,
        houseZone,
        atMs,
        trueWords: `${date} ${time.trim()}, ${zone}`,
      }),
    [photo, houseZone, atMs, date, time, zone],
  )
  useEffect(() => onComparison(comparison), [comparison, onComparison])
  return (
    <div className={styles['fields']}>
      <NumberedPhoto label="Photo of the clock" photos={own} text={number} onText={setNumber} refuse={hasNoTime} />
      <TextField
        label="The clock shows"
        placeholder="14:32:10"
        value={time}
        onChange={setTime}
        error={time === '' || shown.ok ? null : shown.error}
      />
      <TextField label="On the date" placeholder="2026-03-14" value={date} onChange={setDate} />
      <SelectField label="In the zone" options={zoneOptions(houseZone)} value={zone} onChange={(key) => setZone(key)} />
      {photo !== null && comparison === null && shown.ok ? (
        <p className={styles['note']}>
          Nothing says which zone the camera’s own time is in. Set the house’s position or time zone on the job sheet.
        </p>
      ) : null}
    </div>
  )
}

function hasNoTime({ file }: Photo): string | null {
  return file.written.local === null ? 'This file has no time to compare.' : null
}

interface Shown {
  readonly photo: Photo | null
  readonly houseZone: string | null
  readonly atMs: number | null
  readonly trueWords: string
}

function comparisonOf({ photo, houseZone, atMs, trueWords }: Shown): ClockComparison | null {
  const cameraLocal = photo?.file.written.local ?? null
  if (photo === null || cameraLocal === null || atMs === null) return null
  const correctionMs = correctionFor(photo.file.written, atMs, houseZone)
  return correctionMs === null
    ? null
    : { by: 'clock-photo', photoId: photo.id, cameraLocal, correctionMs, trueWords: trueWords.slice(0, 200) }
}

function zoneOptions(houseZone: string | null) {
  const first = [
    ...(houseZone === null ? [] : [{ key: houseZone, label: houseZone, hint: 'at the house' }]),
    { key: UTC, label: 'UTC', hint: 'GPS clock' },
  ]
  const known = new Set(first.map(({ key }) => key))
  const rest = Intl.supportedValuesOf('timeZone').filter((zone) => !known.has(zone))
  return [...first, ...rest.map((zone) => ({ key: zone, label: zone }))]
}
