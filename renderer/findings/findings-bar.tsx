import { findingKindLabels } from '../../app/evidence/catalog/labels.ts'
import { findingKindSchema } from '../../app/evidence/finding.ts'
import { useJob } from '../state/job-state.tsx'
import { useFacetName } from '../state/roof-zones.ts'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import type { FindingFilter } from './finding-filter.ts'
import styles from './findings-workspace.module.css'

interface FindingsBarProps {
  readonly filter: FindingFilter
  readonly onFilter: (filter: FindingFilter) => void
  readonly selectedPhotos: number
  readonly onNew: () => void
}

/** Starts a finding and narrows the table. */
export function FindingsBar({ filter, onFilter, selectedPhotos, onNew }: FindingsBarProps) {
  const { facets } = useJob()
  const nameOf = useFacetName()
  return (
    <div className={styles['bar']}>
      <Button look="main" onPress={onNew}>
        {selectedPhotos === 0 ? 'New finding' : `New finding from ${countWords(selectedPhotos, 'photo')}`}{' '}
        <KeyHint keys="N" />
      </Button>
      <span className={styles['gap']} />
      <TextField
        label="Words to find"
        hideLabel
        placeholder="Find in the findings"
        value={filter.words}
        onChange={(words) => onFilter({ ...filter, words })}
      />
      <SelectField
        label="Kind"
        hideLabel
        options={findingKindSchema.options.map((key) => ({ key, label: findingKindLabels[key] }))}
        value={filter.kind}
        emptyLabel="Every kind"
        onChange={(kind) => onFilter({ ...filter, kind })}
      />
      <SelectField
        label="Facet"
        hideLabel
        options={facets.map((facet) => ({ key: facet.id, label: `Facet ${facet.letter}, ${nameOf(facet)}` }))}
        value={filter.facet}
        emptyLabel="Every facet"
        onChange={(facet) => onFilter({ ...filter, facet })}
      />
      <Checkbox isSelected={filter.onlyLacking} onChange={(onlyLacking) => onFilter({ ...filter, onlyLacking })}>
        Lacking
      </Checkbox>
    </div>
  )
}
