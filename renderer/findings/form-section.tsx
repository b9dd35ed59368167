import type { ReactNode } from 'react'
import { classNames } from '../ui/class-names.ts'
import styles from './finding-form.module.css'

interface FormSectionProps {
  /** Part of the section's anchor. */
  readonly id: string
  readonly title: string
  /** `opinion` sets it visibly apart from what was observed. */
  readonly look?: 'plain' | 'opinion'
  /** A quiet word beside the title. */
  readonly remark?: string
  readonly children: ReactNode
}

/** A titled part of the finding's form. */
export function FormSection({ id, title, look = 'plain', remark, children }: FormSectionProps) {
  return (
    <section
      id={`finding-${id}`}
      aria-labelledby={`finding-${id}-title`}
      className={classNames(styles['section'], look === 'opinion' && styles['opinion'])}
    >
      <header className={styles['sectionHead']}>
        <h3 id={`finding-${id}-title`}>{title}</h3>
        {remark === undefined ? null : <p className={styles['quiet']}>{remark}</p>}
      </header>
      {children}
    </section>
  )
}
