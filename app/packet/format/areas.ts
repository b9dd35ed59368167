import { groupedNumber } from '../../evidence/catalog/grouped-number.ts'

/** Square feet to the nearest one: "1,240". */
export function areaFigure(areaSqFt: number): string {
  return groupedNumber(areaSqFt, 0)
}

/** Squares of 100 sq ft to a hundredth: "12.40". */
export function squaresFigure(squares: number): string {
  return squares.toFixed(2)
}
