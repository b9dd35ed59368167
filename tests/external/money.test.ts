import { spawnSync } from 'node:child_process'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decimalText, percentOf, readDecimal, rounded, times } from '../../app/scope/decimal.ts'
import { hasTool } from '../whole/outside-tools.ts'

/** Python's decimal module, an implementation of the General Decimal Arithmetic Specification that is not ours. */
const script = `
import json, sys
from decimal import Decimal, ROUND_HALF_UP, getcontext
getcontext().prec = 60
cent = Decimal('0.01')
out = []
for quantity, price, percent in json.load(sys.stdin):
    amount = (Decimal(quantity) * Decimal(price)).quantize(cent, rounding=ROUND_HALF_UP)
    share = (amount * Decimal(percent) / 100).quantize(cent, rounding=ROUND_HALF_UP)
    out.append([str(amount), str(share)])
print(json.dumps(out))
`
const hasPython = hasTool('python3')
const skipped = hasPython ? '' : ' (skipped: no python3 on this machine)'

const figure = fc
  .tuple(fc.integer({ min: 0, max: 999_999 }), fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 0, max: 4 }))
  .map(([whole, fraction, places]) =>
    places === 0 ? String(whole) : `${whole}.${String(fraction).padStart(4, '0').slice(0, places)}`,
  )

describe.skipIf(!hasPython)(`amounts and percentages${skipped}`, () => {
  it('are to the cent what Python’s decimal module gives, halves away from zero', () => {
    const cases = [
      ['117.9', '18.25', '12.5'],
      ['0.125', '1', '50'],
      ['1.005', '1', '0'],
      ...fc.sample(fc.tuple(figure, figure, figure), { numRuns: 5000, seed: 1 }),
    ] as const
    const { stdout } = spawnSync('python3', ['-c', script], {
      input: JSON.stringify(cases),
      encoding: 'utf8',
      maxBuffer: 64 * 1024 * 1024,
    })
    const ours = cases.map(([quantity, price, percent]) => {
      const amount = rounded(times(readDecimal(quantity), readDecimal(price)), 2)
      return [decimalText(amount), decimalText(rounded(percentOf(readDecimal(percent), amount), 2))]
    })
    expect(ours).toEqual(JSON.parse(stdout))
    expect(ours.slice(0, 3).map(([amount]) => amount)).toEqual(['2151.68', '0.13', '1.01'])
  })
})
