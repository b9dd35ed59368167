import { decimalText, decimalWords } from '../../app/scope/decimal.ts'
import { withLineChange } from '../../app/scope/scope-changes.ts'
import type { ScopeLine } from '../../app/scope/scope-line.ts'
import { bidLabels } from '../../app/scope/scope-record.ts'
import { typedDecimal } from '../../app/scope/typed-decimal.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { withOwnQuantity } from './own-lines.ts'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

/** A quantity edited in place: a figure typed goes before the computed one, an emptied field gives that back. */
export function QuantityCell({ line, state }: { line: ScopeLine | null; state: ScopeState }) {
  if (line === null) return <span className={styles['quiet']}>–</span>
  if (line.leftOutBecause !== null) return <span className={styles['quiet']}>left out: {line.leftOutBecause}</span>
  const shown = line.quantity === null ? '' : decimalText(line.quantity)
  return (
    <div className={styles['quantity']}>
      <KeptText
        label={`${bidLabels[line.bid]} quantity of ${line.words}`}
        hideLabel
        value={shown}
        placeholder={line.missing === null ? '' : 'count first'}
        faultOf={faultOf}
        onChange={(text) => keep(line, text, state)}
      />
      {line.byHand === null ? null : (
        <span className={styles['quiet']}>
          by hand; computed {line.computed === null ? 'none' : decimalWords(line.computed)}
        </span>
      )}
    </div>
  )
}

function faultOf(text: string): string | null {
  const typed = typedDecimal(text)
  return typed.ok ? null : typed.fault
}

function keep(line: ScopeLine, text: string, { scope, save }: ScopeState): void {
  const typed = typedDecimal(text)
  if (!typed.ok) return
  if (line.isOwn) {
    void save({ own: withOwnQuantity(scope.choices.own, line, typed.text) })
    return
  }
  const isComputed = line.computed !== null && typed.text === decimalText(line.computed)
  const byHand = typed.text === null || isComputed ? null : { quantity: typed.text, why: line.byHand?.why ?? '' }
  void save({ changes: withLineChange(scope.choices.changes, line, { byHand }) })
}
