import type { FacetQuantity, FacetTable, PieceSize } from '../../../app/roof/quantities.ts'
import { useGoTo } from '../../frame/use-go-to.ts'
import { Button } from '../../ui/button.tsx'
import { usePiecesWord } from './pieces-word.ts'
import styles from './quantities.module.css'

interface QuantitiesWorkingProps {
  readonly quantities: FacetTable
  readonly piece: PieceSize | null
}

/** How each figure came about, facet by facet, with the numbers in it. */
export function QuantitiesWorking({ quantities, piece }: QuantitiesWorkingProps) {
  const goTo = useGoTo()
  const pieces = usePiecesWord().toLowerCase()
  return (
    <>
      <details className={styles['working']}>
        <summary>Show the working</summary>
        <p>
          Area is plan area times slope factor, √(1 + (rise ÷ 12)²); a square is 100 sq ft. Slope length runs from the
          lowest to the highest point along the slope. Waste is in none of these figures.
        </p>
        <ul>
          {quantities.rows.map((row) => (
            <li key={row.facetId}>
              <strong>{row.letter}</strong> {workingOf(row, piece, pieces)}
            </li>
          ))}
        </ul>
      </details>
      {piece === null ? (
        <p className={styles['line']}>
          Courses and {pieces} need the exposure and the cover width.
          <Button onPress={() => goTo({ workspace: 'sheet', target: { kind: 'field', id: 'covering.exposureIn' } })}>
            Enter them on the job sheet
          </Button>
        </p>
      ) : null}
    </>
  )
}

function workingOf(row: FacetQuantity, piece: PieceSize | null, pieces: string): string {
  const { planAreaSqFt, slopeFactor, areaSqFt, squares, slopeLengthFt } = row
  const area = `${planAreaSqFt.toFixed(2)} × ${slopeFactor.toFixed(5)} = ${areaSqFt.toFixed(2)} sq ft = ${squares.toFixed(4)} squares`
  const slope = `slope ${(slopeLengthFt / slopeFactor).toFixed(2)} × ${slopeFactor.toFixed(5)} = ${slopeLengthFt.toFixed(2)} ft`
  if (piece === null || row.pieces === null) return `${area}; ${slope}`
  const { exposureIn, coverWidthIn } = piece
  const exactCourses = ((12 * slopeLengthFt) / exposureIn).toFixed(2)
  const courses = `12 × ${slopeLengthFt.toFixed(2)} ÷ ${exposureIn} = ${exactCourses}, up to ${row.courses} courses`
  const count = `144 × ${areaSqFt.toFixed(2)} ÷ (${exposureIn} × ${coverWidthIn}) = ${row.pieces.toFixed(1)} ${pieces}`
  return `${area}; ${slope}; ${courses}; ${count}`
}
