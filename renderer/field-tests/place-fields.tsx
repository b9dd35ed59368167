import type { FacetId } from '../../app/job/ids.ts'
import { roofAreaLabels, roofAreas, type RoofArea } from '../../app/fieldtest/roof-area.ts'
import { useJob } from '../state/job-state.tsx'
import { SelectField } from '../ui/select-field.tsx'

interface FacetFieldProps {
  readonly label?: string
  readonly hideLabel?: boolean
  readonly value: FacetId | null
  readonly onChange: (facetId: FacetId | null) => void
}

/** One of the plan's facets, by letter. */
export function FacetField({ label = 'Facet', hideLabel = false, value, onChange }: FacetFieldProps) {
  const { facets } = useJob()
  return (
    <SelectField
      label={label}
      hideLabel={hideLabel}
      emptyLabel="None"
      options={facets.map(({ id, letter }) => ({ key: id, label: letter }))}
      value={value}
      onChange={(key) => onChange(facets.find(({ id }) => id === key)?.id ?? null)}
    />
  )
}

interface AreaFieldProps {
  readonly label?: string
  readonly hideLabel?: boolean
  readonly value: RoofArea | null
  readonly onChange: (area: RoofArea | null) => void
}

/** Field, edge, corner, or ridge and hip, as a person saw it. */
export function AreaField({ label = 'Area', hideLabel = false, value, onChange }: AreaFieldProps) {
  return (
    <SelectField
      label={label}
      hideLabel={hideLabel}
      emptyLabel="Not stated"
      options={roofAreas.map((key) => ({ key, label: roofAreaLabels[key] }))}
      value={value}
      onChange={onChange}
    />
  )
}
