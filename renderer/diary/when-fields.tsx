import { comesTwice, diaryTimeSchema } from '../../app/diary/diary-time.ts'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import type { EntryDraft } from './entry-draft.ts'

const hours = [
  { key: 'first', label: 'The first, before the change' },
  { key: 'second', label: 'The second, after the change' },
] as const

interface WhenFieldsProps {
  readonly draft: EntryDraft
  readonly onChange: (part: Partial<EntryDraft>) => void
  readonly errors: (field: string) => string | null
}

/** Day, time and zone of an entry, and which hour where the clocks are set back. */
export function WhenFields({ draft, onChange, errors }: WhenFieldsProps) {
  const read = diaryTimeSchema.safeParse(draft)
  return (
    <>
      <TextField
        label="Day"
        placeholder="2026-03-20"
        value={draft.date}
        onChange={(date) => onChange({ date })}
        error={errors('date')}
      />
      <TextField
        label={draft.kind === 'reminder' ? 'Due at' : 'Time'}
        placeholder="14:30"
        value={draft.time}
        onChange={(time) => onChange({ time })}
        error={errors('time')}
      />
      <TextField
        label="Time zone"
        value={draft.timeZone}
        onChange={(timeZone) => onChange({ timeZone })}
        error={errors('timeZone')}
      />
      {read.success && comesTwice(read.data) ? (
        <SelectField
          label="This hour comes twice"
          options={hours}
          value={draft.repeatedHour ?? 'first'}
          onChange={(repeatedHour) => onChange({ repeatedHour })}
        />
      ) : null}
    </>
  )
}
