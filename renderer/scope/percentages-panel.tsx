import { isCurrency } from '../../app/scope/currency.ts'
import type { Percentage } from '../../app/scope/scope-record.ts'
import { typedDecimal } from '../../app/scope/typed-decimal.ts'
import { KeptText } from '../field-tests/kept-text.tsx'
import { newLineId } from '../field-tests/new-line-id.ts'
import { Button } from '../ui/button.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

/** The currency of the prices, and percentages that are added to each bid as lines of their own. */
export function PercentagesPanel({ scope, save }: ScopeState) {
  const { currency, percentages } = scope.choices
  const put = (changed: Percentage) =>
    void save({ percentages: percentages.map((one) => (one.id === changed.id ? changed : one)) })
  return (
    <>
      <div className={styles['currency']}>
        <KeptText
          label="Currency (ISO 4217)"
          value={currency}
          faultOf={(text) =>
            isCurrency(text.trim().toUpperCase()) ? null : 'Type the three letters of a currency, such as USD.'
          }
          onChange={(text) => void save({ currency: text.trim().toUpperCase() })}
        />
      </div>
      {percentages.length === 0 ? (
        <p className={styles['quiet']}>
          Nothing is added to the lines. Overhead, profit or tax are added only as percentages that you type, each
          printed as a line of its own.
        </p>
      ) : (
        percentages.map((one, i) => (
          <PercentageLine
            key={one.id}
            line={i + 1}
            percentage={one}
            onChange={put}
            onRemove={() => void save({ percentages: percentages.filter(({ id }) => id !== one.id) })}
          />
        ))
      )}
      <p>
        <Button
          isDisabled={percentages.length >= 10}
          onPress={() =>
            void save({
              percentages: [...percentages, { id: newLineId(), name: 'Overhead', percent: '10', of: 'lines' }],
            })
          }
        >
          Add a percentage
        </Button>
      </p>
    </>
  )
}

interface PercentageLineProps {
  readonly line: number
  readonly percentage: Percentage
  readonly onChange: (percentage: Percentage) => void
  readonly onRemove: () => void
}

function PercentageLine({ line, percentage, onChange, onRemove }: PercentageLineProps) {
  const set = (changed: Partial<Percentage>) => onChange({ ...percentage, ...changed })
  return (
    <div className={styles['percentage']}>
      <KeptText
        label={`Name, percentage ${line}`}
        value={percentage.name}
        faultOf={(text) => (text.trim() === '' ? 'Name it, such as overhead or sales tax.' : null)}
        onChange={(name) => set({ name: name.trim() })}
      />
      <KeptText
        label={`Percent, percentage ${line}`}
        value={percentage.percent}
        faultOf={(text) => {
          const typed = typedDecimal(text)
          if (!typed.ok) return typed.fault
          return typed.text === null ? 'Type the percentage.' : null
        }}
        onChange={(text) => {
          const typed = typedDecimal(text)
          if (typed.ok && typed.text !== null) set({ percent: typed.text })
        }}
      />
      <SelectField
        label={`Of, percentage ${line}`}
        options={[
          { key: 'lines', label: 'the lines alone' },
          { key: 'so-far', label: 'all above' },
        ]}
        value={percentage.of}
        onChange={(of) => set({ of: of ?? 'lines' })}
      />
      <IconButton icon="close" label={`Remove percentage ${line}`} onPress={onRemove} />
    </div>
  )
}
