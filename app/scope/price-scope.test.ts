import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { hipHouse } from '../../tests/builders/hip-house.ts'
import { aJob } from '../../tests/builders/records.ts'
import { buildScope } from './build-scope.ts'
import { currencyDigits, isCurrency } from './currency.ts'
import { decimalText, readDecimal, sumOf } from './decimal.ts'
import type { PriceBook, PriceRow } from './price-book.ts'
import { priceScope, subtotalWords, totalWords } from './price-scope.ts'
import { scopeSchema, type Scope } from './scope-record.ts'
import type { ScopeUnit } from './units.ts'

const source = {
  job: aJob({ sheet: { covering: { class: 'concrete-tile', exposureIn: 13.5, coverWidthIn: 12, wastePercent: 10 } } }),
  facets: hipHouse(),
  findings: [],
}

function bookOf(prices: readonly (readonly [code: string, unit: ScopeUnit, price: string])[]): PriceBook {
  const rows = prices.map(([code, unit, price], i): PriceRow => ({ line: i + 2, code, description: '', unit, price }))
  return { fileName: 'prices.csv', sha256: '0'.repeat(64), decimalMark: 'point', rows, leftOut: 0 }
}

function pricedOf(given: Partial<Scope>, book: PriceBook | null) {
  const choices = scopeSchema.parse(given)
  return priceScope(buildScope(source, choices), { choices, book })
}

const replacementOf = (given: Partial<Scope>, book: PriceBook | null) => pricedOf(given, book).bids.replacement

const amounts = (given: Partial<Scope>, book: PriceBook | null) =>
  Object.fromEntries(
    replacementOf(given, book).lines.map(({ line, amount }) => [
      line.key,
      amount === null ? null : decimalText(amount),
    ]),
  )

describe('prices on a scope', () => {
  const book = bookOf([
    ['covering', 'square', '612.35'],
    ['ridge', 'ft', '18.333'],
    ['HIP', 'ft', '18.25'],
    ['eave', 'square', '4.00'],
  ])

  it('make each amount of the printed quantity, worked by hand', () => {
    // 26.00 x 612.35 = 15,921.10; 20.0 x 18.333 = 366.66; 117.9 x 18.25 = 2,151.675, a half away from zero.
    expect(amounts({}, book)).toMatchObject({ covering: '15921.10', ridge: '366.66', hip: '2151.68' })
  })

  it('are missing, never 0, where the book has none or prices another unit', () => {
    const { lines } = replacementOf({}, book)
    const of = (key: string) => lines.find(({ line }) => line.key === key)
    expect(of('underlayment')).toMatchObject({ amount: null, price: { kind: 'none', why: 'no price' } })
    expect(of('eave')).toMatchObject({
      amount: null,
      price: { kind: 'none', why: 'no price: "eave" is priced per square, the line is per ft' },
    })
  })

  it('count the lines without a price, and label the subtotal by it', () => {
    const totals = replacementOf({}, book)
    expect(totals.without).toBe(5)
    const priced = pricedOf({}, book)
    expect(subtotalWords(priced)).toBe(
      'Subtotal of the lines with a price. Replacement: of the 3 lines with a price; 5 have none.',
    )
    expect(totalWords(priced)).toBe('Total of the lines with a price')
    // 15,921.10 + 366.66 + 2,151.68
    expect(totals.subtotal && decimalText(totals.subtotal)).toBe('18439.44')
  })

  it('give no total at all where no line has a price', () => {
    expect(replacementOf({ percentages: [percentage('10', 'lines')] }, null)).toMatchObject({
      subtotal: null,
      total: null,
      percents: [],
    })
  })

  it('are linked by a person to any code, or to none', () => {
    const links = [
      { key: 'underlayment', code: 'covering' },
      { key: 'ridge', code: null },
    ]
    expect(amounts({ links }, book)).toMatchObject({ underlayment: '15921.10', ridge: null })
  })

  it('leave a line out of the sum that was left out of the bid', () => {
    const changes = [{ bid: 'replacement' as const, key: 'covering', leftOutBecause: 'Owner’s stock.', byHand: null }]
    const totals = replacementOf({ changes }, book)
    expect(totals.subtotal && decimalText(totals.subtotal)).toBe('2518.34')
  })

  it('add percentages as lines of their own, of the lines or of all before', () => {
    const percentages = [percentage('10', 'lines'), percentage('7.25', 'so-far')]
    const totals = replacementOf({ percentages }, book)
    // 1,843.944 -> 1,843.94; (18,439.44 + 1,843.94) x 7.25 % = 1,470.54505 -> 1,470.55
    expect(totals.percents.map(({ amount }) => decimalText(amount))).toEqual(['1843.94', '1470.55'])
    expect(totals.total && decimalText(totals.total)).toBe('21753.93')
  })

  it('are rounded to the smallest unit that the currency has (ISO 4217: JPY none, KWD three)', () => {
    expect(amounts({ currency: 'JPY' }, book)).toMatchObject({ hip: '2152' })
    expect(amounts({ currency: 'KWD' }, book)).toMatchObject({ hip: '2151.675' })
    expect(['USD', 'JPY', 'KWD'].map(currencyDigits)).toEqual([2, 0, 3])
    expect(['USD', 'EUR', 'XQX', 'usd'].map(isCurrency)).toEqual([true, true, false, false])
  })
})

