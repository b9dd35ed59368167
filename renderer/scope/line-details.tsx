import type { ScopeRow } from '../../app/scope/build-scope.ts'
import { priceOfLine } from '../../app/scope/price-scope.ts'
import { withLink } from '../../app/scope/scope-changes.ts'
import type { ScopeLine } from '../../app/scope/scope-line.ts'
import { bids } from '../../app/scope/scope-record.ts'
import { scopeUnits } from '../../app/scope/units.ts'
import { Button } from '../ui/button.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { BidDetails } from './bid-details.tsx'
import { ownLineOf } from './own-lines.ts'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

/** What stands behind one line: its working in each bid, its price, and what can be changed of it. */
export function LineDetails({ row, state }: { row: ScopeRow; state: ScopeState }) {
  const { scope, save } = state
  const lines = bids.flatMap((bid) => row[bid] ?? [])
  const [first] = lines
  if (first === undefined) return null
  const own = ownLineOf(scope.choices.own, row.key)
  return (
    <div className={styles['details']}>
      {lines.map((line) => (
        <BidDetails key={line.bid} line={line} state={state} />
      ))}
      <div className={styles['bid']}>
        <PriceChoice line={first} state={state} />
        {own === null ? null : (
          <Button look="danger" onPress={() => void save({ own: scope.choices.own.filter(({ id }) => id !== own.id) })}>
            Remove this line
          </Button>
        )}
      </div>
    </div>
  )
}

function PriceChoice({ line, state }: { line: ScopeLine; state: ScopeState }) {
  const { scope, save } = state
  const { book, choices } = scope
  if (book === null) return <p className={styles['quiet']}>Bring a price book in to give this line a price.</p>
  const { key, unit } = line
  const rows = book.rows.filter((row) => row.unit === unit)
  const price = priceOfLine(line, choices, book)
  const isLinked = choices.links.some((one) => one.key === key)
  return (
    <>
      <SelectField
        label={`Price per ${scopeUnits[unit].per}`}
        options={rows.map((row) => ({
          key: row.code,
          label: `${row.code}: ${row.price}${row.description === '' ? '' : `, ${row.description}`}`,
        }))}
        value={price.kind === 'priced' ? price.row.code : null}
        emptyLabel="No price"
        onChange={(code) => void save({ links: withLink(choices.links, key, { code }) })}
        help={
          price.kind === 'priced'
            ? `${price.row.description === '' ? 'Row' : `${price.row.description}; row`} on line ${price.row.line} of ${book.fileName}${price.isByKey ? ', by its code' : ', chosen by hand'}.`
            : `${price.why}. A row with the code "${key}" is taken by itself.`
        }
      />
      {isLinked ? (
        <Button look="quiet" onPress={() => void save({ links: withLink(choices.links, key, 'by-key') })}>
          Take the price by code again
        </Button>
      ) : null}
    </>
  )
}
