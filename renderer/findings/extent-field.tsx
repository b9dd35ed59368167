import { components } from '../../app/evidence/catalog/components.ts'
import { extentWords } from '../../app/evidence/catalog/extent-words.ts'
import type { Extent } from '../../app/evidence/finding.ts'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './finding-form.module.css'
import { type DraftExtent, savedExtent } from './finding-draft.ts'
import { faultOf, type FindingForm } from './use-finding-form.ts'

interface ExtentChoice {
  readonly label: string
  /** What the amount is; null for an extent without one. */
  readonly amount: { readonly label: string; readonly unit?: string; readonly whole: boolean } | null
}

const count = { label: 'How many', whole: true }

const extentChoices = {
  'not-stated': { label: 'Not stated', amount: null },
  exactly: { label: 'Exactly, counted', amount: count },
  'at-least': { label: 'At least', amount: count },
  about: { label: 'About', amount: count },
  several: { label: 'Several, not counted', amount: null },
  examples: { label: 'Examples of a wider condition', amount: null },
  'whole-facet': { label: 'The whole facet', amount: null },
  length: { label: 'A length', amount: { label: 'Length', unit: 'ft', whole: false } },
  area: { label: 'An area', amount: { label: 'Area', unit: 'sq ft', whole: false } },
} as const satisfies Record<Extent['kind'], ExtentChoice>

const kinds: readonly Extent['kind'][] = [
  'not-stated',
  'exactly',
  'at-least',
  'about',
  'several',
  'examples',
  'whole-facet',
  'length',
  'area',
]

/** How much of it there is, as honestly as it was seen. */
export function ExtentField({ form }: { form: FindingForm }) {
  const { extent, component } = form.draft
  const { amount }: ExtentChoice = extentChoices[extent.kind]
  const set = (next: DraftExtent) => form.change({ extent: next })
  const saved = savedExtent(extent)
  return (
    <div>
      <div className={styles['pair']}>
        <SelectField
          label="How much"
          options={kinds.map((key) => ({ key, label: extentChoices[key].label }))}
          value={extent.kind}
          onChange={(kind) => {
            if (kind !== null) set({ kind, amount: sameAmount(extent.kind, kind) ? extent.amount : null })
          }}
        />
        {amount === null ? (
          <span />
        ) : (
          <NumberField
            label={amount.label}
            {...(amount.unit === undefined ? {} : { unit: amount.unit })}
            value={extent.amount}
            min={amount.whole ? 1 : 0.01}
            onChange={(value) =>
              set({ ...extent, amount: value === null || !amount.whole ? value : Math.round(value) })
            }
            error={faultOf(form, 'extent')}
          />
        )}
      </div>
      {saved === null || component === null || saved.kind === 'not-stated' ? null : (
        <p className={styles['quiet']}>The packet will say: {extentWords(saved, components[component])}.</p>
      )}
    </div>
  )
}

/** A count stays a count when only its honesty changes. */
function sameAmount(before: Extent['kind'], after: Extent['kind']): boolean {
  const isCount = (kind: Extent['kind']) => kind === 'exactly' || kind === 'at-least' || kind === 'about'
  return before === after || (isCount(before) && isCount(after))
}