function percentage(percent: string, of: 'lines' | 'so-far') {
  return { id: `${percent}-${of}`, name: 'Overhead', percent, of }
}

const figure = (most: number) =>
  fc
    .tuple(fc.integer({ min: 0, max: most }), fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 1, max: 4 }))
    .map(([whole, fraction, places]) => `${whole}.${String(fraction).padStart(4, '0').slice(0, places)}`)

describe('totals', () => {
  it('equal the sum of what is printed, and each amount the exact product rounded once', () => {
    const rows = fc.array(fc.tuple(figure(99_999), figure(99_999)), { minLength: 1, maxLength: 30 })
    const percents = fc.array(fc.tuple(figure(40), fc.constantFrom('lines' as const, 'so-far' as const)), {
      maxLength: 4,
    })
    fc.assert(
      fc.property(rows, percents, (lines, shares) => {
        const own = lines.map(([quantity], i) => ({
          id: `${i}`,
          words: 'Work',
          unit: 'each' as const,
          repair: null,
          replacement: quantity,
          source: 'test',
        }))
        const book = bookOf(lines.map(([, price], i) => [`own-${i}`, 'each', price] as const))
        const choices = scopeSchema.parse({
          own,
          percentages: shares.map(([percent, of], i) => ({ id: `${i}`, name: 'Share', percent, of })),
        })
        const empty = { ...source, facets: [] }
        const { replacement } = priceScope(buildScope(empty, choices), { choices, book }).bids
        const printed = replacement.lines.map(({ amount }) => (amount === null ? '' : decimalText(amount)))
        const exact = lines.map(([quantity, price]) => centsOf(quantity, price))
        expect(printed).toEqual(exact)
        const all = [...printed, ...replacement.percents.map(({ amount }) => decimalText(amount))]
        const cents = all.reduce((sum, text) => sum + BigInt(text.replace('.', '')), 0n)
        expect(replacement.total && decimalText(replacement.total).replace('.', '')).toBe(
          cents.toString().padStart(3, '0'),
        )
        expect(sumOf(all.map(readDecimal)).places).toBe(2)
      }),
      { numRuns: 200 },
    )
  })
})

/** The product in whole ten-thousandths of ten-thousandths, rounded to cents by whole numbers alone: a way of its own. */
function centsOf(quantity: string, price: string): string {
  const at4 = (text: string) => {
    const [whole = '', fraction = ''] = text.split('.')
    return BigInt(whole + fraction.padEnd(4, '0'))
  }
  const cents = (at4(quantity) * at4(price) * 2n + 1_000_000n) / 2_000_000n
  const digits = cents.toString().padStart(3, '0')
  return `${digits.slice(0, -2)}.${digits.slice(-2)}`
}
