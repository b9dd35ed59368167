import { useEffect, useState } from 'react'
import { FieldError, Input, Label, Text, TextField as AriaTextField } from 'react-aria-components'
import { classNames } from './class-names.ts'
import { errorsOnlyShown } from './field-errors.ts'
import styles from './field.module.css'
import { numberText, readNumber } from './number-text.ts'

export interface NumberFieldProps {
  readonly label: string
  readonly hideLabel?: boolean
  /** Null when nothing is stated. */
  readonly value: number | null
  /** Called when the person leaves the field or presses Enter, and only with a number that fits. */
  readonly onChange: (value: number | null) => void
  /** Shown inside the field: `ft`, `in`, `lbf`, `°`. */
  readonly unit?: string
  readonly min?: number
  readonly max?: number
  readonly help?: string
  readonly error?: string | null
  readonly placeholder?: string
  readonly isDisabled?: boolean
  readonly autoFocus?: boolean
  /** Dotted path of what the field edits, so that a problem can jump to it. */
  readonly name?: string
}

/** A number typed by hand, kept as typed until it is left; fractions such as `1 1/2` are read. */
export function NumberField(props: NumberFieldProps) {
  const { label, hideLabel = false, value, onChange, unit, min, max, help, error = null, placeholder, ...rest } = props
  const [text, setText] = useState(numberText(value))
  const [own, setOwn] = useState<string | null>(null)
  useEffect(() => {
    setText(numberText(value))
    setOwn(null)
  }, [value])
  function leave() {
    const typed = readNumber(text, { ...(min === undefined ? {} : { min }), ...(max === undefined ? {} : { max }) })
    setOwn(typed.ok ? null : typed.error)
    if (typed.ok && typed.value !== value) onChange(typed.value)
  }
  const wrong = own ?? error
  return (
    <AriaTextField
      {...rest}
      value={text}
      onChange={setText}
      onBlur={leave}
      onKeyDown={(event) => {
        if (event.key === 'Enter') leave()
      }}
      inputMode="decimal"
      isInvalid={wrong !== null}
      {...errorsOnlyShown}
      className={styles['field'] ?? ''}
    >
      <Label className={classNames(styles['label'], hideLabel && styles['labelHidden'])}>
        {label}
        {unit === undefined ? null : <span className={styles['labelHidden']}>, {unit}</span>}
      </Label>
      <span className={styles['withUnit']}>
        <Input
          className={classNames(styles['input'], unit !== undefined && styles['inputBeforeUnit'])}
          {...(placeholder === undefined ? {} : { placeholder })}
        />
        {unit === undefined ? null : (
          <span className={styles['unit']} aria-hidden="true">
            {unit}
          </span>
        )}
      </span>
      {help === undefined ? null : (
        <Text slot="description" className={styles['help'] ?? ''}>
          {help}
        </Text>
      )}
      <FieldError className={styles['error'] ?? ''}>{wrong}</FieldError>
    </AriaTextField>
  )
}
