import { useState } from 'react'
import { scopeUnits } from '../../app/scope/units.ts'
import { decimalWords, readDecimal } from '../../app/scope/decimal.ts'
import { useEdit } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { PriceFileDialog } from './price-file-dialog.tsx'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

/** The contractor's own prices in this job: the file they came from, every row, and the lines that each prices. */
export function PricesPane(state: ScopeState) {
  const { book } = state.scope
  const edit = useEdit()
  const [isTaking, setTaking] = useState(false)
  const take = (
    <Button look="main" onPress={() => setTaking(true)}>
      {book === null ? 'Bring a price book in…' : 'Bring another one in…'}
    </Button>
  )
  return (
    <>
      {book === null ? (
        <EmptyState
          title="No price book is in this job"
          sentence="Save your own prices as CSV with the columns code, description, unit and unit price. A row whose code is a line’s key, such as ridge or covering, prices that line by itself; others are chosen line by line."
        >
          {take}
        </EmptyState>
      ) : (
        <>
          <p className={styles['buttons']}>
            {take}
            <Button onPress={() => void edit('scope.remove-prices', {})}>Remove these prices</Button>
          </p>
          <p className={styles['quiet']}>
            {countWords(book.rows.length, 'price')} from {book.fileName}
            {book.leftOut === 0 ? '' : `, ${countWords(book.leftOut, 'row')} left out`}; SHA-256{' '}
            <code>{book.sha256.slice(0, 12)}</code>. The file itself stays where it is.
          </p>
          <BookTable state={state} />
        </>
      )}
      <LineKeys built={state.built} />
      {isTaking ? <PriceFileDialog onClose={() => setTaking(false)} /> : null}
    </>
  )
}

function BookTable({ state }: { state: ScopeState }) {
  const { scope, priced } = state
  const lines = [...priced.bids.repair.lines, ...priced.bids.replacement.lines]
  return (
    <div className={styles['scroll']}>
      <table className={styles['lines']} aria-label="Price book">
        <thead>
          <tr>
            <th scope="col">Code</th>
            <th scope="col">Description</th>
            <th scope="col">Unit</th>
            <th scope="col" className={styles['end']}>
              Unit price, {priced.currency}
            </th>
            <th scope="col">Prices these lines</th>
          </tr>
        </thead>
        <tbody>
          {scope.book?.rows.map(({ line, code, description, unit, price }) => {
            const used = lines.filter((one) => one.price.kind === 'priced' && one.price.row.line === line)
            return (
              <tr key={line}>
                <td>{code}</td>
                <td>{description}</td>
                <td>{scopeUnits[unit].per}</td>
                <td className={styles['end']}>{decimalWords(readDecimal(price))}</td>
                <td className={styles['quiet']}>{[...new Set(used.map((one) => one.line.words))].join('; ')}</td>
              </tr>
            )
          })}
        </tbody>
      </table>
    </div>
  )
}

/** What a price book calls the lines of this job, for whoever fills one in. */
function LineKeys({ built }: Pick<ScopeState, 'built'>) {
  const rows = built.rows.flatMap(({ key, repair, replacement }) => {
    const line = repair ?? replacement
    return line === null ? [] : [{ key, words: line.words, unit: scopeUnits[line.unit].per }]
  })
  if (rows.length === 0) return null
  return (
    <details className={styles['keys']}>
      <summary>Codes by which lines of this job take their price by themselves</summary>
      <table className={styles['lines']} aria-label="Codes of lines">
        <thead>
          <tr>
            <th scope="col">Code</th>
            <th scope="col">Work</th>
            <th scope="col">Priced per</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, words, unit }) => (
            <tr key={key}>
              <td>
                <code>{key}</code>
              </td>
              <td>{words}</td>
              <td>{unit}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  )
}
