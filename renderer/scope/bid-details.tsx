import { findingLabel } from '../../app/evidence/finding.ts'
import { withLineChange } from '../../app/scope/scope-changes.ts'
import type { ScopeLine } from '../../app/scope/scope-line.ts'
import { bidLabels } from '../../app/scope/scope-record.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { useGoTo } from '../frame/use-go-to.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

/** How one bid's quantity follows, what it comes from, and why it is left out or set by hand. */
export function BidDetails({ line, state }: { line: ScopeLine; state: ScopeState }) {
  const { scope, save } = state
  const label = bidLabels[line.bid]
  const change = (set: Parameters<typeof withLineChange>[2]) =>
    void save({ changes: withLineChange(scope.choices.changes, line, set) })
  return (
    <section className={styles['bid']} aria-label={`${label}: ${line.words}`}>
      <h4>{label}</h4>
      {line.missing === null ? null : <p className={styles['missing']}>▲ {line.missing}</p>}
      <p>{line.working}</p>
      {line.toOrder === null ? null : <p>To order: {line.toOrder}.</p>}
      {line.assumptions.length + line.notes.length === 0 ? null : (
        <ul className={styles['assumed']}>
          {line.assumptions.map((sentence) => (
            <li key={sentence}>Assumed: {sentence}</li>
          ))}
          {line.notes.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
      <Traces line={line} />
      {line.isOwn ? null : (
        <KeptText
          label={`Left out of the ${line.bid} because`}
          value={line.leftOutBecause ?? ''}
          placeholder="In the bid"
          faultOf={(text) =>
            text.trim() === '' || text.trim().length >= 3 ? null : 'Say in a few words why the line is left out.'
          }
          onChange={(text) => change({ leftOutBecause: text.trim() === '' ? null : text.trim() })}
        />
      )}
      {line.byHand === null || line.quantity === null ? null : <ByHandReason line={line} state={state} />}
    </section>
  )
}

function ByHandReason({ line, state }: { line: ScopeLine; state: ScopeState }) {
  const { changes } = state.scope.choices
  const byHand = changes.find(({ bid, key }) => bid === line.bid && key === line.key)?.byHand ?? null
  if (byHand === null) return null
  return (
    <KeptText
      label="Set by hand because"
      value={byHand.why}
      onChange={(why) => void state.save({ changes: withLineChange(changes, line, { byHand: { ...byHand, why } }) })}
    />
  )
}

function Traces({ line }: { line: ScopeLine }) {
  const { findings, facets } = useJob()
  const goTo = useGoTo()
  const named = findings.filter(({ id }) => line.traces.findingIds.includes(id))
  const places = facets.filter(({ id }) => line.traces.facetIds.includes(id))
  if (named.length + places.length === 0) return null
  return (
    <p className={styles['traces']}>
      Comes from{' '}
      {named.map(({ id, number }) => (
        <Button key={id} look="quiet" onPress={() => goTo({ workspace: 'findings', target: { kind: 'finding', id } })}>
          {findingLabel(number)}
        </Button>
      ))}
      {places.map(({ id, letter }) => (
        <Button key={id} look="quiet" onPress={() => goTo({ workspace: 'plan', target: { kind: 'facet', id } })}>
          Facet {letter}
        </Button>
      ))}
    </p>
  )
}
