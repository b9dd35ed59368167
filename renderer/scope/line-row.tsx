import type { ScopeRow } from '../../app/scope/build-scope.ts'
import { decimalWords, readDecimal } from '../../app/scope/decimal.ts'
import type { PricedLine } from '../../app/scope/price-scope.ts'
import { bidLabels, bids, type Bid } from '../../app/scope/scope-record.ts'
import { scopeUnits } from '../../app/scope/units.ts'
import { LineDetails } from './line-details.tsx'
import { QuantityCell } from './quantity-cell.tsx'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

interface LineRowProps {
  readonly row: ScopeRow
  readonly state: ScopeState
  readonly isOpen: boolean
  readonly onOpen: () => void
}

/** One line: both quantities to edit, its price and amounts; each figure opens the working below. */
export function LineRow({ row, state, isOpen, onOpen }: LineRowProps) {
  const first = row.repair ?? row.replacement
  if (first === null) return null
  const of = (bid: Bid) => state.priced.bids[bid].lines.find(({ line }) => line.key === row.key)
  const price = (of('repair') ?? of('replacement'))?.price
  const figure = (words: string, called: string) => (
    <button
      type="button"
      className={styles['figure']}
      aria-expanded={isOpen}
      aria-label={`${called} of ${first.words}: ${words}. Show working`}
      onClick={onOpen}
    >
      {words}
    </button>
  )
  return (
    <>
      <tr data-key={row.key}>
        <th scope="row" className={styles['work']}>
          <button type="button" className={styles['figure']} aria-expanded={isOpen} onClick={onOpen}>
            <span aria-hidden="true">{isOpen ? '▾' : '▸'}</span> {first.words}
          </button>
        </th>
        <td>{scopeUnits[first.unit].words}</td>
        {bids.map((bid) => (
          <td key={bid}>
            <QuantityCell line={row[bid]} state={state} />
          </td>
        ))}
        <td className={styles['end']}>
          {figure(price?.kind === 'priced' ? decimalWords(readDecimal(price.row.price)) : 'no price', 'Unit price')}
        </td>
        {bids.map((bid) => (
          <td key={bid} className={styles['end']}>
            {amountOf(of(bid), (words) => figure(words, `${bidLabels[bid]} amount`))}
          </td>
        ))}
      </tr>
      {isOpen ? (
        <tr>
          <td colSpan={7} className={styles['open']}>
            <LineDetails row={row} state={state} />
          </td>
        </tr>
      ) : null}
    </>
  )
}

function amountOf(found: PricedLine | undefined, figure: (words: string) => React.ReactNode): React.ReactNode {
  if (found === undefined) return null
  if (found.amount !== null) return figure(decimalWords(found.amount))
  if (found.line.leftOutBecause !== null) return <span className={styles['quiet']}>left out</span>
  return <span className={styles['quiet']}>{found.line.quantity === null ? 'count first' : 'no price'}</span>
}
