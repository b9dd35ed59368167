import { useState } from 'react'
import type { Pin } from '../../app/evidence/finding.ts'
import { facetUnderPin } from '../plan/facet-at.ts'
import { PinDialog } from '../plan/pin-dialog.tsx'
import { useJob } from '../state/job-state.tsx'
import { useFacetName } from '../state/roof-zones.ts'
import { Button } from '../ui/button.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './finding-form.module.css'
import { FormSection } from './form-section.tsx'
import type { FindingForm } from './use-finding-form.ts'

/** Where it is: facet, pin on the plan, and in words. */
export function PlaceSection({ form }: { form: FindingForm }) {
  const { draft, change } = form
  const { facets } = useJob()
  const nameOf = useFacetName()
  const [placing, setPlacing] = useState(false)
  const under = draft.pin === null ? null : facetUnderPin(facets, draft.pin)
  const disagrees = under !== null && draft.facetId !== null && under.id !== draft.facetId
  return (
    <FormSection id="place" title="Place">
      <div className={styles['pair']}>
        <SelectField
          label="Facet"
          options={facets.map((facet) => ({
            key: facet.id,
            label: `${facet.letter}, ${nameOf(facet)}`,
          }))}
          value={draft.facetId}
          emptyLabel="No facet"
          onChange={(facetId) => change({ facetId })}
        />
        <TextField
          label="In words"
          value={draft.placeWords}
          maxLength={400}
          placeholder="left of the front door, third course"
          onChange={(placeWords) => change({ placeWords })}
        />
      </div>
      <div className={styles['line']}>
        <span>{pinWords(draft.pin)}</span>
        <Button onPress={() => setPlacing(true)} isDisabled={facets.length === 0}>
          {draft.pin === null ? 'Place on the plan…' : 'Move the pin…'}
        </Button>
        {draft.pin === null ? null : (
          <Button look="quiet" onPress={() => change({ pin: null })}>
            Take the pin off
          </Button>
        )}
      </div>
      {facets.length === 0 ? (
        <p className={styles['quiet']}>A pin needs a facet on the roof plan. Draw one there first.</p>
      ) : null}
      {disagrees ? (
        <p className={styles['lack']}>The pin stands on facet {under.letter}. Change the facet or move the pin.</p>
      ) : null}
      {placing ? (
        <PinDialog
          pin={draft.pin}
          onClose={() => setPlacing(false)}
          onPlaced={(pin) => {
            setPlacing(false)
            change({ pin, facetId: draft.facetId ?? facetUnderPin(facets, pin)?.id ?? null })
          }}
        />
      ) : null}
    </FormSection>
  )
}

function pinWords(pin: Pin | null): string {
  switch (pin?.kind) {
    case undefined:
      return 'No pin on the plan yet.'
    case 'point':
      return 'A point on the plan.'
    case 'line':
      return `A line of ${countWords(pin.points.length, 'point')} on the plan.`
    case 'area':
      return `An area with ${countWords(pin.points.length, 'corner')} on the plan.`
  }
}
