import { areaFigure, squaresFigure } from '../../../app/packet/format/areas.ts'
import { type FacetTable, usualWaste, wasteAllowance, wholePieces } from '../../../app/roof/quantities.ts'
import { useGoTo } from '../../frame/use-go-to.ts'
import { useJob } from '../../state/job-state.tsx'
import { Button } from '../../ui/button.tsx'
import { usePiecesWord } from './pieces-word.ts'
import styles from './quantities.module.css'

/** The allowance for waste as a line apart, and the ranges that people use, with what they rest on. */
export function WasteFigures({ totals }: { totals: FacetTable['totals'] }) {
  const { wastePercent } = useJob().job.sheet.covering
  const goTo = useGoTo()
  return (
    <>
      {wastePercent === null ? (
        <p>None is chosen for this job.</p>
      ) : (
        <ChosenWaste totals={totals} percent={wastePercent} />
      )}
      <p className={styles['line']}>
        <Button onPress={() => goTo({ workspace: 'sheet', target: { kind: 'field', id: 'covering.wastePercent' } })}>
          {wastePercent === null ? 'Choose it on the job sheet' : 'Change it on the job sheet'}
        </Button>
      </p>
      <details className={styles['working']}>
        <summary>Usual ranges</summary>
        <ul>
          {usualWaste.map(({ roof, fromPercent, toPercent, status }) => (
            <li key={roof}>
              {roof}: {fromPercent} to {toPercent} % [{status}]
            </li>
          ))}
        </ul>
      </details>
    </>
  )
}

function ChosenWaste({ totals, percent }: { totals: FacetTable['totals']; percent: number }) {
  const pieces = usePiecesWord()
  const waste = wasteAllowance(totals, percent)
  const { piecesToOrder } = waste
  return (
    <>
      <table aria-label="Allowance for waste">
        <thead>
          <tr>
            <th scope="col">Line</th>
            <th scope="col">Area, sq ft</th>
            <th scope="col">Squares</th>
            {totals.pieces === null ? null : <th scope="col">{pieces}</th>}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Measured, as above</th>
            <td>{areaFigure(totals.areaSqFt)}</td>
            <td>{squaresFigure(totals.squares)}</td>
            {totals.pieces === null ? null : <td>{areaFigure(totals.pieces)}</td>}
          </tr>
          <tr>
            <th scope="row">Allowance of {percent} %</th>
            <td>{areaFigure(waste.areaSqFt)}</td>
            <td>{squaresFigure(waste.areaSqFt / 100)}</td>
            {waste.pieces === null ? null : <td>{areaFigure(waste.pieces)}</td>}
          </tr>
        </tbody>
      </table>
      {piecesToOrder === null || totals.pieces === null ? null : (
        <p>
          To order with the allowance: {areaFigure(piecesToOrder)} {pieces.toLowerCase()}; without it{' '}
          {areaFigure(wholePieces(totals.pieces))}. Both are rounded up to whole ones.
        </p>
      )}
    </>
  )
}
