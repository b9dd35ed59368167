/** Two rows of a table of two by two: found and not found. */
export interface FoundInTwo {
  readonly first: { readonly found: number; readonly of: number }
  readonly second: { readonly found: number; readonly of: number }
}

/** Tables as probable as the one observed must count as such in spite of rounding. */
const TIE = 1e-7

/**
 * Fisher's exact test, two-sided: the probability, with row and column sums as they are and no difference between the
 * rows, of a table no more probable than the one observed (R. A. Fisher 1935; the two-sided sum is the one R documents).
 *
 * @param table whole numbers, `found` not above `of`
 */
export function fisherExact({ first, second }: FoundInTwo): number {
  const found = first.found + second.found
  const least = Math.max(0, found - second.of)
  const most = Math.min(first.of, found)
  const chances = Array.from({ length: most - least + 1 }, (_, i) => {
    const inFirst = least + i
    return Math.exp(
      logChoose(first.of, inFirst) + logChoose(second.of, found - inFirst) - logChoose(first.of + second.of, found),
    )
  })
  const own = chances[first.found - least] ?? 0
  const p = chances.reduce((sum, chance) => (chance <= own * (1 + TIE) ? sum + chance : sum), 0)
  return Math.min(1, p)
}

function logChoose(n: number, k: number): number {
  let log = 0
  for (let i = 1; i <= k; i++) log += Math.log(n - k + i) - Math.log(i)
  return log
}
