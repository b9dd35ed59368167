import { useEdit, useJob } from '../state/job-state.tsx'
import { NumberField } from '../ui/number-field.tsx'
import styles from './weather.module.css'

/** How long before and after the day of loss is looked at. */
export function WindowFields() {
  const { weather, job } = useJob()
  const edit = useEdit()
  const { choices } = weather
  return (
    <section className={styles['part']} aria-label="Window of time">
      <h3>Around the day of loss{job.sheet.loss.date === null ? '' : `, ${job.sheet.loss.date}`}</h3>
      <div className={styles['fields']}>
        <NumberField
          label="Before it begins"
          unit="h"
          min={0}
          max={720}
          value={choices.hoursBefore}
          onChange={(hours) => void edit('weather.choose', { choices: { ...choices, hoursBefore: hours ?? 0 } })}
        />
        <NumberField
          label="After it ends"
          unit="h"
          min={0}
          max={720}
          value={choices.hoursAfter}
          onChange={(hours) => void edit('weather.choose', { choices: { ...choices, hoursAfter: hours ?? 0 } })}
        />
      </div>
    </section>
  )
}
