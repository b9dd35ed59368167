import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { decimalText, readDecimal } from './decimal.ts'
import { markShown, readPrice } from './typed-price.ts'

describe('a price as it is typed', () => {
  it.each([
    ['412.50', 'point', '412.50'],
    ['$1,234.50', 'point', '1234.50'],
    ['US$ 1,234.5', 'point', '1234.5'],
    ['USD 12', 'point', '12'],
    ['1.234,50 €', 'comma', '1234.50'],
    ['1 234,50', 'comma', '1234.50'],
    ['1\u00A0234,50', 'comma', '1234.50'],
    ["1'234.50", 'point', '1234.50'],
    ['12,345', 'point', '12345'],
    ['12,345', 'comma', '12.345'],
    ['.75', 'point', '0.75'],
    ['007.10', 'point', '7.10'],
    ['3.5000', 'point', '3.50'],
  ] as const)('%s with a decimal %s is %s', (cell, mark, price) => {
    const read = readPrice(cell, mark)
    expect(read).toEqual({ kind: 'price', price })
  })

  it.each([
    ['-5.00', 'negative'],
    ['(5.00)', 'negative'],
    ['5.00-', 'negative'],
    ['0', 'A price of 0 is no price'],
    ['0.00', 'A price of 0 is no price'],
    ['9,999,999', 'look for a slip'],
    ['1.23456', 'more than four places'],
    ['12.50.00', 'is not a price'],
    ['1,23.50', 'is not a price'],
    ['call us', 'is not a price'],
    ['1e5', 'is not a price'],
  ])('%s is refused: %s', (cell, words) => {
    expect(readPrice(cell, 'point')).toEqual({ kind: 'wrong', sentence: expect.stringContaining(words) })
  })

  it('is none in an empty cell', () => {
    expect(readPrice('  ', 'point')).toEqual({ kind: 'none' })
  })

  it('is read back from what Intl writes in English and German, to the cent', () => {
    const styles = [
      ['en-US', 'point'],
      ['de-DE', 'comma'],
      ['fr-FR', 'comma'],
      ['de-CH', 'point'],
    ] as const
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999_999 }), fc.constantFrom(...styles), (cents, [locale, mark]) => {
        const cell = new Intl.NumberFormat(locale, { style: 'currency', currency: 'USD' }).format(cents / 100)
        const read = readPrice(cell, mark)
        expect(read.kind === 'price' ? decimalText(readDecimal(read.price)) : read).toBe((cents / 100).toFixed(2))
      }),
    )
  })

  it.each([
    ['12.50', 'point'],
    ['12,50', 'comma'],
    ['1,234.50', 'point'],
    ['1.234,50', 'comma'],
    ['1,234', 'either'],
    ['0.125', 'point'],
    ['1,234,567', 'point'],
    ['1.234.567', 'comma'],
    ['12', null],
  ] as const)('%s shows %s before decimals', (cell, mark) => {
    expect(markShown(cell)).toBe(mark)
  })
})
