import { isCalendarDate } from '../../app/job/calendar.ts'
import type { FileReading } from '../../app/contract/weather.ts'
import { averagingSchema, averagingWords, type ReadingChoices } from '../../app/weather/reading-choices.ts'
import { speedUnitSchema } from '../../app/weather/speed.ts'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './weather.module.css'

interface ReadingFieldsProps {
  readonly reading: FileReading
  readonly choices: ReadingChoices
  readonly onChange: (choices: ReadingChoices) => void
  readonly zone: string
}

const bases = [
  { key: 'utc', label: 'UTC' },
  { key: 'fixed-offset', label: 'Local standard time, one offset all year' },
  { key: 'zone', label: 'Local time with daylight saving' },
] as const

const units = speedUnitSchema.options.map((key) => ({ key, label: key }))
const averagings = averagingSchema.options.map((key) => ({ key, label: averagingWords[key] }))

/** What the person says of a file. Formats that fix a thing themselves don't ask for it. */
export function ReadingFields(props: ReadingFieldsProps) {
  const { reading, choices, onChange } = props
  const isFree = reading.kind === 'table' || reading.kind === 'lcd'
  return (
    <>
      {reading.kind === 'table' ? <ColumnFields {...props} /> : null}
      <div className={styles['fields']}>
        {isFree ? <TimeFields {...props} /> : null}
        {isFree ? (
          <SelectField
            label="Speeds are in"
            options={units}
            value={choices.unit}
            onChange={(unit) => onChange({ ...choices, unit: unit ?? 'kt' })}
          />
        ) : null}
        <SelectField
          label="Mean wind is"
          options={averagings}
          value={choices.averaging}
          onChange={(averaging) => onChange({ ...choices, averaging: averaging ?? 'not-stated' })}
        />
        {reading.kind === 'metar' ? (
          <DateField
            label="Made near"
            value={choices.nearDate}
            onChange={(nearDate) => onChange({ ...choices, nearDate })}
          />
        ) : null}
        <DateField
          label="From, UTC"
          value={choices.fromDate}
          onChange={(fromDate) => onChange({ ...choices, fromDate })}
        />
        <DateField label="To, UTC" value={choices.toDate} onChange={(toDate) => onChange({ ...choices, toDate })} />
      </div>
      <ProvenFields {...props} />
    </>
  )
}

function ProvenFields({ reading, choices, onChange }: ReadingFieldsProps) {
  const { provenUnit, provenTimeBasis, proofs } = reading
  if (proofs.length === 0) return null
  const proven = { ...choices, unit: provenUnit ?? choices.unit, timeBasis: provenTimeBasis ?? choices.timeBasis }
  const isChosen = JSON.stringify(proven) === JSON.stringify(choices)
  return (
    <div>
      {proofs.map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {isChosen ? null : <Button onPress={() => onChange(proven)}>Read it as the file proves</Button>}
    </div>
  )
}

function TimeFields({ choices, onChange, zone }: ReadingFieldsProps) {
  const { timeBasis } = choices
  return (
    <>
      <SelectField
        label="Times are"
        options={bases}
        value={timeBasis.kind}
        onChange={(kind) => {
          if (kind === 'utc') onChange({ ...choices, timeBasis: { kind } })
          if (kind === 'fixed-offset') onChange({ ...choices, timeBasis: { kind, offsetMinutes: -300 } })
          if (kind === 'zone') onChange({ ...choices, timeBasis: { kind, zone } })
        }}
      />
      {timeBasis.kind === 'fixed-offset' ? (
        <NumberField
          label="Ahead of UTC"
          unit="h"
          min={-12}
          max={14}
          value={timeBasis.offsetMinutes / 60}
          onChange={(hours) =>
            onChange({
              ...choices,
              timeBasis: { kind: 'fixed-offset', offsetMinutes: Math.round((hours ?? 0) * 60) },
            })
          }
        />
      ) : null}
      {timeBasis.kind === 'zone' ? <p className={styles['quiet']}>Zone of the job: {timeBasis.zone}</p> : null}
    </>
  )
}

const columnNames = {
  time: 'Time',
  direction: 'Direction',
  mean: 'Mean wind',
  gust: 'Gust',
  station: 'Station',
} as const

function ColumnFields({ reading, choices, onChange }: ReadingFieldsProps) {
  const titles = [...new Set(reading.columns)].filter((title) => title !== '')
  const options = titles.map((title) => ({ key: title, label: title }))
  return (
    <div className={styles['fields']}>
      {(['time', 'direction', 'mean', 'gust', 'station'] as const).map((column) => (
        <SelectField
          key={column}
          label={`${columnNames[column]} column`}
          options={options}
          emptyLabel="None"
          value={choices.columns[column]}
          onChange={(title) => onChange({ ...choices, columns: { ...choices.columns, [column]: title } })}
        />
      ))}
      {choices.columns.station === null ? (
        <TextField
          label="Station"
          value={choices.stationCode}
          onChange={(stationCode) => onChange({ ...choices, stationCode: stationCode.slice(0, 60) })}
        />
      ) : null}
      <Checkbox
        isSelected={choices.hasDecimalComma}
        onChange={(hasDecimalComma) => onChange({ ...choices, hasDecimalComma })}
      >
        Decimal commas
      </Checkbox>
    </div>
  )
}

interface DateFieldProps {
  readonly label: string
  readonly value: string | null
  readonly onChange: (date: string | null) => void
}

/** A date of the calendar; what is no date yet changes nothing. */
function DateField({ label, value, onChange }: DateFieldProps) {
  return (
    <TextField
      label={label}
      placeholder="2026-11-04"
      defaultValue={value ?? ''}
      onChange={(text) => {
        if (text.trim() === '') onChange(null)
        else if (isCalendarDate(text.trim())) onChange(text.trim())
      }}
    />
  )
}
