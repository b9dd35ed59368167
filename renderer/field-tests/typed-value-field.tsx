import { useEffect, useState } from 'react'
import { readForce } from '../../app/fieldtest/typed-force.ts'
import { readLift } from '../../app/fieldtest/typed-lift.ts'
import { figure } from '../../app/fieldtest/reading-words.ts'
import { Button } from '../ui/button.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './field-tests.module.css'

/** A lift or a force: the value in inches or pounds, and what was typed where that was another unit. */
export interface TypedValue {
  readonly value: number | null
  readonly typed: string
}

interface TypedValueFieldProps extends TypedValue {
  readonly what: 'lift' | 'force'
  readonly label: string
  readonly hideLabel?: boolean
  readonly onChange: (value: TypedValue) => void
}

/** A lift or force in whatever unit it is typed. Kilograms are taken over only when a person confirms the pounds. */
export function TypedValueField({ what, label, hideLabel = false, value, typed, onChange }: TypedValueFieldProps) {
  const shown = value === null ? '' : typed === '' ? figure(value) : typed
  const [text, setText] = useState(shown)
  const [told, setTold] = useState<{ sentence: string; offer: TypedValue | null; isFault: boolean } | null>(null)
  useEffect(() => setText(shown), [shown])
  function take(next: TypedValue, caution: string | null) {
    setTold(caution === null ? null : { sentence: caution, offer: null, isFault: false })
    if (next.value !== value || next.typed !== typed) onChange(next)
  }
  function leave() {
    if (text.trim() === shown) return setTold(null)
    const read = what === 'lift' ? readLift(text) : readForce(text)
    switch (read.kind) {
      case 'none':
        return take({ value: null, typed: '' }, null)
      case 'refused':
        return setTold({ sentence: read.sentence, offer: null, isFault: true })
      case 'offer':
        return setTold({
          sentence: read.sentence,
          offer: { value: read.forceLbf, typed: read.typed },
          isFault: true,
        })
      case 'read':
        return take({ value: 'liftIn' in read ? read.liftIn : read.forceLbf, typed: read.typed }, read.caution)
    }
  }
  const offer = told?.offer ?? null
  return (
    <div className={styles['offer']}>
      <TextField
        label={label}
        hideLabel={hideLabel}
        value={text}
        onChange={setText}
        onBlur={leave}
        onKeyDown={(event) => {
          if (event.key === 'Enter') leave()
        }}
        error={told?.isFault === true ? told.sentence : null}
      />
      {told !== null && !told.isFault ? <p className={styles['quiet']}>▲ {told.sentence}</p> : null}
      {offer?.value === null || offer === null ? null : (
        <Button onPress={() => take(offer, null)}>Take {offer.value.toFixed(1)} lbf</Button>
      )}
    </div>
  )
}
