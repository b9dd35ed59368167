import type { ReactNode } from 'react'
import { Button as AriaButton, type ButtonProps as AriaButtonProps } from 'react-aria-components'
import styles from './button.module.css'
import { classNames } from './class-names.ts'

export interface ButtonProps extends Omit<AriaButtonProps, 'className' | 'style' | 'children'> {
  readonly children: ReactNode
  /** `main` is the one thing to do next; `quiet` has no frame; `danger` takes something away. */
  readonly look?: 'plain' | 'main' | 'quiet' | 'danger'
}

/** A button with words. */
export function Button({ look = 'plain', children, ...rest }: ButtonProps) {
  return (
    <AriaButton {...rest} className={classNames(styles['button'], styles[look])}>
      {children}
    </AriaButton>
  )
}
