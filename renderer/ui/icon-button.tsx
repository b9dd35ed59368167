import {
  Button as AriaButton,
  type ButtonProps as AriaButtonProps,
  Tooltip,
  TooltipTrigger,
} from 'react-aria-components'
import styles from './button.module.css'
import { classNames } from './class-names.ts'
import { Icon, type IconName } from './icon.tsx'
import { KeyHint } from './key-hint.tsx'

export interface IconButtonProps extends Omit<AriaButtonProps, 'className' | 'style' | 'children'> {
  readonly icon: IconName
  /** What it does: shown as a tip and read out. */
  readonly label: string
  /** Keys that do the same, for the tip. */
  readonly keys?: string
  /** True while what it switches is on; leave out for a button that switches nothing. */
  readonly pushed?: boolean
}

/** A button with a drawing, named by a tip. */
export function IconButton({ icon, label, keys, pushed, ...rest }: IconButtonProps) {
  return (
    <TooltipTrigger delay={400} closeDelay={0}>
      <AriaButton
        {...rest}
        aria-label={label}
        {...(pushed === undefined ? {} : { 'aria-pressed': pushed })}
        className={classNames(
          styles['button'],
          styles['quiet'],
          styles['iconButton'],
          pushed === true && styles['pushed'],
        )}
      >
        <Icon name={icon} />
      </AriaButton>
      <Tooltip className={styles['tip'] ?? ''} offset={6}>
        {label}
        {keys === undefined ? null : <KeyHint keys={keys} />}
      </Tooltip>
    </TooltipTrigger>
  )
}
