import { memo, useMemo } from 'react'
import type { PhotoTagsPatch } from '../../app/contract/edits.ts'
import { componentChoices, conditionChoices } from '../../app/evidence/catalog/choices.ts'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import { photoRoleSchema } from '../../app/evidence/catalog/keys.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import { SavedText } from '../plan/saved-text.tsx'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { type Option, SelectField } from '../ui/select-field.tsx'
import styles from './photo-details.module.css'
import { type Shared, sharedTags } from './shared-tags.ts'
import { useTagging } from './use-tagging.ts'

const roles = photoRoleSchema.options.map((key) => ({ key, label: photoRoleLabels[key] }))

/** The tags of the selected photos as fields; each change goes to all of them as one edit. */
export function TagFields({ photos }: { photos: readonly Photo[] }) {
  const { facets, job } = useJob()
  const { tag } = useTagging()
  const tags = useMemo(() => sharedTags(photos), [photos])
  const covering = job.sheet.covering.class
  const options = useMemo(
    () => ({
      facets: facets.map(({ id, letter, name }) => ({ key: id, label: name === '' ? letter : `${letter}, ${name}` })),
      components: componentChoices(covering).map(({ key, label }) => ({ key, label })),
      conditions: conditionChoices(covering).map(({ key, label }) => ({ key, label })),
    }),
    [facets, covering],
  )
  const { facetId, role, component, condition, caption } = tags
  return (
    <div className={styles['fields']}>
      <div className={styles['pair']}>
        <FacetSelect options={options.facets} {...choiceOf(facetId)} tag={tag} />
        <RoleSelect options={roles} {...choiceOf(role)} tag={tag} />
      </div>
      <ComponentSelect options={options.components} {...choiceOf(component)} tag={tag} />
      <ConditionSelect options={options.conditions} {...choiceOf(condition)} tag={tag} />
      <SavedText
        label={caption.kind === 'mixed' ? 'Caption (they differ; typing replaces all)' : 'Caption'}
        value={caption.kind === 'same' ? caption.value : ''}
        rows={2}
        maxLength={2000}
        onSave={(text) => void tag({ caption: text })}
      />
      <LeftOut because={tags.leftOutBecause} tag={tag} />
    </div>
  )
}

type Tag = (patch: PhotoTagsPatch) => Promise<void>

interface TagSelectProps<Key extends string> {
  readonly options: readonly Option<Key>[]
  readonly value: Key | null
  /** True when the photos differ: they can still be set alike or cleared. */
  readonly differ: boolean
  readonly tag: Tag
}

const FacetSelect = tagSelect('Facet', 'No facet', (facetId: NonNullable<Photo['tags']['facetId']> | null) => ({
  facetId,
}))
const RoleSelect = tagSelect('Role', 'No role', (role: NonNullable<Photo['tags']['role']> | null) => ({ role }))
const ComponentSelect = tagSelect(
  'Component',
  'No component',
  (component: NonNullable<Photo['tags']['component']> | null) => ({ component }),
)
const ConditionSelect = tagSelect(
  'Condition',
  'No condition',
  (condition: NonNullable<Photo['tags']['condition']> | null) => ({ condition }),
)

/** Makes the field of one tag. It is drawn again only when its own tag differs from the photo before. */
function tagSelect<Key extends string>(
  label: string,
  emptyLabel: string,
  patchOf: (key: Key | null) => PhotoTagsPatch,
) {
  return memo(function TagSelect({ options, value, differ, tag }: TagSelectProps<Key>) {
    return (
      <SelectField
        label={label}
        options={options}
        value={value}
        emptyLabel={differ ? 'They differ' : emptyLabel}
        onChange={(key) => void tag(patchOf(key))}
      />
    )
  })
}

function choiceOf<Key extends string>(tag: Shared<Key | null>): { value: Key | null; differ: boolean } {
  return tag.kind === 'mixed' ? { value: null, differ: true } : { value: tag.value, differ: false }
}

function LeftOut({ because, tag }: { because: Shared<string | null>; tag: Tag }) {
  if (because.kind === 'same' && because.value === null) return null
  return (
    <p className={styles['leftOut']}>
      {because.kind === 'mixed'
        ? 'Some are left out of the packet.'
        : `Left out of the packet: ${because.value ?? ''}.`}
      <Button look="quiet" onPress={() => void tag({ leftOutBecause: null })}>
        Put back in
      </Button>
    </p>
  )
}
