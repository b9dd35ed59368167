import type { DecimalMark } from './price-book.ts'

/** A price above this for one unit is taken for a slip. */
export const MOST_FOR_ONE = 1_000_000

/** A price cell, read: the stored decimal, nothing at all, or a sentence that says what is wrong. */
export type ReadPrice =
  | { readonly kind: 'price'; readonly price: string }
  | { readonly kind: 'none' }
  | { readonly kind: 'wrong'; readonly sentence: string }

/** Words and signs of money around a figure: "$", "€", "USD", "US$". */
const MONEY = /(?:\p{Sc}|\b[A-Z]{2,3}\b\$?|\bUS\$)/gu

/** What a cell shows of the mark before its decimals: one of them, both as possible, or neither. */
export function markShown(cell: string): DecimalMark | 'either' | null {
  const figure = bareFigure(cell).replace(/^[-(]/, '')
  const last = /[.,](?=[^.,]*$)/.exec(figure)
  if (last === null) return null
  const mark = last[0] === '.' ? 'point' : 'comma'
  const after = figure.slice(last.index + 1)
  const marks = figure.match(/[.,]/g) ?? []
  if (new Set(marks).size === 2) return mark
  // Twice the same mark groups thousands, so the other one stands before decimals.
  if (marks.length > 1) return mark === 'point' ? 'comma' : 'point'
  if (after.length !== 3) return mark
  // "0.125" can't be a group of thousands; "1.125" can.
  return /^0?[.,]/.test(figure) ? mark : 'either'
}

/** Reads a price with the given mark before its decimals; thousands may be grouped by the other mark, a space or an apostrophe. */
export function readPrice(cell: string, mark: DecimalMark): ReadPrice {
  if (cell.trim() === '') return { kind: 'none' }
  const figure = bareFigure(cell)
  if (/^-|-$|^\(.*\)$/.test(figure)) return wrong(`A price cannot be negative: "${cell.trim()}".`)
  const [point, group] = mark === 'point' ? ['.', ','] : [',', '.']
  const whole = String.raw`\d{1,3}(?:[${group}]\d{3})+|\d+`
  const match = new RegExp(String.raw`^(${whole})?(?:[${point}](\d+))?$`).exec(figure)
  const [, digits = '', fraction = ''] = match ?? []
  if (match === null || digits + fraction === '') {
    return wrong(`"${cell.trim()}" is not a price with a decimal ${mark}.`)
  }
  return checkedPrice(
    cell,
    digits.replaceAll(group, ''),
    fraction.replace(/0+$/, '').padEnd(Math.min(2, fraction.length), '0'),
  )
}

function checkedPrice(cell: string, digits: string, fraction: string): ReadPrice {
  const whole = digits.replace(/^0+(?=\d)/, '') || '0'
  if (fraction.length > 4) return wrong(`"${cell.trim()}" has more than four places.`)
  if (whole.length > 9 || Number(whole) > MOST_FOR_ONE) {
    return wrong(`"${cell.trim()}" for one unit is more than ${MOST_FOR_ONE.toLocaleString('en-US')}: look for a slip.`)
  }
  if (/^0*$/.test(whole + fraction)) return wrong('A price of 0 is no price: leave the cell empty, or give the price.')
  return { kind: 'price', price: fraction === '' ? whole : `${whole}.${fraction}` }
}

function bareFigure(cell: string): string {
  return cell.replaceAll(MONEY, '').replaceAll(/[\s\u00A0\u202F'’]/g, '')
}

function wrong(sentence: string): ReadPrice {
  return { kind: 'wrong', sentence }
}
