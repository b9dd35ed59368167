import { useState } from 'react'
import { lineGroupLabels, lineGroups } from '../../app/scope/scope-line.ts'
import { moneyRuleWords } from '../../app/scope/price-scope.ts'
import { roundingRuleWords } from '../../app/scope/units.ts'
import type { ScopeRow } from '../../app/scope/build-scope.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { LineRow } from './line-row.tsx'
import { OwnLineDialog } from './own-line-dialog.tsx'
import styles from './scope.module.css'
import { TotalRows } from './total-rows.tsx'
import type { ScopeState } from './use-scope.ts'

/** Every line of both bids, edited in place, with what each comes to. */
export function LinesPane(state: ScopeState) {
  const [isAdding, setAdding] = useState(false)
  const { built } = state
  const add = (
    <Button look={built.rows.length === 0 ? 'plain' : 'main'} onPress={() => setAdding(true)}>
      Add a line
    </Button>
  )
  return (
    <>
      {built.rows.length === 0 ? <NoLines>{add}</NoLines> : <Lines {...state} />}
      {built.rows.length === 0 ? null : <p className={styles['adding']}>{add}</p>}
      <Apart apart={built.apart} />
      {built.rows.length === 0 ? null : (
        <p className={styles['quiet']}>
          {roundingRuleWords} {moneyRuleWords(state.priced)}
        </p>
      )}
      {isAdding ? <OwnLineDialog state={state} onClose={() => setAdding(false)} /> : null}
    </>
  )
}

function NoLines({ children }: { children: React.ReactNode }) {
  const { facets } = useJob()
  const goTo = useGoTo()
  return (
    <EmptyState
      title="No line of work follows yet"
      sentence={
        facets.length === 0
          ? 'Draw the roof: the replacement follows from its facets and edges. The repair follows from findings of damage.'
          : 'No facet is chosen for the replacement, and no finding of damage makes a line of the repair.'
      }
    >
      <Button look="main" onPress={() => goTo({ workspace: facets.length === 0 ? 'plan' : 'findings', target: null })}>
        {facets.length === 0 ? 'Draw the roof' : 'Write findings'}
      </Button>
      {children}
    </EmptyState>
  )
}

function Lines(state: ScopeState) {
  const { built, priced } = state
  const [open, setOpen] = useState<string | null>(null)
  const line = (row: ScopeRow) => (
    <LineRow
      key={row.key}
      row={row}
      state={state}
      isOpen={open === row.key}
      onOpen={() => setOpen(open === row.key ? null : row.key)}
    />
  )
  return (
    <div className={styles['scroll']}>
      <table className={styles['lines']} aria-label="Lines of both bids">
        <thead>
          <tr>
            <th scope="col">Work</th>
            <th scope="col">Unit</th>
            <th scope="col">Repair</th>
            <th scope="col">Replacement</th>
            <th scope="col" className={styles['end']}>
              Unit price, {priced.currency}
            </th>
            <th scope="col" className={styles['end']}>
              Repair, {priced.currency}
            </th>
            <th scope="col" className={styles['end']}>
              Replacement, {priced.currency}
            </th>
          </tr>
        </thead>
        {lineGroups.map((group) => {
          const rows = built.rows.filter((row) => (row.repair ?? row.replacement)?.group === group)
          return rows.length === 0 ? null : (
            <tbody key={group}>
              <tr>
                <th scope="rowgroup" colSpan={7} className={styles['group']}>
                  {lineGroupLabels[group]}
                </th>
              </tr>
              {rows.map(line)}
            </tbody>
          )
        })}
        <TotalRows priced={priced} />
      </table>
    </div>
  )
}

function Apart({ apart }: Pick<ScopeState['built'], 'apart'>) {
  const goTo = useGoTo()
  if (apart.length === 0) return null
  return (
    <>
      <h3 className={styles['heading']}>Findings without a line in the repair</h3>
      <ul className={styles['apart']}>
        {[...new Set(apart.map(({ why }) => why))].map((why) => (
          <li key={why}>
            {why}:
            {apart
              .filter((one) => one.why === why)
              .map(({ finding: { id, number } }) => (
                <Button
                  key={id}
                  look="quiet"
                  onPress={() => goTo({ workspace: 'findings', target: { kind: 'finding', id } })}
                >
                  {findingLabel(number)}
                </Button>
              ))}
          </li>
        ))}
      </ul>
    </>
  )
}
