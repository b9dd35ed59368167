import { type EarlierWork, earlierWorkSchema } from '../../app/assessment/assessment.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { newLineId } from '../field-tests/new-line-id.ts'
import { FacetField } from '../field-tests/place-fields.tsx'
import { Button } from '../ui/button.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { Panel } from '../ui/panel.tsx'
import { DateField } from './date-field.tsx'
import styles from './stated.module.css'
import { useAssessment } from './use-assessment.ts'

/** Work of the past under a permit, which counts when it is within the months of the rule. */
export function EarlierWorkLines() {
  const { assessment, save } = useAssessment()
  const { earlier } = assessment
  const put = (changed: EarlierWork) =>
    void save({ earlier: earlier.map((work) => (work.id === changed.id ? changed : work)) })
  return (
    <>
      <h3 className={styles['heading']}>Earlier work under a permit</h3>
      {earlier.length === 0 ? <p className={styles['quiet']}>None entered.</p> : null}
      {earlier.map((work, at) => {
        const set = (changed: Partial<EarlierWork>) => put({ ...work, ...changed })
        return (
          <Panel
            key={work.id}
            title={`Earlier work ${at + 1}`}
            actions={
              <Button onPress={() => void save({ earlier: earlier.filter(({ id }) => id !== work.id) })}>
                Remove earlier work {at + 1}
              </Button>
            }
          >
            <div className={styles['fields']}>
              <DateField label="Day" value={work.date} onChange={(date) => set({ date })} />
              <NumberField
                label="Area"
                unit="sq ft"
                min={0}
                value={work.areaSqFt}
                onChange={(areaSqFt) => set({ areaSqFt })}
              />
              <FacetField
                label="A facet of its section"
                value={work.facetId}
                onChange={(facetId) => set({ facetId })}
              />
              <KeptText label="Permit" value={work.permit} onChange={(permit) => set({ permit })} />
              <div className={styles['wide']}>
                <KeptText label="Source" value={work.source} onChange={(source) => set({ source })} />
              </div>
            </div>
          </Panel>
        )
      })}
      <p>
        <Button onPress={() => void save({ earlier: [...earlier, earlierWorkSchema.parse({ id: newLineId() })] })}>
          Add earlier work
        </Button>
      </p>
    </>
  )
}
