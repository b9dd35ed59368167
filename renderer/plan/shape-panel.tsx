import type { Facet } from '../../app/roof/facet.ts'
import { Button } from '../ui/button.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import styles from './plan-panels.module.css'
import type { Shaping } from './use-shape-tool.tsx'

interface ShapePanelProps {
  readonly facet: Facet
  readonly shaping: Shaping
  readonly onDone: () => void
}

/** What can be done with the corners of the facet under edit. */
export function ShapePanel({ facet, shaping, onDone }: ShapePanelProps) {
  const { picked, refusal, detached } = shaping
  const canRemove = picked !== null && facet.outline.length > 3
  return (
    <section className={styles['tool']} aria-label={`Corners of facet ${facet.letter}`}>
      <p className={styles['lead']}>Corners of facet {facet.letter}</p>
      <p className={styles['quiet']}>
        Drag a square to move a corner, a circle to add one, the cross to move the facet; an arrow says over which side
        water leaves.
      </p>
      <Checkbox isSelected={detached} onChange={shaping.setDetached}>
        Detach from neighbouring facets
      </Checkbox>
      {refusal === null ? null : (
        <p className={styles['refusal']} role="alert">
          {refusal}
        </p>
      )}
      <div className={styles['line']}>
        <Button look="main" onPress={onDone}>
          Done <KeyHint keys="Escape" />
        </Button>
        <Button onPress={shaping.removePicked} isDisabled={!canRemove}>
          {picked === null ? 'Remove corner' : `Remove corner ${picked + 1}`} <KeyHint keys="Delete" />
        </Button>
      </div>
    </section>
  )
}
