import { describe, expect, it } from 'vitest'
import { numberText, readNumber } from './number-text.ts'

describe('readNumber', () => {
  it.each([
    ['', null],
    ['13', 13],
    ['13.5', 13.5],
    ['13,5', 13.5],
    [' 1 200 ', 1200],
    ['−4', -4],
    ['.5', 0.5],
    ['3/4', 0.75],
    ['1 1/2', 1.5],
    ['-2 1/4', -2.25],
  ])('reads "%s" as %s', (text, value) => {
    expect(readNumber(text)).toEqual({ ok: true, value })
  })

  it.each(['abc', '1/0', '1.2.3', '5 ft', '--1'])('refuses "%s" and says so', (text) => {
    expect(readNumber(text)).toEqual({ ok: false, error: `"${text}" is not a number.` })
  })

  it('holds to its limits', () => {
    expect(readNumber('61', { max: 60 })).toEqual({ ok: false, error: 'The most is 60.' })
    expect(readNumber('-1', { min: 0 })).toEqual({ ok: false, error: 'The least is 0.' })
  })

  it('reads back what numberText writes', () => {
    for (const value of [0, -3.25, 1e5, 0.1 + 0.2, null])
      expect(readNumber(numberText(value))).toEqual({ ok: true, value })
  })
})
