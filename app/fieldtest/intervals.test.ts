import fc from 'fast-check'
import { binomialDistribution } from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { exactInterval, wilsonInterval } from './intervals.ts'

/*
 * Newcombe, "Two-sided confidence intervals for the single proportion", Statistics in Medicine 17 (1998) 857-872: 81/263 and
 * 15/148 are its examples (method 3, Wilson). The other rows and the exact bounds are computed from the formulas of Wilson
 * (1927) and Clopper and Pearson (1934) in double precision.
 */
const published = [
  { found: 81, of: 263, wilson: [0.2553, 0.3662], exact: [0.2527, 0.3676] },
  { found: 15, of: 148, wilson: [0.0624, 0.1605], exact: [0.0578, 0.1617] },
  { found: 0, of: 20, wilson: [0, 0.1611], exact: [0, 0.1684] },
  { found: 1, of: 29, wilson: [0.0061, 0.1718], exact: [0.0009, 0.1776] },
  { found: 29, of: 29, wilson: [0.883, 1], exact: [0.8806, 1] },
  { found: 0, of: 100, wilson: [0, 0.037], exact: [0, 0.0362] },
  { found: 3, of: 100, wilson: [0.0103, 0.0845], exact: [0.0062, 0.0852] },
  { found: 4, of: 100, wilson: [0.0157, 0.0984], exact: [0.011, 0.0993] },
  { found: 12, of: 240, wilson: [0.0288, 0.0853], exact: [0.0261, 0.0857] },
] as const

const rounded = (interval: { low: number; high: number }) =>
  [interval.low, interval.high].map((bound) => Number(bound.toFixed(4)))

describe('intervals for a share, 95 %', () => {
  it.each(published)('agree with the published table: $found of $of', ({ found, of, wilson, exact }) => {
    expect(rounded(wilsonInterval(found, of))).toEqual(wilson)
    expect(rounded(exactInterval(found, of))).toEqual(exact)
  })

  // The exact bounds are defined by tails of the binomial distribution, which another library (simple-statistics) sums.
  it('leave 2.5 % in each binomial tail', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 120 }), fc.nat(), (of, some) => {
        const found = 1 + (some % (of - 1))
        const { low, high } = exactInterval(found, of)
        const upTo = (share: number, last: number) =>
          binomial(of, share).reduce((sum, p, k) => (k <= last ? sum + p : sum), 0)
        expect(1 - upTo(low, found - 1)).toBeCloseTo(0.025, 6)
        expect(upTo(high, found)).toBeCloseTo(0.025, 6)
      }),
      { numRuns: 60 },
    )
  })

  it('hold the share found, lie between 0 and 1, and narrow as the sample grows', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.nat(), (of, some) => {
        const found = some % (of + 1)
        for (const intervalOf of [wilsonInterval, exactInterval]) {
          const once = intervalOf(found, of)
          const fourTimes = intervalOf(found * 4, of * 4)
          expect(once.low).toBeGreaterThanOrEqual(0)
          expect(once.high).toBeLessThanOrEqual(1)
          expect(once.low).toBeLessThanOrEqual(found / of)
          expect(once.high).toBeGreaterThanOrEqual(found / of)
          expect(fourTimes.high - fourTimes.low).toBeLessThan(once.high - once.low)
        }
      }),
      { numRuns: 200 },
    )
  })
})

/** The library leaves off once it has 99.99 % of the whole, so only sums from the lower end are asked of it. */
function binomial(of: number, share: number): readonly number[] {
  return binomialDistribution(of, share) ?? []
}
