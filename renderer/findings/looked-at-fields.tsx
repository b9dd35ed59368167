import type { LookedAtKey } from '../../app/evidence/catalog/entries.ts'
import { lookedAtLabels } from '../../app/evidence/catalog/labels.ts'
import { TextField } from '../ui/text-field.tsx'
import styles from './finding-form.module.css'
import type { FindingDraft } from './finding-draft.ts'

const every = Object.keys(lookedAtLabels) as LookedAtKey[]

interface LookedAtFieldsProps {
  readonly draft: FindingDraft
  readonly change: (patch: Partial<FindingDraft>) => void
  /** The questions that the condition asks. */
  readonly asked: readonly LookedAtKey[]
}

/** The questions that a reader will ask of this condition; the others stay folded unless one is answered. */
export function LookedAtFields({ draft, change, asked }: LookedAtFieldsProps) {
  const others = every.filter((key) => !asked.includes(key))
  const isAnswered = others.some((key) => draft.lookedAt[key] !== '')
  const field = (key: LookedAtKey) => (
    <TextField
      key={key}
      label={lookedAtLabels[key].question}
      value={draft.lookedAt[key]}
      onChange={(text) => change({ lookedAt: { ...draft.lookedAt, [key]: text } })}
      maxLength={1000}
      placeholder="Not looked at"
    />
  )
  return (
    <div className={styles['stack']}>
      {asked.length === 0 ? null : <h4 className={styles['asked']}>A reader will ask</h4>}
      {asked.map(field)}
      <details open={isAnswered || undefined}>
        <summary className={styles['summary']}>
          {asked.length === 0 ? 'Questions a reader may ask' : 'Other questions'}
        </summary>
        <div className={styles['stack']}>{others.map(field)}</div>
      </details>
    </div>
  )
}
