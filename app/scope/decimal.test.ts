import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  decimalText,
  decimalTextSchema,
  decimalWords,
  percentOf,
  plus,
  printedDecimal,
  readDecimal,
  rounded,
  times,
  wholeUp,
} from './decimal.ts'

const texts = fc
  .tuple(fc.integer({ min: 0, max: 999_999_999 }), fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 9999 }))
  .map(([whole, places, fraction]) =>
    places === 0 ? String(whole) : `${whole}.${String(fraction).padStart(4, '0').slice(0, places)}`,
  )

describe('a decimal', () => {
  it('is read and written without change', () => {
    fc.assert(
      fc.property(texts, (text) => {
        expect(decimalTextSchema.parse(text)).toBe(text)
        expect(decimalText(readDecimal(text))).toBe(text)
      }),
    )
  })

  it('adds and multiplies exactly, where binary fractions do not', () => {
    expect(0.1 + 0.2).not.toBe(0.3)
    expect(decimalText(plus(readDecimal('0.1'), readDecimal('0.2')))).toBe('0.3')
    expect(1.005 * 100).not.toBe(100.5)
    expect(decimalText(times(readDecimal('1.005'), readDecimal('100')))).toBe('100.500')
  })

  it('adds in any order and any grouping', () => {
    fc.assert(
      fc.property(texts, texts, texts, (a, b, c) => {
        const [x, y, z] = [readDecimal(a), readDecimal(b), readDecimal(c)]
        expect(decimalText(plus(plus(x, y), z))).toBe(decimalText(plus(x, plus(z, y))))
      }),
    )
  })

  it.each([
    ['0.125', 2, '0.13'],
    ['0.135', 2, '0.14'],
    ['0.1249', 2, '0.12'],
    ['2.5', 0, '3'],
    ['1.005', 2, '1.01'],
    ['7', 2, '7.00'],
    ['999999999.9999', 2, '1000000000.00'],
  ])('%s to %i places is %s: a half goes away from zero', (text, places, expected) => {
    expect(decimalText(rounded(readDecimal(text), places))).toBe(expected)
  })

  it('is never farther from what it was than half of its last place', () => {
    fc.assert(
      fc.property(texts, fc.integer({ min: 0, max: 4 }), (text, places) => {
        const [before, after] = [readDecimal(text), rounded(readDecimal(text), places)]
        const scale = 10n ** 4n
        const at4 = (one: { units: bigint; places: number }) => (one.units * scale) / 10n ** BigInt(one.places)
        const off = at4(after) - at4(before)
        expect((off < 0n ? -off : off) * 2n * 10n ** BigInt(places)).toBeLessThanOrEqual(scale)
      }),
    )
  })

  it('takes a percentage exactly', () => {
    expect(decimalText(percentOf(readDecimal('7.25'), readDecimal('1234.56')))).toBe('89.505600')
  })

  it('goes up to the next whole one, and stays where it is whole', () => {
    expect(['1.2', '2.0', '0.0001', '3'].map((text) => decimalText(wholeUp(readDecimal(text))))).toEqual([
      '2',
      '2',
      '1',
      '3',
    ])
  })

  it('is shown with thousands grouped and all its places', () => {
    expect(decimalWords(readDecimal('1234567.50'))).toBe('1,234,567.50')
    expect(decimalWords(printedDecimal(26, 2))).toBe('26.00')
  })

  it.each(['', '-1', '01', '1.', '.5', '1e3', '1,5', '12345678901', '1.23456', 'NaN'])('refuses "%s"', (text) => {
    expect(decimalTextSchema.safeParse(text).success).toBe(false)
  })
})
