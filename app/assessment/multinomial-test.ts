/** How a spread over groups was held against expectation, and how often chance alone gives one at least as uneven. */
export type MultinomialTest =
  | { readonly method: 'exact'; readonly outcomes: number; readonly p: number }
  | { readonly method: 'monte-carlo'; readonly draws: number; readonly seed: number; readonly p: number }

/** Up to so many outcomes all of them are gone through. */
const EXACT_UP_TO = 120_000
const DRAWS = 9999
/** Any fixed number does; it is printed, so that the draws can be made again. */
const SEED = 20_260_301
/** Outcomes as probable as the one observed must count as such in spite of rounding. */
const TIE = 1e-7

/**
 * Exact multinomial test: the probability, if each of the observed falls into a group by that group's share alone and by
 * itself, of an outcome no more probable than the one observed. Where there are too many outcomes, as many are drawn by a
 * seeded generator, and p = (as improbable + 1) / (draws + 1).
 *
 * @param observed whole numbers, one for each group
 * @param shares expected shares above 0 that add up to 1, one for each group
 */
export function multinomialTest(observed: readonly number[], shares: readonly number[]): MultinomialTest {
  const n = observed.reduce((sum, one) => sum + one, 0)
  const logs = logFactorials(n)
  const logShares = shares.map((share) => Math.log(share))
  const logChance = (counts: readonly number[]) =>
    counts.reduce((sum, count, i) => sum + count * (logShares[i] ?? 0) - (logs[count] ?? 0), logs[n] ?? 0)
  const bound = logChance(observed) + TIE
  const outcomes = outcomeCount(n, shares.length, EXACT_UP_TO)
  if (outcomes <= EXACT_UP_TO) {
    const p = allOutcomes({ n, logs, logShares, bound })
    return { method: 'exact', outcomes, p: Math.min(1, p) }
  }
  const rare = drawnAsRare({ n, shares, logs, isRare: (counts) => logChance(counts) <= bound })
  return { method: 'monte-carlo', draws: DRAWS, seed: SEED, p: (rare + 1) / (DRAWS + 1) }
}

/** Ways to put n into k groups, (n + k - 1) over (k - 1); counting stops above a limit. */
function outcomeCount(n: number, k: number, limit: number): number {
  let ways = 1
  for (let i = 1; i < k; i++) {
    ways = (ways * (n + i)) / i
    if (ways > limit) return ways
  }
  return Math.round(ways)
}

interface Outcomes {
  readonly n: number
  readonly logs: readonly number[]
  readonly logShares: readonly number[]
  readonly bound: number
}

/** The chances of all outcomes that are no more probable than the bound, added up. */
function allOutcomes({ n, logs, logShares, bound }: Outcomes): number {
  const last = logShares.length - 1
  function chances(group: number, left: number, before: number): number {
    const log = logShares[group] ?? 0
    if (group === last) {
      const chance = before + left * log - (logs[left] ?? 0)
      return chance <= bound ? Math.exp(chance) : 0
    }
    let sum = 0
    for (let count = 0; count <= left; count++) {
      sum += chances(group + 1, left - count, before + count * log - (logs[count] ?? 0))
    }
    return sum
  }
  return chances(0, n, logs[n] ?? 0)
}

interface Draws {
  readonly n: number
  readonly shares: readonly number[]
  readonly logs: readonly number[]
  readonly isRare: (counts: readonly number[]) => boolean
}

/** Each draw fills one group after the other: what is left falls into the next one by its share of the groups left. */
function drawnAsRare({ n, shares, logs, isRare }: Draws): number {
  const last = shares.length - 1
  const binomials = shares.map((share, i) => binomial(share / shares.slice(i).reduce((sum, one) => sum + one, 0), logs))
  const random = xorshift()
  let rare = 0
  for (let draw = 0; draw < DRAWS; draw++) {
    let left = n
    const counts = shares.map((_, group) => {
      const count = group === last ? left : (binomials[group]?.(left, random()) ?? 0)
      left -= count
      return count
    })
    if (isRare(counts)) rare += 1
  }
  return rare
}

/** Numbers from 0 to 1 by the xorshift of 32 bits (G. Marsaglia 2003, shifts 13, 17, 5). */
function xorshift(): () => number {
  let state = SEED
  return () => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    return (state >>> 0) / 2 ** 32
  }
}

/** How many of `of` fall on a share: the number at which the sum of binomial chances passes `at`. */
function binomial(share: number, logs: readonly number[]): (of: number, at: number) => number {
  const sums = new Map<number, Float64Array>()
  const [logIn, logOut] = [Math.log(share), Math.log1p(-share)]
  function sumsOf(of: number): Float64Array {
    const own = new Float64Array(of + 1)
    let sum = 0
    for (let k = 0; k <= of; k++) {
      const ways = (logs[of] ?? 0) - (logs[k] ?? 0) - (logs[of - k] ?? 0)
      sum += Math.exp(ways + k * logIn + (of - k) * logOut)
      own[k] = sum
    }
    sums.set(of, own)
    return own
  }
  return (of, at) => {
    if (of === 0) return 0
    const own = sums.get(of) ?? sumsOf(of)
    let [low, high] = [0, of]
    while (low < high) {
      const middle = (low + high) >> 1
      if ((own[middle] ?? 1) > at) high = middle
      else low = middle + 1
    }
    return low
  }
}

/** Logarithms of 0! to n!. */
function logFactorials(n: number): readonly number[] {
  const logs = [0]
  for (let i = 1; i <= n; i++) logs.push((logs[i - 1] ?? 0) + Math.log(i))
  return logs
}
