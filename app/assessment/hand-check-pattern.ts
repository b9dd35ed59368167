import type { HandCheck } from '../fieldtest/survey.ts'
import { fisherExact, type FoundInTwo } from './fisher-exact.ts'

/** Loose tiles near edges, corners and ridges against those in the field, of the ones checked by hand. */
export interface HandCheckPattern {
  readonly table: FoundInTwo
  readonly p: number
}

/** Null where hand checks are missing on one of the two sides. Checks without an area are in neither. */
export function handCheckPattern(checks: readonly HandCheck[]): HandCheckPattern | null {
  const summed = (own: readonly HandCheck[]) => ({
    found: own.reduce((sum, { loose }) => sum + loose, 0),
    of: own.reduce((sum, { checked }) => sum + checked, 0),
  })
  const first = summed(checks.filter(({ area }) => area !== null && area !== 'field'))
  const second = summed(checks.filter(({ area }) => area === 'field'))
  if (first.of === 0 || second.of === 0) return null
  return { table: { first, second }, p: fisherExact({ first, second }) }
}

/** "Loose: 6 of 40 checked at edges, corners and ridges, 2 of 50 in the field. Fisher's exact test, two-sided: p = 0.1371." */
export function handCheckWords({ table: { first, second }, p }: HandCheckPattern): string {
  const told = p < 0.0001 ? 'p under 0.0001' : `p = ${p.toFixed(4)}`
  const unlike =
    p < 0.05
      ? 'The two shares differ by more than chance often gives.'
      : 'The two shares differ no more than chance often gives.'
  return `Loose among tiles checked by hand: ${first.found} of ${first.of} at edges, corners and ridges, ${second.found} of ${second.of} in the field. ${unlike} Fisher's exact test, two-sided: ${told}. Tiles checked side by side are not independent.`
}
