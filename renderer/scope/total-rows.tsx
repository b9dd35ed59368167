import { decimalWords, type Decimal } from '../../app/scope/decimal.ts'
import { coverageWords, type BidTotals, type PricedScope } from '../../app/scope/price-scope.ts'
import { bids } from '../../app/scope/scope-record.ts'
import styles from './scope.module.css'

/** Subtotals, percentages and totals of both bids: each the sum of what is shown above it. */
export function TotalRows({ priced }: { priced: PricedScope }) {
  const { repair, replacement } = priced.bids
  const isPartly = repair.without + replacement.without > 0
  const percents = repair.percents.length > 0 ? repair.percents : replacement.percents
  return (
    <tfoot>
      <TotalRow
        label="Subtotal"
        priced={priced}
        pick={({ subtotal }) => subtotal}
        note={(totals) => (totals.subtotal === null ? '' : coverageWords(totals))}
      />
      {percents.map(({ percentage }, i) => (
        <TotalRow
          key={percentage.id}
          label={`${percentage.name}, ${percentage.percent} % of ${percentage.of === 'lines' ? 'the subtotal' : 'all above'}`}
          priced={priced}
          pick={(totals) => totals.percents[i]?.amount ?? null}
        />
      ))}
      <TotalRow
        label={isPartly ? 'Total of the lines with a price' : 'Total'}
        priced={priced}
        pick={({ total }) => total}
      />
    </tfoot>
  )
}

interface TotalRowProps {
  readonly label: string
  readonly priced: PricedScope
  readonly pick: (totals: BidTotals) => Decimal | null
  readonly note?: (totals: BidTotals) => string
}

function TotalRow({ label, priced, pick, note }: TotalRowProps) {
  return (
    <tr className={styles['total']}>
      <th scope="row" colSpan={5}>
        {label}
      </th>
      {bids.map((bid) => {
        const totals = priced.bids[bid]
        const sum = pick(totals)
        const words = note?.(totals) ?? ''
        return (
          <td key={bid} className={styles['end']}>
            {sum === null ? <span className={styles['quiet']}>no price</span> : decimalWords(sum)}
            {words === '' ? null : <div className={styles['quiet']}>{words}</div>}
          </td>
        )
      })}
    </tr>
  )
}
