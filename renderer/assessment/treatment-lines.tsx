import { treatmentSchema } from '../../app/assessment/assessment.ts'
import { treatmentOf } from '../../app/assessment/repair/repair.ts'
import { isTileDamage } from '../../app/assessment/tile-damage.ts'
import { extentWords } from '../../app/evidence/catalog/extent-words.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { useJob } from '../state/job-state.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './stated.module.css'
import { useAssessment } from './use-assessment.ts'

const words = { replace: 'Replace', reset: 'Set again', leave: 'Leave' } as const
const options = treatmentSchema.options.map((key) => ({ key, label: words[key] }))

/** What is done with the tiles of each finding: what its condition suggests until a person says otherwise. */
export function TreatmentLines() {
  const { findings, facets } = useJob()
  const { assessment, save } = useAssessment()
  const shown = findings.filter(isTileDamage)
  if (shown.length === 0) return null
  return (
    <details>
      <summary>What is done with the tiles of each finding</summary>
      <div className={styles['scroll']}>
        <table className={styles['lines']} aria-label="Work on the tiles of each finding">
          <thead>
            <tr>
              <th scope="col">Finding</th>
              <th scope="col">Facet</th>
              <th scope="col">Condition</th>
              <th scope="col">How much</th>
              <th scope="col">Work</th>
            </tr>
          </thead>
          <tbody>
            {shown.map((finding) => (
              <tr key={finding.id}>
                <td>{findingLabel(finding.number)}</td>
                <td>{facets.find(({ id }) => id === finding.facetId)?.letter ?? '–'}</td>
                <td>{conditions[finding.condition].label}</td>
                <td>{extentWords(finding.extent, { one: 'tile', many: 'tiles' })}</td>
                <td>
                  <SelectField
                    label={`Work on the tiles of ${findingLabel(finding.number)}`}
                    hideLabel
                    options={options}
                    value={treatmentOf(finding, assessment)}
                    onChange={(treatment) => {
                      const others = assessment.treatments.filter(({ findingId }) => findingId !== finding.id)
                      if (treatment !== null)
                        void save({ treatments: [...others, { findingId: finding.id, treatment }] })
                    }}
                  />
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  )
}
