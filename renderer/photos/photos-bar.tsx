import { memo } from 'react'
import { photoRoleSchema } from '../../app/evidence/catalog/keys.ts'
import { photoRoleLabels } from '../../app/evidence/catalog/labels.ts'
import { useJob } from '../state/job-state.tsx'
import { useFacetName } from '../state/roof-zones.ts'
import { IconButton } from '../ui/icon-button.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { SelectField } from '../ui/select-field.tsx'
import type { PhotoFilter } from './photo-filter.ts'
import type { PhotoGrouping } from './photo-groups.ts'
import type { PhotoSort } from './photo-order.ts'
import styles from './photos-workspace.module.css'

/** How the contact sheet is arranged. */
export interface SheetLook {
  readonly sort: PhotoSort
  readonly grouping: PhotoGrouping
  /** A longer pause than this parts two groups, seconds. */
  readonly gapS: number
  readonly tilePx: number
}

/** Widths of a picture on the sheet, pixels. */
export const tileSizes = [120, 168, 232, 320] as const

const sorts = [
  { key: 'time', label: 'By time' },
  { key: 'number', label: 'By number' },
] as const
const groupings = [
  { key: 'none', label: 'Ungrouped' },
  { key: 'facet', label: 'Group by facet' },
  { key: 'gap', label: 'Group by pause' },
] as const
const only = [
  { key: 'all', label: 'All photos' },
  { key: 'in-packet', label: 'In the packet' },
  { key: 'untagged', label: 'Untagged' },
  { key: 'left-out', label: 'Left out' },
  { key: 'with-problems', label: 'With problems' },
  { key: 'without-time', label: 'Without a time' },
] as const

interface PhotosBarProps {
  readonly look: SheetLook
  readonly onLook: (look: SheetLook) => void
  readonly filter: PhotoFilter
  readonly onFilter: (filter: PhotoFilter) => void
}

/** Arranges and narrows the contact sheet. */
export const PhotosBar = memo(function PhotosBar({ look, onLook, filter, onFilter }: PhotosBarProps) {
  const at = tileSizes.findIndex((size) => size >= look.tilePx)
  const resize = (step: number) => onLook({ ...look, tilePx: tileSizes[at + step] ?? look.tilePx })
  return (
    <div className={styles['bar']}>
      <SegmentedChoice
        label="Order"
        hideLabel
        options={sorts}
        value={look.sort}
        onChange={(sort) => onLook({ ...look, sort })}
      />
      <SelectField
        label="Grouping"
        hideLabel
        options={groupings}
        value={look.grouping}
        onChange={(grouping) => {
          if (grouping !== null) onLook({ ...look, grouping })
        }}
      />
      {look.grouping === 'gap' ? (
        <div className={styles['pause']}>
          <NumberField
            label="Pause that parts groups"
            hideLabel
            unit="s"
            min={1}
            max={86_400}
            value={look.gapS}
            onChange={(gapS) => gapS !== null && onLook({ ...look, gapS })}
          />
        </div>
      ) : null}
      <FilterFields filter={filter} onFilter={onFilter} />
      <span className={styles['gap']} />
      <IconButton icon="minus" label="Smaller pictures" isDisabled={at <= 0} onPress={() => resize(-1)} />
      <IconButton
        icon="plus"
        label="Larger pictures"
        isDisabled={at >= tileSizes.length - 1}
        onPress={() => resize(1)}
      />
    </div>
  )
})

function FilterFields({ filter, onFilter }: Pick<PhotosBarProps, 'filter' | 'onFilter'>) {
  const { facets } = useJob()
  const nameOf = useFacetName()
  return (
    <>
      <SelectField
        label="Which photos"
        hideLabel
        options={only}
        value={filter.only}
        onChange={(key) => {
          if (key !== null) onFilter({ ...filter, only: key })
        }}
      />
      <SelectField
        label="Facet"
        hideLabel
        options={[
          { key: 'none' as const, label: 'No facet' },
          ...facets.map((facet) => ({ key: facet.id, label: `Facet ${facet.letter}, ${nameOf(facet)}` })),
        ]}
        value={filter.facet === 'any' ? null : filter.facet}
        emptyLabel="Any facet"
        onChange={(facet) => onFilter({ ...filter, facet: facet ?? 'any' })}
      />
      <SelectField
        label="Role"
        hideLabel
        options={[
          { key: 'none' as const, label: 'No role' },
          ...photoRoleSchema.options.map((key) => ({ key, label: photoRoleLabels[key] })),
        ]}
        value={filter.role === 'any' ? null : filter.role}
        emptyLabel="Any role"
        onChange={(role) => onFilter({ ...filter, role: role ?? 'any' })}
      />
    </>
  )
}
