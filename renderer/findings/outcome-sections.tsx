import { explanatoryNoteKeys, explanatoryNotes } from '../../app/evidence/catalog/notes.ts'
import { consequenceLabels } from '../../app/evidence/catalog/labels.ts'
import { consequenceSchema } from '../../app/evidence/finding.ts'
import { Checkbox } from '../ui/checkbox.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './finding-form.module.css'
import { FormSection } from './form-section.tsx'
import type { FindingForm } from './use-finding-form.ts'

/** What follows from it for the house, apart from how it came about. */
export function ConsequenceSection({ form }: { form: FindingForm }) {
  const { consequences } = form.draft
  return (
    <FormSection id="consequence" title="Consequence">
      <div className={styles['checks']}>
        {consequenceSchema.options.map((key) => (
          <Checkbox
            key={key}
            isSelected={consequences.includes(key)}
            onChange={(isOn) =>
              form.change({
                consequences: consequenceSchema.options.filter((other) =>
                  other === key ? isOn : consequences.includes(other),
                ),
              })
            }
          >
            {capital(consequenceLabels[key])}
          </Checkbox>
        ))}
      </div>
    </FormSection>
  )
}

/** What was done about it on the day, and whether it can wait. */
export function FollowUpSection({ form }: { form: FindingForm }) {
  const { draft, change } = form
  return (
    <FormSection id="follow-up" title="Follow-up">
      <TextField
        label="Temporary measure taken"
        value={draft.temporaryMeasure}
        maxLength={1000}
        placeholder="slid back in place; covered"
        onChange={(temporaryMeasure) => change({ temporaryMeasure })}
      />
      <Checkbox isSelected={draft.urgent} onChange={(urgent) => change({ urgent })}>
        Urgent
      </Checkbox>
    </FormSection>
  )
}

/** Explanatory notes that the packet prints once because this finding names them. */
export function NotesSection({ form }: { form: FindingForm }) {
  const { noteKeys } = form.draft
  return (
    <FormSection id="notes" title="Notes to include" remark="Each is printed once, at the end of the packet.">
      <div className={styles['checks']}>
        {explanatoryNoteKeys.map((key) => (
          <Checkbox
            key={key}
            isSelected={noteKeys.includes(key)}
            onChange={(isOn) =>
              form.change({ noteKeys: isOn ? [...noteKeys, key] : noteKeys.filter((other) => other !== key) })
            }
          >
            {explanatoryNotes[key].title}
          </Checkbox>
        ))}
      </div>
    </FormSection>
  )
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
