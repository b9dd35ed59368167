import type { JobSheet } from '../../app/job/sheet.ts'
import { SelectField } from '../ui/select-field.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import { sectionFields } from './section-fields.ts'
import { SectionFrame } from './section-frame.tsx'
import styles from './sheet.module.css'
import { useSection } from './use-section.ts'

type Cause = JobSheet['loss']['cause']

const causes = {
  'not-stated': 'Not stated',
  wind: 'Wind',
  hail: 'Hail',
  'fallen-object': 'Fallen object',
  fire: 'Fire',
  other: 'Something else',
} as const satisfies Record<Cause, string>
const causeOptions = causeKeys().map((key) => ({ key, label: causes[key] }))

/** When and how the loss happened, as reported. */
export function LossSection() {
  const section = useSection('loss')
  const field = sectionFields(section)
  const { value, set } = section
  return (
    <SectionFrame title="Loss" note="As the owner reported it." section={section}>
      <div className={styles['two']}>
        <TextField label="Date of loss" placeholder="2026-03-14" {...field.date('date')} />
      </div>
      <div className={styles['two']} data-field="loss.cause">
        <SelectField
          label="Reported cause"
          options={causeOptions}
          value={value.cause}
          onChange={(cause) => {
            if (cause !== null) set({ ...value, cause })
          }}
        />
      </div>
      <div className={styles['whole']}>
        <TextArea label="What happened" rows={3} {...field.text('description')} />
      </div>
    </SectionFrame>
  )
}

function causeKeys(): readonly Cause[] {
  return ['not-stated', 'wind', 'hail', 'fallen-object', 'fire', 'other']
}
