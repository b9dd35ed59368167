import { areaFigure, squaresFigure } from '../../../app/packet/format/areas.ts'
import { feetFigure } from '../../../app/packet/format/lengths.ts'
import { roundingNote } from '../../../app/packet/format/rounding.ts'
import { handSetWords } from '../../../app/roof/hand-set-words.ts'
import { summedColumns, type FacetTable } from '../../../app/roof/quantities.ts'
import { useJob } from '../../state/job-state.tsx'
import { useFacetName } from '../../state/roof-zones.ts'
import { usePiecesWord } from './pieces-word.ts'
import styles from './quantities.module.css'

/** Facets line by line with their totals, and the rule by which totals are made. */
export function FacetFigures({ quantities }: { quantities: FacetTable }) {
  const { rows, totals } = quantities
  const { facets } = useJob()
  const nameOf = useFacetName()
  const pieces = usePiecesWord()
  const hasPieces = totals.pieces !== null
  return (
    <>
      <table aria-label="Facets in figures">
        <thead>
          <tr>
            {['Facet', 'Pitch', 'Plan, sq ft', 'Area, sq ft', 'Squares', 'Slope, ft'].map((title) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
            {hasPieces ? <th scope="col">Courses</th> : null}
            {hasPieces ? <th scope="col">{pieces}</th> : null}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const facet = facets.find(({ id }) => id === row.facetId)
            const byHand = facet === undefined ? '' : handSetWords(facet)
            return (
              <tr key={row.facetId}>
                <th scope="row">
                  <strong>{row.letter}</strong> {facet === undefined ? '' : nameOf(facet)}
                  {byHand === '' ? null : <em>, {byHand}</em>}
                </th>
                <td>{row.pitchLabel}</td>
                <td>{areaFigure(row.planAreaSqFt)}</td>
                <td>{areaFigure(row.areaSqFt)}</td>
                <td>{squaresFigure(row.squares)}</td>
                <td>{feetFigure(row.slopeLengthFt)}</td>
                {row.courses === null ? null : <td>{row.courses}</td>}
                {row.pieces === null ? null : <td>{areaFigure(row.pieces)}</td>}
              </tr>
            )
          })}
        </tbody>
        <tfoot>
          <tr>
            <th scope="row">Roof</th>
            <td>–</td>
            <td>{areaFigure(totals.planAreaSqFt)}</td>
            <td>{areaFigure(totals.areaSqFt)}</td>
            <td>{squaresFigure(totals.squares)}</td>
            <td>–</td>
            {hasPieces ? <td>–</td> : null}
            {totals.pieces === null ? null : <td>{areaFigure(totals.pieces)}</td>}
          </tr>
        </tfoot>
      </table>
      <p className={styles['note']}>{roundingNote(summedColumns(quantities, pieces))}</p>
    </>
  )
}
