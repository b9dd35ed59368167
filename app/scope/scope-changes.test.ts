import { describe, expect, it } from 'vitest'
import { withLineChange, withLink } from './scope-changes.ts'
import { typedDecimal } from './typed-decimal.ts'

describe('changes of lines', () => {
  const at = { bid: 'repair', key: 'disposal' } as const
  const byHand = { quantity: '2', why: '' }

  it('keep a quantity by hand and a reason side by side, one change for each line of a bid', () => {
    const once = withLineChange([], at, { byHand })
    const twice = withLineChange(once, at, { leftOutBecause: 'By the owner.' })
    expect(twice).toEqual([{ ...at, byHand, leftOutBecause: 'By the owner.' }])
    expect(withLineChange(twice, { ...at, bid: 'replacement' }, { byHand })).toHaveLength(2)
  })

  it('take no more of a line than which one it is, so that they can be stored', () => {
    const line = { ...at, quantity: { units: 2n, places: 0 } }
    expect(withLineChange([], line, { byHand })).toEqual([{ ...at, byHand, leftOutBecause: null }])
  })

  it('are gone when nothing of them is left', () => {
    expect(withLineChange(withLineChange([], at, { byHand }), at, { byHand: null })).toEqual([])
  })

  it('link a line to a code, to none, or leave it to its own key again', () => {
    const linked = withLink([{ key: 'hip', code: 'H' }], 'ridge', { code: 'R' })
    expect(linked).toEqual([
      { key: 'hip', code: 'H' },
      { key: 'ridge', code: 'R' },
    ])
    expect(withLink(linked, 'ridge', { code: null })[1]).toEqual({ key: 'ridge', code: null })
    expect(withLink(linked, 'ridge', 'by-key')).toEqual([{ key: 'hip', code: 'H' }])
  })
})

describe('a typed figure', () => {
  it.each([
    ['27', '27'],
    [' 1,234.5 ', '1234.5'],
    ['.5', '0.5'],
    ['007', '7'],
    ['3.', '3'],
    ['', null],
  ])('"%s" is %s', (typed, text) => {
    expect(typedDecimal(typed)).toEqual({ ok: true, text })
  })

  it.each(['-1', '1,5', 'two', '1.23456', '12345678901', '1/2', '1e3'])('"%s" is refused', (typed) => {
    expect(typedDecimal(typed)).toMatchObject({ ok: false, fault: expect.stringContaining('is not a figure') })
  })
})
