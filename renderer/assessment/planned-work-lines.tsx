import type { PlannedWork } from '../../app/assessment/assessment.ts'
import { groupedNumber } from '../../app/evidence/catalog/grouped-number.ts'
import { facetGeometry } from '../../app/roof/facet-geometry.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { useJob } from '../state/job-state.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './stated.module.css'
import { useAssessment } from './use-assessment.ts'

const extents = [
  { key: 'none', label: 'None' },
  { key: 'whole', label: 'The whole facet' },
  { key: 'area', label: 'An area' },
  { key: 'tiles', label: 'The tiles of the repair' },
] as const

/** How much of each facet the work takes. */
export function PlannedWorkLines() {
  const { facets } = useJob()
  const { assessment, save } = useAssessment()
  const { planned } = assessment
  function put(facet: Facet, extent: PlannedWork['extent'] | null) {
    const others = planned.filter(({ facetId }) => facetId !== facet.id)
    void save({ planned: extent === null ? others : [...others, { facetId: facet.id, extent }] })
  }
  return (
    <>
      <h3 className={styles['heading']}>Work on each facet</h3>
      <div className={styles['scroll']}>
        <table className={styles['lines']} aria-label="Work on each facet">
          <thead>
            <tr>
              <th scope="col">Facet</th>
              <th scope="col" className={styles['figure']}>
                Sloped area, sq ft
              </th>
              <th scope="col">Work</th>
              <th scope="col">Area of work</th>
            </tr>
          </thead>
          <tbody>
            {facets.map((facet) => (
              <PlannedRow
                key={facet.id}
                facet={facet}
                extent={planned.find(({ facetId }) => facetId === facet.id)?.extent ?? null}
                onPut={(extent) => put(facet, extent)}
              />
            ))}
          </tbody>
        </table>
      </div>
    </>
  )
}

interface PlannedRowProps {
  readonly facet: Facet
  readonly extent: PlannedWork['extent'] | null
  readonly onPut: (extent: PlannedWork['extent'] | null) => void
}

function PlannedRow({ facet, extent, onPut }: PlannedRowProps) {
  return (
    <tr>
      <td>{facet.letter}</td>
      <td className={styles['figure']}>{groupedNumber(facetGeometry(facet).areaSqFt, 1)}</td>
      <td>
        <SelectField
          label={`Work on facet ${facet.letter}`}
          hideLabel
          emptyLabel="Not stated"
          options={extents}
          value={extent?.kind ?? null}
          onChange={(kind) => onPut(extentOf(kind, facet))}
        />
      </td>
      <td>
        {extent?.kind === 'area' ? (
          <NumberField
            label={`Area of work on facet ${facet.letter}`}
            hideLabel
            unit="sq ft"
            min={0}
            value={extent.areaSqFt}
            onChange={(areaSqFt) => onPut(areaSqFt === null ? null : { kind: 'area', areaSqFt })}
          />
        ) : null}
      </td>
    </tr>
  )
}

function extentOf(kind: (typeof extents)[number]['key'] | null, facet: Facet): PlannedWork['extent'] | null {
  if (kind === null) return null
  // An area begins as the whole facet's, which is what a person takes from.
  return kind === 'area' ? { kind, areaSqFt: Math.round(facetGeometry(facet).areaSqFt * 10) / 10 } : { kind }
}
