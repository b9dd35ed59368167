import { PLACEMENT_CALIBRATION } from './calibration.ts'

/** Entries are counted up to this many. */
const MOST = 3
const COUNTS = MOST + 1

/**
 * How welcome each facet is at each moment, as most facets are visited just once: a facet that is taken to be visited at
 * some other moment is less likely to be come to at this one, and one that would never be visited is more so.
 *
 * One round of belief propagation between the chain and a factor on the number of entries of each facet; entries at other
 * moments are taken as independent given the chain (their counts follow a Poisson binomial distribution).
 *
 * @param entries chance of coming to each place with each moment, the ground last
 * @param before the factors that those chances came with
 */
export function welcomeAfter(
  entries: readonly Float64Array[],
  before: readonly Float64Array[],
): readonly Float64Array[] {
  const { damping } = PLACEMENT_CALIBRATION
  const times = timesWeights()
  const next = before.map((factors) => Float64Array.from(factors))
  const facets = (entries[0]?.length ?? 1) - 1
  const chances = new Float64Array(entries.length)
  for (let facet = 0; facet < facets; facet++) {
    // What the chain says without this factor's own word.
    entries.forEach((at, moment) => {
      const chance = at[facet] ?? 0
      const odds = chance / Math.max(1e-12, 1 - chance) / (before[moment]?.[facet] ?? 1)
      chances[moment] = Math.min(0.999, odds / (1 + odds))
    })
    const earlier = countsBefore(chances)
    const later = countsBefore(chances.toReversed())
    next.forEach((factors, moment) => {
      const last = entries.length - 1 - moment
      const word = wordFor(earlier.subarray(moment * COUNTS), later.subarray(last * COUNTS), times)
      factors[facet] = (factors[facet] ?? 1) ** (1 - damping) * word ** damping
    })
  }
  return next
}

/** For each moment, the chances of 0, 1, 2, and 3 or more entries before it. */
function countsBefore(chances: Float64Array): Float64Array {
  const all = new Float64Array((chances.length + 1) * COUNTS)
  all[0] = 1
  chances.forEach((chance, moment) => {
    const here = moment * COUNTS
    const next = here + COUNTS
    for (let count = 0; count <= MOST; count++) {
      const more = count === 0 ? 0 : (all[here + count - 1] ?? 0) * chance
      all[next + count] = (all[here + count] ?? 0) * (count === MOST ? 1 : 1 - chance) + more
    }
  })
  return all
}

/** How likely it is to visit a facet that many times, relative to once. */
function timesWeights(): readonly number[] {
  const { visitedNever, visitedTwice, visitedMore } = PLACEMENT_CALIBRATION
  return [visitedNever, 1, visitedTwice, visitedMore]
}

function wordFor(earlier: Float64Array, later: Float64Array, times: readonly number[]): number {
  let withIt = 0
  let without = 0
  for (let a = 0; a <= MOST; a++) {
    for (let b = 0; b <= MOST; b++) {
      const both = (earlier[a] ?? 0) * (later[b] ?? 0)
      without += both * (times[Math.min(MOST, a + b)] ?? 0)
      withIt += both * (times[Math.min(MOST, a + b + 1)] ?? 0)
    }
  }
  return withIt / without
}
