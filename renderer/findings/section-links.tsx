import styles from './findings-workspace.module.css'
import { showSection } from './show-section.ts'

const sections = [
  ['observed', 'Observed'],
  ['measured', 'Measured'],
  ['place', 'Place'],
  ['photos', 'Photos'],
  ['cause', 'Opinion on cause'],
  ['consequence', 'Consequence'],
  ['follow-up', 'Follow-up'],
  ['notes', 'Notes'],
] as const

/** Jumps to a part of the finding's form. */
export function SectionLinks() {
  return (
    <nav className={styles['links']} aria-label="Parts of the form">
      {sections.map(([id, words]) => (
        <button key={id} type="button" onClick={() => showSection(id)}>
          {words}
        </button>
      ))}
    </nav>
  )
}
