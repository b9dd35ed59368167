import { decimalText, decimalWords, readDecimal, type Decimal } from '../../../scope/decimal.ts'
import { subtotalWords, totalWords, type BidTotals, type PricedScope } from '../../../scope/price-scope.ts'
import { bids, type Bid } from '../../../scope/scope-record.ts'
import { scopeUnits } from '../../../scope/units.ts'
import type { TableBlock, Text } from '../../document.ts'
import { plain } from '../../text.ts'
import { column } from '../section.ts'
import { anchorOfLine, type NumberedRow } from './numbered-rows.ts'

type Row = TableBlock['rows'][number]

/** Unit prices and amounts of both bids, then subtotals, percentages and totals: each the sum of what is printed above it. */
export function priceTable(rows: readonly NumberedRow[], priced: PricedScope): TableBlock {
  return {
    kind: 'table',
    summary: `Unit prices and amounts of both bids in ${priced.currency}, with their totals`,
    columns: [
      column('No.', 0.6, 'end'),
      column('Work', 4.6),
      column('Unit price', 2.4, 'end'),
      column('Repair', 2, 'end'),
      column('Replacement', 2, 'end'),
    ],
    rows: [...rows.map((one) => lineRow(one, priced)), ...totalRows(priced)],
  }
}

function lineRow({ number, words, row }: NumberedRow, priced: PricedScope): Row {
  const of = (bid: Bid) => priced.bids[bid].lines.find(({ line }) => line.key === row.key)
  const price = (of('repair') ?? of('replacement'))?.price
  return {
    cells: [
      [{ text: String(number), link: anchorOfLine(number) }],
      plain(words),
      price?.kind === 'priced'
        ? plain(`${decimalWords(readDecimal(price.row.price))} per ${scopeUnits[price.row.unit].per}`)
        : [{ text: price?.why ?? '', style: 'quiet' }],
      ...bids.map((bid): Text => {
        const found = of(bid)
        if (found === undefined) return [{ text: '-', style: 'quiet' }]
        if (found.line.leftOutBecause !== null) return [{ text: 'left out', style: 'quiet' }]
        if (found.amount !== null) return plain(decimalWords(found.amount))
        return [{ text: found.line.quantity === null ? 'count first' : 'no price', style: 'quiet' }]
      }),
    ],
  }
}

function totalRows(priced: PricedScope): readonly Row[] {
  const { bids: totals } = priced
  const percents = totals.repair.percents.length > 0 ? totals.repair.percents : totals.replacement.percents
  const sumRow = (label: string, pick: (bid: BidTotals) => Decimal | null): Row => ({
    total: true,
    cells: [
      plain(''),
      plain(label),
      plain(''),
      ...bids.map((bid): Text => {
        const sum = pick(totals[bid])
        return sum === null ? [{ text: 'no price', style: 'quiet' }] : plain(decimalWords(sum))
      }),
    ],
  })
  return [
    sumRow(subtotalWords(priced), ({ subtotal }) => subtotal),
    ...percents.map(({ percentage }, i) =>
      sumRow(
        `${percentage.name}, ${decimalText(readDecimal(percentage.percent))} % of ${percentage.of === 'lines' ? 'the subtotal' : 'all above'}`,
        (bid) => bid.percents[i]?.amount ?? null,
      ),
    ),
    sumRow(totalWords(priced), ({ total }) => total),
  ]
}
