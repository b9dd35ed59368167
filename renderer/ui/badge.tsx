import type { ReactNode } from 'react'
import styles from './badge.module.css'
import { classNames } from './class-names.ts'

/** What a badge says; each tone has its own shape, so that it reads without colour. */
export type BadgeTone = 'plain' | 'good' | 'caution' | 'bad' | 'note'

const shapes = { plain: null, good: '✓', caution: '▲', bad: '■', note: '●' } as const satisfies Record<
  BadgeTone,
  string | null
>

/** A small word or number with a tone. */
export function Badge({ tone = 'plain', children }: { tone?: BadgeTone; children: ReactNode }) {
  const shape = shapes[tone]
  return (
    <span className={classNames(styles['badge'], styles[tone])}>
      {shape === null ? null : (
        <span className={styles['shape']} aria-hidden="true">
          {shape}
        </span>
      )}
      {children}
    </span>
  )
}
