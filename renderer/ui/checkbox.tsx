import type { ReactNode } from 'react'
import { Checkbox as AriaCheckbox } from 'react-aria-components'
import styles from './field.module.css'
import { Icon } from './icon.tsx'

export interface CheckboxProps {
  readonly children: ReactNode
  readonly isSelected: boolean
  readonly onChange: (isSelected: boolean) => void
  /** True when some of what it stands for is on and some off. */
  readonly isIndeterminate?: boolean
  readonly isDisabled?: boolean
}

/** A yes or no with its words. */
export function Checkbox({ children, isIndeterminate = false, ...rest }: CheckboxProps) {
  return (
    <AriaCheckbox {...rest} isIndeterminate={isIndeterminate} className={styles['checkbox'] ?? ''}>
      <span className={styles['box']}>
        <Icon name={isIndeterminate ? 'minus' : 'check'} />
      </span>
      <span>{children}</span>
    </AriaCheckbox>
  )
}
