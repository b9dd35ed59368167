import { useMemo } from 'react'
import { componentChoices, conditionChoices } from '../../app/evidence/catalog/choices.ts'
import { components } from '../../app/evidence/catalog/components.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import type { ComponentKey, ConditionKey } from '../../app/evidence/catalog/keys.ts'
import type { CoveringClass } from '../../app/job/sheet.ts'
import { useJob } from '../state/job-state.tsx'
import { type Option, SelectField } from '../ui/select-field.tsx'
import styles from './finding-form.module.css'
import { faultOf, type FindingForm } from './use-finding-form.ts'

/** Component and condition, as the catalog offers them for the roof's covering, and what the condition means. */
export function WhatFields({ form }: { form: FindingForm }) {
  const { draft, change } = form
  const covering = useJob().job.sheet.covering.class
  const componentOptions = useMemo(
    () => componentChoices(covering).map(({ key, label }) => ({ key, label })),
    [covering],
  )
  const conditionOptions = useMemo(() => sortedConditions(covering, draft.component), [covering, draft.component])
  const condition = draft.condition === null ? null : conditions[draft.condition]
  return (
    <>
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
    </>
  )
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
