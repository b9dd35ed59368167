import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { crackPathLabels, findingKindLabels } from '../../app/evidence/catalog/labels.ts'
import { crackPathSchema, findingKindSchema } from '../../app/evidence/finding.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { DegreeField } from './degree-field.tsx'
import { ExtentField } from './extent-field.tsx'
import type { FindingDraft } from './finding-draft.ts'
import { FormSection } from './form-section.tsx'
import { GuardedText } from './guarded-text.tsx'
import { LookedAtFields } from './looked-at-fields.tsx'
import type { FindingForm } from './use-finding-form.ts'
import { WhatFields } from './what-fields.tsx'

const kinds = findingKindSchema.options.map((key) => ({ key, label: findingKindLabels[key] }))
const crackPaths = crackPathSchema.options.map((key) => ({ key, label: crackPathLabels[key] }))

/** What was seen, in the catalog's words and the inspector's own. */
export function ObservedSection({ form }: { form: FindingForm }) {
  const { draft, change } = form
  const condition = draft.condition === null ? null : conditions[draft.condition]
  return (
    <FormSection id="observed" title="Observed">
      <SegmentedChoice
        label="What sort of statement"
        options={kinds}
        value={draft.kind}
        onChange={(kind) => change({ kind })}
      />
      <WhatFields form={form} />
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
  if (crackPath !== null || condition === 'other') return true
  if (condition === null) return false
  return conditions[condition].measures.some((measure) => measure === 'crack-length-in' || measure === 'crack-width-in')
}
