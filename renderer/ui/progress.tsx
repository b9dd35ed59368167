import { Label, ProgressBar } from 'react-aria-components'
import { classNames } from './class-names.ts'
import styles from './progress.module.css'

export interface ProgressProps {
  readonly label: string
  readonly hideLabel?: boolean
  readonly done: number
  /** 0 while the amount is not known yet. */
  readonly total: number
  /** What stands at the end of the line, such as "37 of 120, 2 min left". */
  readonly words?: string
}

/** How far a piece of work is. */
export function Progress({ label, hideLabel = false, done, total, words }: ProgressProps) {
  return (
    <ProgressBar
      value={done}
      maxValue={Math.max(total, 1)}
      isIndeterminate={total === 0}
      valueLabel={words ?? `${done} of ${total}`}
      className={styles['progress'] ?? ''}
    >
      {({ percentage, valueText }) => (
        <>
          <span className={classNames(styles['line'], hideLabel && styles['lineHidden'])}>
            <Label className={styles['label'] ?? ''}>{label}</Label>
            <span className={styles['words']}>{valueText}</span>
          </span>
          <svg className={styles['track']} viewBox="0 0 100 1" preserveAspectRatio="none" aria-hidden="true">
            <rect className={styles['ground']} width="100" height="1" />
            <rect className={styles['fill']} width={percentage ?? 100} height="1" />
          </svg>
        </>
      )}
    </ProgressBar>
  )
}
