import { TextField } from '../ui/text-field.tsx'
import { ChoiceChips } from './choice-chips.tsx'
import styles from './finding-form.module.css'
import type { FindingDraft } from './finding-draft.ts'

interface DegreeFieldProps {
  readonly draft: FindingDraft
  readonly change: (patch: Partial<FindingDraft>) => void
  /** The catalog's graded words for the condition, slight first. */
  readonly words: readonly string[]
}

/** How far it has gone, in the catalog's graded words or the inspector's own. */
export function DegreeField({ draft, change, words }: DegreeFieldProps) {
  return (
    <div className={styles['stack']}>
      <TextField
        label="Degree"
        value={draft.degree}
        onChange={(degree) => change({ degree })}
        maxLength={120}
        placeholder="In a word or two"
      />
      {words.length === 0 ? null : (
        <ChoiceChips
          label="Words for the degree"
          choices={words.map((word) => ({ key: word, label: word, isOn: draft.degree === word }))}
          onPress={(word) => change({ degree: draft.degree === word ? '' : word })}
        />
      )}
    </div>
  )
}
