import { Label, Radio, RadioGroup } from 'react-aria-components'
import { classNames } from './class-names.ts'
import styles from './field.module.css'

export interface SegmentedChoiceProps<Key extends string> {
  readonly label: string
  readonly hideLabel?: boolean
  readonly options: readonly { readonly key: Key; readonly label: string }[]
  readonly value: Key
  readonly onChange: (key: Key) => void
  readonly isDisabled?: boolean
}

/** One choice out of a few, all in sight. */
export function SegmentedChoice<Key extends string>(props: SegmentedChoiceProps<Key>) {
  const { label, hideLabel = false, options, value, onChange, isDisabled = false } = props
  return (
    <RadioGroup
      value={value}
      orientation="horizontal"
      isDisabled={isDisabled}
      onChange={(chosen) => {
        const option = options.find((candidate) => candidate.key === chosen)
        if (option !== undefined) onChange(option.key)
      }}
      className={styles['field'] ?? ''}
    >
      <Label className={classNames(styles['label'], hideLabel && styles['labelHidden'])}>{label}</Label>
      <div className={styles['segments']}>
        {options.map((option) => (
          <Radio key={option.key} value={option.key} className={styles['segment'] ?? ''}>
            {option.label}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  )
}
