import { useJob } from '../state/job-state.tsx'
import { PlacementBasis } from '../photos/placement-basis.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { countWords } from '../ui/quantity-words.ts'
import styles from './plan-workspace.module.css'

interface CamerasNoteProps {
  readonly isCorrected: boolean
  readonly onCorrected: (isCorrected: boolean) => void
}

/** While cameras are shown: how many there are, what was learned of their positions, and whether that is taken off. */
export function CamerasNote({ isCorrected, onCorrected }: CamerasNoteProps) {
  const { photos } = useJob()
  const located = photos.filter(({ file }) => file.position !== null).length
  return (
    <section className={styles['cameras']} aria-label="Cameras">
      <span>
        {located.toLocaleString('en-US')} of {countWords(photos.length, 'photo')} with a position
      </span>
      <Checkbox isSelected={isCorrected} onChange={onCorrected} isDisabled={located === 0}>
        Corrected by what was learned
      </Checkbox>
      <PlacementBasis />
    </section>
  )
}
