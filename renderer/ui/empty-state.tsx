import type { ReactNode } from 'react'
import styles from './empty-state.module.css'

/** What stands where nothing is yet: a title, one sentence that teaches the next step, and the buttons for it. */
export function EmptyState({ title, sentence, children }: { title: string; sentence: string; children?: ReactNode }) {
  return (
    <div className={styles['empty']}>
      <h2 className={styles['title']}>{title}</h2>
      <p className={styles['sentence']}>{sentence}</p>
      {children === undefined ? null : <div className={styles['actions']}>{children}</div>}
    </div>
  )
}
