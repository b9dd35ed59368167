import type { FacetId } from '../../app/job/ids.ts'
import { bidLabels, bids, type Bid } from '../../app/scope/scope-record.ts'
import { typedDecimal } from '../../app/scope/typed-decimal.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { useJob } from '../state/job-state.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { Panel } from '../ui/panel.tsx'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { PercentagesPanel } from './percentages-panel.tsx'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

/** What the bids rest on: their facets, what a person states of the covering, currency and percentages. */
export function BasisPane(state: ScopeState) {
  return (
    <div className={styles['panels']}>
      {bids.map((bid) => (
        <Panel key={bid} title={`Facets of the ${bid}`}>
          <FacetChoice bid={bid} state={state} />
        </Panel>
      ))}
      <Panel title="Stated of the covering">
        <StatedFields {...state} />
      </Panel>
      <Panel title="Currency and percentages">
        <PercentagesPanel {...state} />
      </Panel>
    </div>
  )
}

function FacetChoice({ bid, state }: { bid: Bid; state: ScopeState }) {
  const { facets } = useJob()
  const chosen = state.scope.choices.facets[bid]
  const isIn = (id: FacetId) => chosen === null || chosen.includes(id)
  const all = facets.every(({ id }) => isIn(id))
  const put = (ids: readonly FacetId[] | null) =>
    void state.save({ facets: { ...state.scope.choices.facets, [bid]: ids === null ? null : [...ids] } })
  if (facets.length === 0) return <p className={styles['quiet']}>The plan has no facet yet.</p>
  const toggle = (id: FacetId, isOn: boolean) => {
    const ids = facets.map((facet) => facet.id).filter((one) => (one === id ? isOn : isIn(one)))
    put(ids.length === facets.length ? null : ids)
  }
  return (
    <div className={styles['facets']} role="group" aria-label={`${bidLabels[bid]}: facets`}>
      <Checkbox
        isSelected={all}
        isIndeterminate={!all && facets.some(({ id }) => isIn(id))}
        onChange={(isOn) => put(isOn ? null : [])}
      >
        All
      </Checkbox>
      {facets.map(({ id, letter }) => (
        <Checkbox key={id} isSelected={isIn(id)} onChange={(isOn) => toggle(id, isOn)}>
          {letter}
        </Checkbox>
      ))}
    </div>
  )
}

function StatedFields({ scope, save }: ScopeState) {
  const { stated } = scope.choices
  const set = (changed: Partial<typeof stated>) => void save({ stated: { ...stated, ...changed } })
  const weight = (text: string) => {
    const typed = typedDecimal(text)
    if (typed.ok) set({ weightLbPerSquare: typed.text })
  }
  return (
    <div className={styles['form']}>
      <KeptText
        label="Weight as laid, pounds a square"
        value={stated.weightLbPerSquare ?? ''}
        placeholder="Usual, labelled as assumed"
        faultOf={(text) => {
          const typed = typedDecimal(text)
          return typed.ok ? null : typed.fault
        }}
        onChange={weight}
      />
      <KeptText
        label="Where the weight comes from"
        value={stated.weightSource}
        onChange={(weightSource) => set({ weightSource })}
      />
      <NumberField
        label="Fasteners for each piece"
        value={stated.fastenersPerPiece}
        min={1}
        max={20}
        onChange={(count) => set({ fastenersPerPiece: count === null ? null : Math.round(count) })}
        help="Empty: no line of fasteners."
      />
      <SegmentedChoice
        label="Battens"
        options={[
          { key: 'not-stated', label: 'Not stated' },
          { key: 'laid', label: 'Laid' },
          { key: 'none', label: 'None' },
        ]}
        value={stated.battens}
        onChange={(battens) => set({ battens })}
      />
      <SegmentedChoice
        label="Set in"
        options={[
          { key: 'by-sheet', label: 'By the job sheet' },
          { key: 'mortar', label: 'Mortar' },
          { key: 'foam', label: 'Foam' },
          { key: 'neither', label: 'Neither' },
        ]}
        value={stated.setting}
        onChange={(setting) => set({ setting })}
      />
    </div>
  )
}
