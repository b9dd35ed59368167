import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { looseShare, looseWorking } from './loose-share.ts'

const verdict = (loose: number, checked: number) => {
  const share = looseShare({ loose, checked })
  return share.kind === 'share' ? share.verdict : share.kind
}

describe('loose tiles against 3 %', () => {
  it('says nothing where nothing was checked', () => {
    expect(looseShare({ loose: 0, checked: 0 })).toEqual({ kind: 'none-checked' })
  })

  // TAS 106 of 2020: more than 3 % fails (4.1.2), less goes on (4.1.3); exactly 3 % is in neither clause.
  it('is at the limit at exactly 3 %, however large the sample', () => {
    expect(verdict(3, 100)).toBe('at-limit')
    expect(verdict(6, 200)).toBe('at-limit')
    expect(verdict(30, 1000)).toBe('at-limit')
  })

  it('is too small a sample where an interval straddles 3 %', () => {
    expect(verdict(4, 100)).toBe('too-small')
    expect(verdict(0, 100)).toBe('too-small')
    expect(verdict(0, 20)).toBe('too-small')
  })

  it('says above or below only with the whole of both intervals on one side', () => {
    expect(verdict(15, 148)).toBe('above')
    expect(verdict(0, 200)).toBe('below')
    // 12 of 240 is 5 %, yet both lower bounds (2.9 % and 2.6 %) lie below 3 %.
    expect(verdict(12, 240)).toBe('too-small')
  })

  it('never says more than its sample: one more loose tile can only move towards "above"', () => {
    const rank = { below: 0, 'too-small': 1, 'at-limit': 1, above: 2, 'none-checked': 1 } as const
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 800 }), fc.nat(), (checked, some) => {
        const loose = some % checked
        expect(rank[verdict(loose + 1, checked)]).toBeGreaterThanOrEqual(rank[verdict(loose, checked)])
      }),
    )
  })

  it('shows its working', () => {
    expect(looseWorking(looseShare({ loose: 3, checked: 100 }))).toBe(
      '3 of 100 = 3.0 %; 95 % intervals: Wilson 1.0 to 8.5 %, exact (Clopper and Pearson) 0.6 to 8.5 %; bound 3 %.',
    )
  })
})
