import { useState } from 'react'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { ChecksPane } from './checks-pane.tsx'
import { CriterionPane } from './criterion-pane.tsx'
import styles from './field-tests.module.css'
import { OthersPane } from './others-pane.tsx'
import { ReadingsPane } from './readings-pane.tsx'
import { SquaresPane } from './squares-pane.tsx'

const panes = {
  readings: ReadingsPane,
  checks: ChecksPane,
  squares: SquaresPane,
  others: OthersPane,
  criterion: CriterionPane,
} as const
type Pane = keyof typeof panes

const choices = [
  { key: 'readings', label: 'Readings' },
  { key: 'checks', label: 'Hand checks' },
  { key: 'squares', label: 'Test squares' },
  { key: 'others', label: 'Other tests' },
  { key: 'criterion', label: 'Criterion and instruments' },
] as const satisfies readonly { readonly key: Pane; readonly label: string }[]

/** Field tests: lift readings, tiles checked by hand, test squares, other tests, and what they are held against. */
export function FieldTestsWorkspace() {
  const [shown, setShown] = useState<Pane>('readings')
  const Shown = panes[shown]
  return (
    <div className={styles['workspace']}>
      <div className={styles['bar']}>
        <SegmentedChoice
          label="Part of the field tests"
          hideLabel
          options={choices}
          value={shown}
          onChange={setShown}
        />
      </div>
      <p className={styles['caution']} role="note">
        ▲ Pulling can break a tile and changes what the next person finds: photograph first. Work on a roof needs fall
        protection; stay off one that is wet or in wind.
      </p>
      <div className={styles['pane']}>
        <Shown />
      </div>
    </div>
  )
}
