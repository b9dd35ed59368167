import { causes } from '../../app/evidence/catalog/causes.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { causeKeySchema } from '../../app/evidence/catalog/keys.ts'
import type { CauseOpinion } from '../../app/evidence/finding.ts'
import { IconButton } from '../ui/icon-button.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import { ChoiceChips } from './choice-chips.tsx'
import styles from './finding-form.module.css'
import { FormSection } from './form-section.tsx'
import { GuardedText } from './guarded-text.tsx'
import { IndicatorList } from './indicator-list.tsx'
import { PublishedViews } from './published-views.tsx'
import type { FindingForm } from './use-finding-form.ts'

const options = causeKeySchema.options.map((key) => ({ key, label: causes[key].label }))

/** The inspector's opinion on cause, apart from what was observed; nothing in it is filled in by the program. */
export function CauseSection({ form }: { form: FindingForm }) {
  const { cause, condition } = form.draft
  const entry = condition === null ? null : conditions[condition]
  const set = (patch: Partial<CauseOpinion>) => form.change({ cause: { ...cause, ...patch } })
  return (
    <FormSection
      id="cause"
      title="Opinion on cause"
      look="opinion"
      remark="Yours, printed as an opinion. “Undetermined” is an answer."
    >
      <SelectField
        label="Cause"
        options={options}
        value={cause.cause}
        onChange={(next) => {
          if (next !== null) set({ cause: next })
        }}
      />
      <p className={styles['quiet']}>The packet will say: {causes[cause.cause].opinion}</p>
      <IndicatorList cause={cause} set={set} offered={entry?.oftenReadAsWind ?? []} />
      <OtherExplanations cause={cause} set={set} offered={entry?.otherExplanations ?? []} />
      <GuardedText
        label="Note on the opinion"
        value={cause.note}
        onChange={(note) => set({ note })}
        maxLength={4000}
        rows={2}
      />
      {entry === null || entry.publishedViews.length === 0 ? null : <PublishedViews keys={entry.publishedViews} />}
    </FormSection>
  )
}

interface OtherExplanationsProps {
  readonly cause: CauseOpinion
  readonly set: (patch: Partial<CauseOpinion>) => void
  readonly offered: readonly string[]
}

function OtherExplanations({ cause, set, offered }: OtherExplanationsProps) {
  const rows = cause.otherExplanations
  const taken = new Set(rows.map((row) => row.explanation))
  const add = (explanation: string) => set({ otherExplanations: [...rows, { explanation, whyLessLikely: '' }] })
  const free = offered.filter((explanation) => !taken.has(explanation))
  return (
    <div className={styles['stack']}>
      <h4 className={styles['asked']}>Other explanations considered</h4>
      {rows.map((row, index) => (
        <div key={index} className={styles['row']}>
          <TextField
            label={`Explanation ${index + 1}`}
            value={row.explanation}
            maxLength={400}
            onChange={(explanation) =>
              set({ otherExplanations: rows.map((other, i) => (i === index ? { ...other, explanation } : other)) })
            }
          />
          <TextField
            label="Why less likely"
            value={row.whyLessLikely}
            maxLength={1000}
            onChange={(whyLessLikely) =>
              set({ otherExplanations: rows.map((other, i) => (i === index ? { ...other, whyLessLikely } : other)) })
            }
          />
          <IconButton
            icon="trash"
            label={`Remove explanation ${index + 1}`}
            onPress={() => set({ otherExplanations: rows.filter((_, i) => i !== index) })}
          />
        </div>
      ))}
      <ChoiceChips
        label="Add an explanation"
        choices={[...free.map((text) => ({ key: text, label: text })), { key: '', label: 'another' }]}
        onPress={add}
      />
    </div>
  )
}
