import { memo } from 'react'
import { facetTallies, type FacetTally } from '../../app/assessment/facet-tallies.ts'
import { pieceSizeOf } from '../../app/assessment/piece-size-of.ts'
import { affectedWords, apartWords, TALLY_CAUTION, tallyWorking } from '../../app/assessment/tally-words.ts'
import { findingKindLabels } from '../../app/evidence/catalog/labels.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { whatWords } from '../../app/packet/finding-words.ts'
import type { Facet } from '../../app/roof/facet.ts'
import type { PieceSize } from '../../app/roof/quantities.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { ShowWorking } from '../field-tests/show-working.tsx'
import { useEdit, useJob } from '../state/job-state.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { NumberField } from '../ui/number-field.tsx'
import styles from './assessment.module.css'

/** How much of each facet was looked at, tiles affected, and what was counted by component and condition. */
export function TalliesPanel() {
  const { facets, findings, job } = useJob()
  const piece = pieceSizeOf(job.sheet.covering)
  const tallies = facetTallies({ facets, findings, piece })
  if (tallies.length === 0) {
    return (
      <EmptyState
        title="Nothing to add up yet"
        sentence="Draw the roof plan and write findings with a count. They are added up here by facet, component and condition."
      />
    )
  }
  return (
    <>
      <h2 className={styles['heading']}>By facet</h2>
      {piece === null ? (
        <p className={styles['quiet']}>
          For the share of tiles, enter exposure and cover width of the tile on the job sheet.
        </p>
      ) : null}
      <div className={styles['scroll']}>
        <table className={styles['lines']} aria-label="Facets">
          <thead>
            <tr>
              {['Facet', 'Looked at', 'Why not all of it', 'Tiles with damage, of the whole facet'].map((title) => (
                <th key={title} scope="col">
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {tallies.map((tally) => (
              <FacetLine key={tally.facet?.id ?? 'none'} tally={tally} piece={piece} />
            ))}
          </tbody>
        </table>
      </div>
      <Conditions tallies={tallies} />
    </>
  )
}

function FacetLine({ tally, piece }: { tally: FacetTally; piece: PieceSize | null }) {
  const { facet, affected } = tally
  const working = tallyWorking(tally, piece)
  return (
    <tr>
      <td>{facet === null ? 'No facet' : facet.letter}</td>
      {facet === null ? (
        <>
          <td>-</td>
          <td>-</td>
        </>
      ) : (
        <LookedAt id={facet.id} letter={facet.letter} {...facet.inspected} />
      )}
      <td>
        {affectedWords(affected)}
        {working.length === 0 ? null : <ShowWorking lines={working} />}
      </td>
    </tr>
  )
}

interface LookedAtProps {
  readonly id: Facet['id']
  readonly letter: string
  readonly percent: number | null
  readonly note: string
}

/** Every edit brings all facets anew; fields of those that say the same are not drawn again. */
const LookedAt = memo(function LookedAt({ id, letter, percent, note }: LookedAtProps) {
  const edit = useEdit()
  const state = (set: Partial<Facet['inspected']>) =>
    void edit('assessment.state-inspected', { facetId: id, inspected: { percent, note, ...set } })
  return (
    <>
      <td className={styles['percent']}>
        <NumberField
          label={`Looked at of facet ${letter}`}
          hideLabel
          unit="%"
          min={0}
          max={100}
          placeholder="not stated"
          value={percent}
          onChange={(typed) => state({ percent: typed })}
        />
      </td>
      <td className={styles['why']}>
        <KeptText
          label={`Why not all of facet ${letter}`}
          hideLabel
          value={note}
          onChange={(typed) => state({ note: typed })}
        />
      </td>
    </>
  )
})

function Conditions({ tallies }: { tallies: readonly FacetTally[] }) {
  const rows = tallies.flatMap(({ facet, rows: own }) => own.map((row) => ({ facet, row })))
  return (
    <>
      <h2 className={styles['heading']}>By component and condition</h2>
      {rows.length === 0 ? (
        <p className={styles['quiet']}>
          No finding yet. Write findings with an exact count, and they are added up here.
        </p>
      ) : (
        <div className={styles['scroll']}>
          <table className={styles['lines']} aria-label="Tallies">
            <thead>
              <tr>
                <th scope="col">Facet</th>
                <th scope="col">What</th>
                <th scope="col">Kind</th>
                <th scope="col" className={styles['figure']}>
                  Counted
                </th>
                <th scope="col">In</th>
                <th scope="col">Not counted</th>
              </tr>
            </thead>
            <tbody>
              {rows.map(({ facet, row }) => (
                <tr key={`${facet?.id ?? ''} ${row.kind} ${row.component} ${row.condition}`}>
                  <td>{facet === null ? 'No facet' : facet.letter}</td>
                  <td>{whatWords(row)}</td>
                  <td>{findingKindLabels[row.kind]}</td>
                  <td className={styles['figure']}>{row.counted === null ? '-' : row.counted.count}</td>
                  <td>{(row.counted?.findings ?? []).map(({ number }) => findingLabel(number)).join(', ') || '-'}</td>
                  <td>{row.apart.length === 0 ? '-' : apartWords(row)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </div>
      )}
      <p className={styles['quiet']}>▲ {TALLY_CAUTION}</p>
    </>
  )
}
