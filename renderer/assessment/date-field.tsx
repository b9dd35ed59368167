import { isCalendarDate } from '../../app/job/calendar.ts'
import { KeptText } from '../field-tests/kept-text.tsx'

interface DateFieldProps {
  readonly label: string
  readonly hideLabel?: boolean
  readonly value: string | null
  readonly onChange: (date: string | null) => void
}

/** A date of the calendar, or none. */
export function DateField({ label, hideLabel = false, value, onChange }: DateFieldProps) {
  return (
    <KeptText
      label={label}
      hideLabel={hideLabel}
      value={value ?? ''}
      placeholder="2026-03-14"
      faultOf={(text) =>
        text.trim() === '' || isCalendarDate(text.trim()) ? null : 'Write the date as year-month-day: 2026-03-14.'
      }
      onChange={(text) => onChange(text.trim() === '' ? null : text.trim())}
    />
  )
}
