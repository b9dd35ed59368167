import { useState } from 'react'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { CalendarButton } from './calendar-button.tsx'
import { ClocksPane } from './clocks-pane.tsx'
import styles from './diary.module.css'
import { DocumentsPane } from './documents-pane.tsx'
import { EntriesPane } from './entries-pane.tsx'
import { RulesPane } from './rules-pane.tsx'

const panes = {
  entries: EntriesPane,
  documents: DocumentsPane,
  clocks: ClocksPane,
  rules: RulesPane,
} as const
type Pane = keyof typeof panes

const choices = [
  { key: 'entries', label: 'Entries' },
  { key: 'documents', label: 'Documents' },
  { key: 'clocks', label: 'Statutory clocks' },
  { key: 'rules', label: 'Rules' },
] as const satisfies readonly { readonly key: Pane; readonly label: string }[]

/** The diary of a job: visits, calls, documents and reminders, clocks that were asked for, and the rules behind them. */
export function DiaryWorkspace() {
  const [shown, setShown] = useState<Pane>('entries')
  const Shown = panes[shown]
  return (
    <section className={styles['workspace']} aria-label="Diary">
      <div className={styles['bar']}>
        <SegmentedChoice label="Part of the diary" hideLabel options={choices} value={shown} onChange={setShown} />
        <span className={styles['gap']} />
        <CalendarButton />
      </div>
      <Shown />
    </section>
  )
}
