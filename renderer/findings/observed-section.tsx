import { useMemo } from 'react'
import { componentChoices, conditionChoices } from '../../app/evidence/catalog/choices.ts'
import { components } from '../../app/evidence/catalog/components.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import type { ComponentKey, ConditionKey } from '../../app/evidence/catalog/keys.ts'
import { crackPathLabels, findingKindLabels } from '../../app/evidence/catalog/labels.ts'
import { crackPathSchema, findingKindSchema } from '../../app/evidence/finding.ts'
import type { CoveringClass } from '../../app/job/sheet.ts'
import { useJob } from '../state/job-state.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { type Option, SelectField } from '../ui/select-field.tsx'
import { DegreeField } from './degree-field.tsx'
import { ExtentField } from './extent-field.tsx'
import styles from './finding-form.module.css'
import type { FindingDraft } from './finding-draft.ts'
import { FormSection } from './form-section.tsx'
import { GuardedText } from './guarded-text.tsx'
import { LookedAtFields } from './looked-at-fields.tsx'
import { faultOf, type FindingForm } from './use-finding-form.ts'

const kinds = findingKindSchema.options.map((key) => ({ key, label: findingKindLabels[key] }))
const crackPaths = crackPathSchema.options.map((key) => ({ key, label: crackPathLabels[key] }))

/** What was seen, in the catalog's words and the inspector's own. */
export function ObservedSection({ form }: { form: FindingForm }) {
  const { draft, change } = form
  const covering = useJob().job.sheet.covering.class
  const componentOptions = useMemo(
    () => componentChoices(covering).map(({ key, label }) => ({ key, label })),
    [covering],
  )
  const conditionOptions = useMemo(() => sortedConditions(covering, draft.component), [covering, draft.component])
  const condition = draft.condition === null ? null : conditions[draft.condition]
  return (
    <FormSection id="observed" title="Observed">
      <SegmentedChoice
        label="What sort of statement"
        options={kinds}
        value={draft.kind}
        onChange={(kind) => change({ kind })}
      />
      <div className={styles['pair']}>
        <SelectField
          label="Component"
          options={withPresent(componentOptions, draft.component, (key) => components[key].label)}
          value={draft.component}
          onChange={(component) => change({ component })}
          error={faultOf(form, 'component')}
        />
        <SelectField
          label="Condition"
          options={withPresent(conditionOptions, draft.condition, (key) => conditions[key].label)}
          value={draft.condition}
          onChange={(next) => change({ condition: next })}
          error={faultOf(form, 'condition')}
        />
      </div>
      {condition === null ? null : (
        <p className={styles['quiet']}>
          {condition.definition}
          {condition.lookFor.length === 0 ? '' : ` Look for: ${condition.lookFor.join('; ')}.`}
        </p>
      )}
      <ExtentField form={form} />
      <DegreeField draft={draft} change={change} words={condition?.degrees ?? []} />
      <GuardedText
        label="Observation, in your words"
        value={draft.observation}
        onChange={(observation) => change({ observation })}
        rows={4}
        maxLength={8000}
        placeholder="What can be seen, without saying why"
      />
      {asksForCrack(draft) ? (
        <SelectField
          label="The crack runs"
          options={crackPaths}
          value={draft.crackPath}
          emptyLabel="Not stated"
          onChange={(crackPath) => change({ crackPath })}
        />
      ) : null}
      <LookedAtFields draft={draft} change={change} asked={condition?.lookedAt ?? []} />
    </FormSection>
  )
}

function asksForCrack({ condition, crackPath }: FindingDraft): boolean {
  if (crackPath !== null || condition === null || condition === 'other') return true
  return conditions[condition].measures.some((measure) => measure === 'crack-length-in' || measure === 'crack-width-in')
}

/** Conditions usual on the component first, under their own heading. */
function sortedConditions(covering: CoveringClass, component: ComponentKey | null): readonly Option<ConditionKey>[] {
  const offered = conditionChoices(covering).map(({ key, label }) => ({ key, label }))
  if (component === null) return offered
  const usual = (key: ConditionKey) => {
    const on = conditions[key].components
    return on === 'any' || on.includes(component)
  }
  const { label } = components[component]
  return [
    ...offered
      .filter(({ key }) => usual(key))
      .map((option) => ({ ...option, section: `Usual on: ${label.toLowerCase()}` })),
    ...offered.filter(({ key }) => !usual(key)).map((option) => ({ ...option, section: 'Other conditions' })),
  ]
}

/** A record may hold a key of another covering: it is offered as well, so that it does not vanish. */
function withPresent<Key extends string>(
  options: readonly Option<Key>[],
  present: Key | null,
  labelOf: (key: Key) => string,
): readonly Option<Key>[] {
  if (present === null || options.some(({ key }) => key === present)) return options
  return [...options, { key: present, label: labelOf(present), section: 'On record' }]
}
