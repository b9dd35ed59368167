import type { PlanImageId } from '../../../app/job/ids.ts'
import type { PlanImage } from '../../../app/roof/plan-image.ts'
import { useEdit, useJob } from '../../state/job-state.tsx'
import { SelectField } from '../../ui/select-field.tsx'
import styles from './underlay.module.css'

interface ImageChoiceProps {
  /** Null while another one is added. */
  readonly chosen: PlanImage | null
  readonly onChoose: (id: PlanImageId | null) => void
}

/** Which of the images under the plan is worked on; the one chosen is the one shown. */
export function ImageChoice({ chosen, onChoose }: ImageChoiceProps) {
  const { planImages } = useJob()
  const edit = useEdit()
  if (planImages.length < (chosen === null ? 1 : 2)) return null
  const inOrder = planImages.toSorted((a, b) => a.label.localeCompare(b.label))
  function choose(key: string | null) {
    const image = planImages.find(({ id }) => id === key)
    onChoose(image?.id ?? null)
    if (image !== undefined && !image.isShown) void edit('plan-images.save', { id: image.id, set: { isShown: true } })
  }
  return (
    <div className={styles['fields']}>
      <SelectField
        label="Image"
        options={inOrder.map(({ id, label }) => ({ key: id, label }))}
        value={chosen?.id ?? null}
        emptyLabel={chosen === null ? 'None of these' : 'Add another image'}
        onChange={choose}
      />
    </div>
  )
}
