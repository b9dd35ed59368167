import { type ReactNode, useId } from 'react'
import styles from './panel.module.css'

export interface PanelProps {
  readonly title: string
  /** Buttons at the end of the title's line. */
  readonly actions?: ReactNode
  readonly children: ReactNode
}

/** A titled part of a screen. */
export function Panel({ title, actions, children }: PanelProps) {
  const id = useId()
  return (
    <section className={styles['panel']} aria-labelledby={id}>
      <header className={styles['head']}>
        <h2 id={id} className={styles['title']}>
          {title}
        </h2>
        {actions === undefined ? null : <div className={styles['actions']}>{actions}</div>}
      </header>
      <div className={styles['body']}>{children}</div>
    </section>
  )
}
