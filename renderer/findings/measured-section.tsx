import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { measures } from '../../app/evidence/catalog/measures.ts'
import { type MeasureKey, measureKeySchema } from '../../app/evidence/finding.ts'
import { IconButton } from '../ui/icon-button.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import { ChoiceChips } from './choice-chips.tsx'
import styles from './finding-form.module.css'
import type { DraftMeasurement } from './finding-draft.ts'
import { FormSection } from './form-section.tsx'
import { faultOf, type FindingForm } from './use-finding-form.ts'

const kinds = measureKeySchema.options.map((key) => ({ key, label: measures[key].label }))
const means = [
  { key: 'instrument', label: 'Instrument' },
  { key: 'hand', label: 'By hand' },
  { key: 'eye', label: 'By eye' },
] as const

interface MeasuredSectionProps {
  readonly form: FindingForm
  /** What the condition asks for and no row has. */
  readonly lacking: readonly MeasureKey[]
}

/** Values with unit and means, one row each. */
export function MeasuredSection({ form, lacking }: MeasuredSectionProps) {
  const { measurements, condition } = form.draft
  const asked = condition === null ? [] : conditions[condition].measures
  const set = (rows: readonly DraftMeasurement[]) => form.change({ measurements: rows })
  const fault = faultOf(form, 'measurements')
  return (
    <FormSection id="measured" title="Measured">
      {measurements.map((row, index) => (
        <MeasureRow
          key={index}
          row={row}
          at={index + 1}
          onChange={(next) => set(measurements.map((other, i) => (i === index ? next : other)))}
          onRemove={() => set(measurements.filter((_, i) => i !== index))}
        />
      ))}
      {fault === null ? null : <p className={styles['fault']}>{fault}</p>}
      {lacking.length === 0 ? null : (
        <p className={styles['lack']}>
          Usually measured: {lacking.map((key) => measures[key].label.toLowerCase()).join(', ')}.
        </p>
      )}
      <ChoiceChips
        label="Add a measurement"
        choices={offered(asked).map((key) => ({ key, label: measures[key].label }))}
        onPress={(key) => {
          const what = measureKeySchema.parse(key)
          set([...measurements, { what, value: null, forceLbf: null, by: 'instrument', instrument: '', note: '' }])
        }}
      />
    </FormSection>
  )
}

/** What the condition asks for; every measure when it asks for none. */
function offered(asked: readonly MeasureKey[]): readonly MeasureKey[] {
  return asked.length === 0 ? measureKeySchema.options : asked
}

interface MeasureRowProps {
  readonly row: DraftMeasurement
  readonly at: number
  readonly onChange: (row: DraftMeasurement) => void
  readonly onRemove: () => void
}

function MeasureRow({ row, at, onChange, onRemove }: MeasureRowProps) {
  const { unit } = measures[row.what]
  return (
    <fieldset className={styles['row']}>
      <legend className={styles['hidden']}>Measurement {at}</legend>
      <SelectField
        label="What"
        options={kinds}
        value={row.what}
        onChange={(what) => {
          if (what !== null) onChange({ ...row, what, forceLbf: what === 'lift-in' ? row.forceLbf : null })
        }}
      />
      <NumberField
        label="Value"
        {...(unit === '' ? {} : { unit })}
        value={row.value}
        min={0}
        onChange={(value) => onChange({ ...row, value })}
      />
      {row.what === 'lift-in' ? (
        <NumberField
          label="At a force of"
          unit="lbf"
          value={row.forceLbf}
          min={0}
          max={1000}
          placeholder="not read"
          onChange={(forceLbf) => onChange({ ...row, forceLbf })}
        />
      ) : null}
      <SelectField
        label="Measured"
        options={means}
        value={row.by}
        onChange={(by) => {
          if (by !== null) onChange({ ...row, by })
        }}
      />
      {row.by === 'instrument' ? (
        <TextField
          label="Which instrument"
          value={row.instrument}
          maxLength={200}
          placeholder="steel rule"
          onChange={(instrument) => onChange({ ...row, instrument })}
        />
      ) : null}
      <TextField label="Note" value={row.note} maxLength={400} onChange={(note) => onChange({ ...row, note })} />
      <IconButton icon="trash" label={`Remove measurement ${at}`} onPress={onRemove} />
    </fieldset>
  )
}
