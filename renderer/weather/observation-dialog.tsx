import { useState } from 'react'
import { averagingSchema, averagingWords, type Averaging } from '../../app/weather/reading-choices.ts'
import { speedUnitSchema, toKnots, type SpeedUnit } from '../../app/weather/speed.ts'
import { readWrittenTime } from '../../app/weather/written-time.ts'
import { useEdit } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './weather.module.css'

const units = speedUnitSchema.options.map((key) => ({ key, label: key }))
const averagings = averagingSchema.options.map((key) => ({ key, label: averagingWords[key] }))

/** One report typed by hand, with where it was read. */
export function ObservationDialog({ zone, onClose }: { zone: string; onClose: () => void }) {
  const edit = useEdit()
  const [station, setStation] = useState('')
  const [time, setTime] = useState('')
  const [provenance, setProvenance] = useState('')
  const [unit, setUnit] = useState<SpeedUnit>('kt')
  const [averaging, setAveraging] = useState<Averaging>('not-stated')
  const [figures, setFigures] = useState<Figures>({ fromDeg: null, mean: null, gust: null })
  const read = readWrittenTime(time, { kind: 'zone', zone })
  const isWhole =
    station.trim() !== '' &&
    read !== null &&
    provenance.trim() !== '' &&
    (figures.mean !== null || figures.gust !== null)
  const add = async () => {
    if (read === null) return
    const knots = (value: number | null) => (value === null ? null : toKnots(value, unit))
    const observation = {
      station: station.trim(),
      atMs: read.atMs,
      fromDeg: figures.fromDeg,
      isVariable: false,
      between: null,
      meanKt: knots(figures.mean),
      gustKt: knots(figures.gust),
      peak: null,
    }
    if ((await edit('weather.add-observation', { observation, averaging, provenance })) !== null) onClose()
  }
  return (
    <Dialog
      title="Type an observation"
      isOpen
      onClose={onClose}
      actions={<Actions isWhole={isWhole} onClose={onClose} onAdd={() => void add()} />}
    >
      <div className={styles['fields']}>
        <TextField label="Station" value={station} onChange={setStation} />
        <TextField
          label={`Time, ${zone}`}
          placeholder="2026-11-04 16:20"
          value={time}
          onChange={setTime}
          error={time !== '' && read === null ? 'Write it as 2026-11-04 16:20.' : null}
        />
        <SelectField label="Speeds are in" options={units} value={unit} onChange={(one) => setUnit(one ?? 'kt')} />
        <FigureFields figures={figures} onChange={setFigures} />
        <SelectField
          label="Mean wind is"
          options={averagings}
          value={averaging}
          onChange={(one) => setAveraging(one ?? 'not-stated')}
        />
        <SourceField value={provenance} onChange={setProvenance} />
      </div>
    </Dialog>
  )
}

function SourceField({ value, onChange }: { value: string; onChange: (text: string) => void }) {
  return (
    <div className={styles['wide']}>
      <TextField
        label="Where this was read"
        help="An observation without its source is not taken."
        value={value}
        onChange={onChange}
      />
    </div>
  )
}

interface ActionsProps {
  readonly isWhole: boolean
  readonly onClose: () => void
  readonly onAdd: () => void
}

function Actions({ isWhole, onClose, onAdd }: ActionsProps) {
  return (
    <>
      <Button onPress={onClose}>Cancel</Button>
      <Button look="main" isDisabled={!isWhole} onPress={onAdd}>
        Add the observation
      </Button>
    </>
  )
}

interface Figures {
  readonly fromDeg: number | null
  readonly mean: number | null
  readonly gust: number | null
}

function FigureFields({ figures, onChange }: { figures: Figures; onChange: (figures: Figures) => void }) {
  return (
    <>
      <NumberField
        label="From"
        unit="°"
        min={0}
        max={360}
        value={figures.fromDeg}
        onChange={(fromDeg) => onChange({ ...figures, fromDeg })}
      />
      <NumberField
        label="Mean wind"
        min={0}
        max={400}
        value={figures.mean}
        onChange={(mean) => onChange({ ...figures, mean })}
      />
      <NumberField
        label="Gust"
        min={0}
        max={400}
        value={figures.gust}
        onChange={(gust) => onChange({ ...figures, gust })}
      />
    </>
  )
}
