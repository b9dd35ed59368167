import { useMemo } from 'react'
import { componentChoices, conditionChoices } from '../../app/evidence/catalog/choices.ts'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import { photoRoleSchema } from '../../app/evidence/catalog/keys.ts'
import { SavedText } from '../plan/saved-text.tsx'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './photo-details.module.css'
import { type Shared, sharedTags } from './shared-tags.ts'
import { useTagging } from './use-tagging.ts'

const roles = photoRoleSchema.options.map((key) => ({ key, label: photoRoleLabels[key] }))

/** The tags of the selected photos as fields; each change goes to all of them as one edit. */
export function TagFields() {
  const { facets, job } = useJob()
  const { photos, tag } = useTagging()
  const tags = useMemo(() => sharedTags(photos), [photos])
  const covering = job.sheet.covering.class
  const { caption, leftOutBecause } = tags
  return (
    <div className={styles['fields']}>
      <div className={styles['pair']}>
        <SelectField
          label="Facet"
          options={facets.map((facet) => ({
            key: facet.id,
            label: facet.name === '' ? facet.letter : `${facet.letter}, ${facet.name}`,
          }))}
          {...choiceOf(tags.facetId, 'No facet')}
          onChange={(facetId) => void tag({ facetId })}
        />
        <SelectField
          label="Role"
          options={roles}
          {...choiceOf(tags.role, 'No role')}
          onChange={(role) => void tag({ role })}
        />
      </div>
      <SelectField
        label="Component"
        options={componentChoices(covering).map(({ key, label }) => ({ key, label }))}
        {...choiceOf(tags.component, 'No component')}
        onChange={(component) => void tag({ component })}
      />
      <SelectField
        label="Condition"
        options={conditionChoices(covering).map(({ key, label }) => ({ key, label }))}
        {...choiceOf(tags.condition, 'No condition')}
        onChange={(condition) => void tag({ condition })}
      />
      <SavedText
        label={caption.kind === 'mixed' ? 'Caption (they differ; typing replaces all)' : 'Caption'}
        value={caption.kind === 'same' ? caption.value : ''}
        rows={2}
        maxLength={2000}
        onSave={(text) => void tag({ caption: text })}
      />
      {leftOutBecause.kind === 'mixed' || leftOutBecause.value !== null ? (
        <p className={styles['leftOut']}>
          {leftOutBecause.kind === 'mixed'
            ? 'Some are left out of the packet.'
            : `Left out of the packet: ${leftOutBecause.value ?? ''}.`}
          <Button look="quiet" onPress={() => void tag({ leftOutBecause: null })}>
            Put back in
          </Button>
        </p>
      ) : null}
    </div>
  )
}

/** A shared tag as the value of a field: photos that differ show so, and can still be set alike or cleared. */
function choiceOf<Key extends string>(
  tag: Shared<Key | null>,
  emptyLabel: string,
): { value: Key | null; emptyLabel: string } {
  return tag.kind === 'mixed' ? { value: null, emptyLabel: 'They differ' } : { value: tag.value, emptyLabel }
}
