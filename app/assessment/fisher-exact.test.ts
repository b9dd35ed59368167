import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { fisherExact } from './fisher-exact.ts'

describe('Fisher’s exact test, two-sided', () => {
  /*
   * Tea tasting, the example of R's documentation of fisher.test: one-sided 0.2429, two-sided 0.485714; twins' convictions,
   * the second data set there: two-sided 0.000536724. A perfect guess of eight cups: 2 of the 70 ways to choose 4 of 8.
   */
  it.each([
    { first: { found: 3, of: 4 }, second: { found: 1, of: 4 }, p: 0.485714 },
    { first: { found: 2, of: 12 }, second: { found: 15, of: 18 }, p: 0.000536724 },
    { first: { found: 4, of: 4 }, second: { found: 0, of: 4 }, p: 2 / 70 },
  ])('agrees with the published $p', ({ first, second, p }) => {
    expect(fisherExact({ first, second })).toBeCloseTo(p, 6)
  })

  it('is a probability and does not ask which row comes first', () => {
    const row = fc.integer({ min: 1, max: 80 }).chain((of) => fc.record({ of: fc.constant(of), found: fc.nat(of) }))
    fc.assert(
      fc.property(row, row, (first, second) => {
        const p = fisherExact({ first, second })
        expect(p).toBeGreaterThan(0)
        expect(p).toBeLessThanOrEqual(1)
        expect(fisherExact({ first: second, second: first })).toBeCloseTo(p, 9)
      }),
    )
  })
})
