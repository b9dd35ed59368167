import { useState } from 'react'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import styles from './assessment.module.css'
import { PatternPanel } from './pattern-panel.tsx'
import { RepairPanel } from './repair-panel.tsx'
import { TalliesPanel } from './tallies-panel.tsx'
import { WorkSharePanel } from './work-share-panel.tsx'

const panels = { tallies: TalliesPanel, pattern: PatternPanel, share: WorkSharePanel, repair: RepairPanel } as const
type Part = keyof typeof panels

const choices = [
  { key: 'tallies', label: 'Tallies' },
  { key: 'pattern', label: 'Where findings lie' },
  { key: 'share', label: 'Share of work' },
  { key: 'repair', label: 'Repair' },
] as const satisfies readonly { readonly key: Part; readonly label: string }[]

/** Assessment: what the findings add up to, each figure with its working. */
export function AssessmentWorkspace() {
  const [shown, setShown] = useState<Part>('tallies')
  const Shown = panels[shown]
  return (
    <div className={styles['workspace']}>
      <div className={styles['bar']}>
        <SegmentedChoice label="Part of the assessment" hideLabel options={choices} value={shown} onChange={setShown} />
      </div>
      <p className={styles['caution']} role="note">
        ▲ Figures follow from findings, plan and what people state. They are not an opinion on cause or on insurance,
        and no engineering.
      </p>
      <div className={styles['pane']}>
        <Shown />
      </div>
    </div>
  )
}
