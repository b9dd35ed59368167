import { useState } from 'react'
import { Checkbox } from '../ui/checkbox.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { BasisPane } from './basis-pane.tsx'
import { LinesPane } from './lines-pane.tsx'
import { PricesPane } from './prices-pane.tsx'
import styles from './scope.module.css'
import { useScope } from './use-scope.ts'

const panes = { lines: LinesPane, prices: PricesPane, basis: BasisPane } as const
type Pane = keyof typeof panes

const choices = [
  { key: 'lines', label: 'Lines of both bids' },
  { key: 'prices', label: 'Price book' },
  { key: 'basis', label: 'What it rests on' },
] as const satisfies readonly { readonly key: Pane; readonly label: string }[]

/** Scope of work by rule and cost by the contractor's own prices: repair and replacement side by side. */
export function ScopeWorkspace() {
  const state = useScope()
  const [shown, setShown] = useState<Pane>('lines')
  const Shown = panes[shown]
  return (
    <section className={styles['workspace']} aria-label="Scope and cost">
      <div className={styles['bar']}>
        <SegmentedChoice label="Part of scope and cost" hideLabel options={choices} value={shown} onChange={setShown} />
        <span className={styles['gap']} />
        <Checkbox isSelected={state.scope.choices.isOffered} onChange={(isOffered) => void state.save({ isOffered })}>
          Put the scope in the packet
        </Checkbox>
      </div>
      <p className={styles['caution']} role="note">
        ▲ The contractor’s own bid; not a claim amount. Prices go only to recipients who get the cost: the packet asks.
      </p>
      <div className={styles['pane']}>
        <Shown {...state} />
      </div>
    </section>
  )
}
