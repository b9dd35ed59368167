import { decimalWords, type Decimal } from '../../app/scope/decimal.ts'
import { subtotalWords, totalWords, type BidTotals, type PricedScope } from '../../app/scope/price-scope.ts'
import { bids } from '../../app/scope/scope-record.ts'
import styles from './scope.module.css'

/** Subtotals, percentages and totals of both bids: each the sum of what is shown above it. */
export function TotalRows({ priced }: { priced: PricedScope }) {
  const { repair, replacement } = priced.bids
  const percents = repair.percents.length > 0 ? repair.percents : replacement.percents
  return (
    <tfoot>
      <TotalRow label={subtotalWords(priced)} priced={priced} pick={({ subtotal }) => subtotal} />
      {percents.map(({ percentage }, i) => (
        <TotalRow
          key={percentage.id}
          label={`${percentage.name}, ${percentage.percent} % of ${percentage.of === 'lines' ? 'the subtotal' : 'all above'}`}
          priced={priced}
          pick={(totals) => totals.percents[i]?.amount ?? null}
        />
      ))}
      <TotalRow label={totalWords(priced)} priced={priced} pick={({ total }) => total} />
    </tfoot>
  )
}

interface TotalRowProps {
  readonly label: string
  readonly priced: PricedScope
  readonly pick: (totals: BidTotals) => Decimal | null
}

function TotalRow({ label, priced, pick }: TotalRowProps) {
  return (
    <tr className={styles['total']}>
      <th scope="row" colSpan={5}>
        {label}
      </th>
      {bids.map((bid) => {
        const sum = pick(priced.bids[bid])
        return (
          <td key={bid} className={styles['end']}>
            {sum === null ? <span className={styles['quiet']}>no price</span> : decimalWords(sum)}
          </td>
        )
      })}
    </tr>
  )
}
