import type { BuiltScope } from './build-scope.ts'
import { currencyDigits } from './currency.ts'
import { percentOf, plus, readDecimal, rounded, sumOf, times, type Decimal } from './decimal.ts'
import type { PriceBook, PriceRow } from './price-book.ts'
import type { ScopeLine } from './scope-line.ts'
import { bidLabels, bids, type Bid, type JobScope, type Percentage, type Scope } from './scope-record.ts'
import { scopeUnits, type ScopeUnit } from './units.ts'

/** The price that a line has, or why it has none. */
export type LinePrice =
  | { readonly kind: 'priced'; readonly row: PriceRow; readonly isByKey: boolean }
  | { readonly kind: 'none'; readonly why: string }

/** A line of a bid with its price and amount. */
export interface PricedLine {
  readonly line: ScopeLine
  readonly price: LinePrice
  /** Quantity as printed x unit price, rounded to the currency's smallest unit; null without one of them, never 0 for want of it. */
  readonly amount: Decimal | null
}

/** A percentage as a line of its own. */
export interface PercentLine {
  readonly percentage: Percentage
  readonly of: Decimal
  readonly amount: Decimal
}

/** What a bid comes to: sums of what is printed. */
export interface BidTotals {
  readonly lines: readonly PricedLine[]
  /** Lines that stand in the bid without an amount: no price, or no quantity yet. */
  readonly without: number
  /** Null where no line has an amount. */
  readonly subtotal: Decimal | null
  readonly percents: readonly PercentLine[]
  readonly total: Decimal | null
}

export interface PricedScope {
  readonly currency: string
  readonly digits: number
  readonly bids: Readonly<Record<Bid, BidTotals>>
}

/** How money is rounded, in a sentence for screens and packets. */
export function moneyRuleWords({ currency, digits }: Pick<PricedScope, 'currency' | 'digits'>): string {
  const unit = digits === 0 ? `whole ${currency}` : `${currency} ${`0.${'1'.padStart(digits, '0')}`}`
  return `Each amount is the quantity as printed x the unit price, rounded to ${unit}; a half goes away from zero. Each percentage is rounded the same way. Totals are sums of the printed amounts.`
}

/** Puts the book's prices on both bids. Whole numbers of the smallest unit throughout: nothing is added in binary fractions. */
export function priceScope(built: BuiltScope, { choices, book }: JobScope): PricedScope {
  const digits = currencyDigits(choices.currency)
  const totals = (bid: Bid): BidTotals => {
    const lines = built[bid].map((line) => pricedLine(line, { choices, book, digits }))
    const standing = lines.filter(({ line }) => line.leftOutBecause === null)
    const amounts = standing.flatMap(({ amount }) => (amount === null ? [] : [amount]))
    const subtotal = amounts.length === 0 ? null : rounded(sumOf(amounts), digits)
    const percents = subtotal === null ? [] : percentLines(subtotal, choices.percentages, digits)
    return {
      lines,
      without: standing.length - amounts.length,
      subtotal,
      percents,
      total: subtotal === null ? null : sumOf([subtotal, ...percents.map(({ amount }) => amount)]),
    }
  }
  return { currency: choices.currency, digits, bids: { repair: totals('repair'), replacement: totals('replacement') } }
}

/** The price of a line: the one that a person linked, else the row whose code is the line's own key. */
export function priceOfLine(
  { key, unit }: { readonly key: string; readonly unit: ScopeUnit },
  choices: Pick<Scope, 'links'>,
  book: PriceBook | null,
): LinePrice {
  if (book === null) return { kind: 'none', why: 'no price' }
  const link = choices.links.find((one) => one.key === key)
  if (link !== undefined && link.code === null) return { kind: 'none', why: 'no price, by choice' }
  const code = (link?.code ?? key).toLowerCase()
  const row = book.rows.find((one) => one.code.toLowerCase() === code)
  if (row === undefined) {
    return { kind: 'none', why: link === undefined ? 'no price' : `no price: the book has no "${link.code}"` }
  }
  if (row.unit !== unit) {
    const [given, needed] = [scopeUnits[row.unit].per, scopeUnits[unit].per]
    return { kind: 'none', why: `no price: "${row.code}" is priced per ${given}, the line is per ${needed}` }
  }
  return { kind: 'priced', row, isByKey: link === undefined }
}

function pricedLine(line: ScopeLine, { choices, book, digits }: JobScope & { readonly digits: number }): PricedLine {
  const price = priceOfLine(line, choices, book)
  const { quantity } = line
  if (price.kind === 'none' || quantity === null || line.leftOutBecause !== null) return { line, price, amount: null }
  return { line, price, amount: rounded(times(quantity, readDecimal(price.row.price)), digits) }
}

function percentLines(subtotal: Decimal, percentages: readonly Percentage[], digits: number): readonly PercentLine[] {
  let soFar = subtotal
  return percentages.map((percentage) => {
    const of = percentage.of === 'lines' ? subtotal : soFar
    const amount = rounded(percentOf(readDecimal(percentage.percent), of), digits)
    soFar = plus(soFar, amount)
    return { percentage, of, amount }
  })
}

/** "Subtotal", or what it is the subtotal of where lines have no price: "Repair: of the 7 lines with a price; 2 have none." */
export function subtotalWords({ bids: totals }: PricedScope): string {
  const partly = bids.flatMap((bid) => {
    const words = partWords(totals[bid])
    return words === null ? [] : [`${bidLabels[bid]}: ${words}.`]
  })
  return partly.length === 0 ? 'Subtotal' : `Subtotal of the lines with a price. ${partly.join(' ')}`
}

/** "Total", or "Total of the lines with a price" where lines of either bid have none. */
export function totalWords({ bids: totals }: PricedScope): string {
  return bids.every((bid) => totals[bid].without === 0) ? 'Total' : 'Total of the lines with a price'
}

function partWords({ lines, without, subtotal }: BidTotals): string | null {
  if (without === 0 || subtotal === null) return null
  const priced = lines.filter(({ amount }) => amount !== null).length
  return `of the ${priced === 1 ? 'one line' : `${priced} lines`} with a price; ${without} ${without === 1 ? 'has' : 'have'} none`
}
