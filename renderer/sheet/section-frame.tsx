import { type ReactNode, useId } from 'react'
import { Button } from '../ui/button.tsx'
import styles from './sheet.module.css'
import type { Section } from './use-section.ts'

interface SectionFrameProps<Value> {
  readonly title: string
  /** One quiet sentence on what the section is for. */
  readonly note?: string
  readonly section: Section<Value>
  readonly children: ReactNode
}

/** A section of the sheet: its title and state at the left, its fields at the right. */
export function SectionFrame<Value>({ title, note, section, children }: SectionFrameProps<Value>) {
  const id = useId()
  return (
    <section className={styles['section']} aria-labelledby={id} data-field={section.key} {...section.leaving}>
      <header className={styles['side']}>
        <h3 id={id} className={styles['sectionTitle']}>
          {title}
        </h3>
        {note === undefined ? null : <p className={styles['note']}>{note}</p>}
        <SectionState section={section} />
      </header>
      <div className={styles['fields']}>{children}</div>
    </section>
  )
}

function SectionState<Value>({ section }: { section: Section<Value> }) {
  if (section.state === 'saved') return null
  return (
    <div className={styles['state']} role="status">
      {section.state === 'wrong' ? <span className={styles['wrong']}>Not saved: mend the marked field.</span> : null}
      <Button onPress={section.save}>Save</Button>
    </div>
  )
}
