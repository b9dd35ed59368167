import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './diary.module.css'
import type { RuleDraft } from './rule-draft.ts'

const units = [
  { key: 'hours', label: 'Hours' },
  { key: 'calendar-days', label: 'Calendar days' },
  { key: 'business-days', label: 'Business days' },
  { key: 'months', label: 'Months' },
  { key: 'years', label: 'Years' },
] as const

interface RuleFiguresProps {
  readonly draft: RuleDraft
  readonly onChange: (part: Partial<RuleDraft>) => void
}

/** The figures that a computation takes from a rule, by its kind. */
export function RuleFigures({ draft, onChange }: RuleFiguresProps) {
  return draft.kind === 'clock' ? (
    <>
      <TextField
        label="What starts the time"
        placeholder="date of loss"
        value={draft.trigger}
        onChange={(trigger) => onChange({ trigger })}
      />
      <NumberField label="How many" min={1} max={3650} value={draft.count} onChange={(count) => onChange({ count })} />
      <SelectField
        label="Of what"
        options={units}
        value={draft.unit}
        onChange={(unit) => onChange({ unit: unit ?? draft.unit })}
      />
    </>
  ) : (
    <>
      <NumberField
        label="More than"
        unit="%"
        min={0}
        max={100}
        value={draft.morePercent}
        onChange={(morePercent) => onChange({ morePercent })}
      />
      <NumberField
        label="Within so many months"
        min={1}
        max={120}
        value={draft.withinMonths}
        onChange={(withinMonths) => onChange({ withinMonths })}
      />
      <div className={styles['wide']}>
        <TextField
          label="What divides a roof into sections"
          value={draft.sections}
          onChange={(sections) => onChange({ sections })}
        />
      </div>
    </>
  )
}
