import fc from 'fast-check'
import { factorial } from 'simple-statistics'
import { describe, expect, it } from 'vitest'
import { multinomialTest } from './multinomial-test.ts'

const sum = (numbers: readonly number[]) => numbers.reduce((total, one) => total + one, 0)

/** The same definition written down a second time, over three groups, with factorials of the npm package simple-statistics. */
function byFactorials([a, b, c]: readonly [number, number, number], shares: readonly [number, number, number]): number {
  const n = a + b + c
  const chance = (x: number, y: number, z: number) =>
    (factorial(n) / (factorial(x) * factorial(y) * factorial(z))) * shares[0] ** x * shares[1] ** y * shares[2] ** z
  const own = chance(a, b, c)
  const all = Array.from({ length: n + 1 }, (_, x) =>
    Array.from({ length: n - x + 1 }, (__, y) => chance(x, y, n - x - y)),
  ).flat()
  return sum(all.filter((one) => one <= own * (1 + 1e-7)))
}

describe('the multinomial test', () => {
  it.each([
    { observed: [3, 1, 8], shares: [0.2, 0.3, 0.5] },
    { observed: [0, 0, 9], shares: [0.1, 0.2, 0.7] },
    { observed: [10, 2, 4], shares: [1 / 3, 1 / 3, 1 / 3] },
  ] as const)('goes by its definition for $observed', ({ observed, shares }) => {
    const test = multinomialTest(observed, shares)
    expect(test.method).toBe('exact')
    expect(test.p).toBeCloseTo(byFactorials(observed, shares), 10)
  })

  // All ten in the rarer of two groups of 1 : 3 is one outcome, (1/4)^10, and none is rarer: the formula itself.
  it('gives the rarest outcome its own chance', () => {
    expect(multinomialTest([10, 0], [0.25, 0.75])).toEqual({
      method: 'exact',
      outcomes: 11,
      p: expect.closeTo(0.25 ** 10, 12),
    })
  })

  /*
   * Chi-square fits: Mendel's peas, 9:3:3:1, X2 = 0.470024 with 3 degrees of freedom, p = 0.925426 (his figures of 1866 as
   * commonly given, statistic recomputed); a die thrown 204 times, X2 = 15.294118 with 5, p = 0.009177 (common practice, no
   * source; recomputed). Chi-square is the limit for large counts, so the two tests come near each other and not closer.
   */
  it.each([
    { observed: [315, 101, 108, 32], shares: [9 / 16, 3 / 16, 3 / 16, 1 / 16], chiSquare: 0.925426, within: 0.02 },
    {
      observed: [22, 24, 38, 30, 46, 44],
      shares: [1, 1, 1, 1, 1, 1].map((one) => one / 6),
      chiSquare: 0.009177,
      within: 0.004,
    },
  ])('by drawing comes near the chi-square test of $observed', ({ observed, shares, chiSquare, within }) => {
    const test = multinomialTest(observed, shares)
    expect(test).toMatchObject({ method: 'monte-carlo', draws: 9999, seed: 20_260_301 })
    expect(Math.abs(test.p - chiSquare)).toBeLessThan(within)
    expect(multinomialTest(observed, shares)).toEqual(test)
  })

  it('finds nothing unusual in counts that are just as expected', () => {
    expect(multinomialTest([5, 5, 10], [0.25, 0.25, 0.5]).p).toBeCloseTo(1, 9)
    expect(multinomialTest([90, 90, 90, 90], [0.25, 0.25, 0.25, 0.25]).p).toBe(1)
  })

  it('is a probability, and the same whichever group stands first', () => {
    const group = fc.record({ count: fc.nat(12), weight: fc.integer({ min: 1, max: 20 }) })
    fc.assert(
      fc.property(fc.array(group, { minLength: 2, maxLength: 4 }), (groups) => {
        const whole = sum(groups.map(({ weight }) => weight))
        const run = (order: typeof groups) =>
          multinomialTest(
            order.map(({ count }) => count),
            order.map(({ weight }) => weight / whole),
          ).p
        const p = run(groups)
        expect(p).toBeGreaterThan(0)
        expect(p).toBeLessThanOrEqual(1)
        expect(run(groups.toReversed())).toBeCloseTo(p, 8)
      }),
      { numRuns: 60 },
    )
  })
})
