import { findingLabel } from '../evidence/finding.ts'
import type { CaseFile } from '../evidence/case-file.ts'
import { edgeKindWords } from '../roof/edge-by-hand.ts'
import { buildScope } from '../scope/build-scope.ts'
import { decimalText, type Decimal } from '../scope/decimal.ts'
import { priceScope, type PricedLine } from '../scope/price-scope.ts'
import { bids } from '../scope/scope-record.ts'
import { scopeUnits } from '../scope/units.ts'
import { type Columns, type CsvTable, table } from './csv-table.ts'

/** scope.csv: every line of both bids with what it comes from, its price and its amount, then subtotals, percentages and totals. */
export function scopeCsv(caseFile: CaseFile): CsvTable {
  const priced = priceScope(buildScope(caseFile, caseFile.scope.choices), caseFile.scope)
  const records = bids.flatMap((bid): ScopeRecord[] => {
    const { lines, subtotal, percents, total } = priced.bids[bid]
    const sum = (words: string, amount: Decimal | null) => ({ bid, words, priced: null, amount })
    return [
      ...lines.map((one) => ({ bid, words: one.line.words, priced: one, amount: one.amount })),
      sum('Subtotal of the lines with a price', subtotal),
      ...percents.map(({ percentage, amount }) => sum(`${percentage.name}, ${percentage.percent} %`, amount)),
      sum('Total of the lines with a price', total),
    ]
  })
  return table('scope.csv', scopeColumns(caseFile, priced.currency), records)
}

interface ScopeRecord {
  readonly bid: string
  readonly words: string
  readonly priced: PricedLine | null
  readonly amount: Decimal | null
}

function scopeColumns({ findings, facets }: CaseFile, currency: string): Columns<ScopeRecord> {
  const findingNames = new Map(findings.map(({ id, number }) => [id, findingLabel(number)]))
  const letters = new Map(facets.map(({ id, letter }) => [id, letter]))
  const line = <T>(pick: (one: PricedLine['line']) => T, { priced }: ScopeRecord) =>
    priced === null ? null : pick(priced.line)
  return [
    ['bid', ({ bid }) => bid],
    ['line', (one) => line(({ key }) => key, one)],
    ['work', ({ words }) => words],
    ['quantity', (one) => line(({ quantity }) => text(quantity), one)],
    ['unit', (one) => line(({ unit }) => scopeUnits[unit].words, one)],
    ['computed', (one) => line(({ computed }) => text(computed), one)],
    ['by_hand', (one) => line(({ byHand }) => byHand?.why ?? '', one)],
    ['missing', (one) => line(({ missing }) => missing ?? '', one)],
    ['to_order', (one) => line(({ toOrder }) => toOrder ?? '', one)],
    ['left_out_because', (one) => line(({ leftOutBecause }) => leftOutBecause ?? '', one)],
    ['price_code', ({ priced }) => (priced?.price.kind === 'priced' ? priced.price.row.code : '')],
    ['unit_price', ({ priced }) => (priced?.price.kind === 'priced' ? priced.price.row.price : '')],
    [`amount_${currency.toLowerCase()}`, ({ amount }) => text(amount)],
    [
      'findings',
      (one) => line(({ traces }) => traces.findingIds.map((id) => findingNames.get(id) ?? '').join(' '), one),
    ],
    [
      'facets',
      (one) =>
        line(
          ({ traces }) =>
            facets
              .filter(({ id }) => traces.facetIds.includes(id))
              .map(({ letter }) => letter)
              .join(' '),
          one,
        ),
    ],
    [
      'edges',
      (one) =>
        line(
          ({ traces }) =>
            traces.edges
              .map(
                ({ kind, facetIds, trueLengthFt }) =>
                  `${edgeKindWords[kind]} ${facetIds.map((id) => letters.get(id) ?? '').join('/')} ${trueLengthFt.toFixed(4)} ft`,
              )
              .join('; '),
          one,
        ),
    ],
    ['working', (one) => line(({ working }) => working, one)],
    ['assumed', (one) => line(({ assumptions }) => assumptions.join(' '), one)],
    ['notes', (one) => line(({ notes }) => notes.join(' '), one)],
  ]
}

function text(decimal: Decimal | null): string {
  return decimal === null ? '' : decimalText(decimal)
}
