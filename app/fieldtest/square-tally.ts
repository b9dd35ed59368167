import type { ConditionKey } from '../evidence/catalog/keys.ts'
import type { FacetId } from '../job/ids.ts'
import type { TestSquare } from './survey.ts'

/** One condition over the test squares of one facet: counts per 100 sq ft. */
export interface SquareTally {
  readonly facetId: FacetId | null
  readonly condition: ConditionKey
  /** One count for each square of the facet, also where it is 0. */
  readonly counts: readonly number[]
  readonly mean: number
  readonly least: number
  readonly most: number
}

/**
 * Counts by facet and condition over the facet's squares. A square in which a condition was not written down counts 0
 * of it. Nothing is carried over to facets without a square.
 */
export function tallySquares(squares: readonly TestSquare[]): readonly SquareTally[] {
  const facetIds = [...new Set(squares.map(({ facetId }) => facetId))]
  return facetIds.flatMap((facetId) => {
    const own = squares.filter((square) => square.facetId === facetId)
    const conditions = [...new Set(own.flatMap(({ counts }) => counts.map(({ condition }) => condition)))]
    return conditions.map((condition): SquareTally => {
      const counts = own.map((square) => countIn(square, condition))
      const mean = counts.reduce((sum, count) => sum + count, 0) / counts.length
      return { facetId, condition, counts, mean, least: Math.min(...counts), most: Math.max(...counts) }
    })
  })
}

function countIn(square: TestSquare, condition: ConditionKey): number {
  return square.counts.reduce((sum, one) => (one.condition === condition ? sum + one.count : sum), 0)
}

/** "(2 + 0 + 4) / 3 = 2 in 100 sq ft, from 0 to 4". */
export function squareWorking({ counts, mean, least, most }: SquareTally): string {
  const figure = String(Number(mean.toFixed(2)))
  const sum = counts.length === 1 ? figure : `(${counts.join(' + ')}) / ${counts.length} = ${figure}`
  return `${sum} in 100 sq ft${counts.length === 1 ? ', one square' : `, from ${least} to ${most}`}`
}
