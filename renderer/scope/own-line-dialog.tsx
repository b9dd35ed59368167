import { useState } from 'react'
import { scopeUnitSchema, scopeUnits, type ScopeUnit } from '../../app/scope/units.ts'
import { typedDecimal } from '../../app/scope/typed-decimal.ts'
import { newLineId } from '../field-tests/new-line-id.ts'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './scope.module.css'
import type { ScopeState } from './use-scope.ts'

const units = scopeUnitSchema.options.map((key) => ({ key, label: scopeUnits[key].words }))
const empty = { words: '', repair: '', replacement: '', source: '' }

/** A line that no rule gives, with its source. */
export function OwnLineDialog({ state, onClose }: { state: ScopeState; onClose: () => void }) {
  const [typed, setTyped] = useState(empty)
  const [unit, setUnit] = useState<ScopeUnit>('each')
  const [faults, setFaults] = useState<Partial<typeof empty>>({})
  const set = (key: keyof typeof empty) => (value: string) => setTyped({ ...typed, [key]: value })
  async function keep() {
    const [repair, replacement] = [typedDecimal(typed.repair), typedDecimal(typed.replacement)]
    const found = faultsOf(typed)
    setFaults(found)
    if (Object.keys(found).length > 0 || !repair.ok || !replacement.ok) return
    const line = {
      id: newLineId(),
      words: typed.words.trim(),
      unit,
      repair: repair.text,
      replacement: replacement.text,
      source: typed.source.trim(),
    }
    if (await state.save({ own: [...state.scope.choices.own, line] })) onClose()
  }
  const field = (key: keyof typeof empty, label: string, help?: string) => (
    <TextField
      label={label}
      value={typed[key]}
      onChange={set(key)}
      error={faults[key] ?? null}
      {...(help === undefined ? {} : { help })}
    />
  )
  return (
    <Dialog
      title="Add a line"
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" onPress={() => void keep()}>
            Add the line
          </Button>
        </>
      }
    >
      <div className={styles['form']}>
        {field('words', 'Work')}
        <SelectField label="Unit" options={units} value={unit} onChange={(chosen) => setUnit(chosen ?? unit)} />
        {field('repair', 'Quantity in the repair', 'Leave empty where the bid does not have it.')}
        {field('replacement', 'Quantity in the replacement')}
        {field('source', 'Where the quantity comes from', 'A count, a measurement, a fee list: it is printed.')}
      </div>
    </Dialog>
  )
}

function faultsOf(typed: typeof empty): Partial<typeof empty> {
  const faults: Partial<typeof empty> = {}
  if (typed.words.trim() === '') faults.words = 'Say what the work is.'
  if (typed.source.trim() === '') faults.source = 'Say where the quantity comes from.'
  for (const key of ['repair', 'replacement'] as const) {
    const read = typedDecimal(typed[key])
    if (!read.ok) faults[key] = read.fault
  }
  if (typed.repair.trim() === '' && typed.replacement.trim() === '') {
    faults.repair = 'Give the quantity for one of the two bids at least.'
  }
  return faults
}
