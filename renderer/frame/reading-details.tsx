import { findingLabel } from '../../app/evidence/finding.ts'
import type { ReadingId } from '../../app/job/ids.ts'
import { forceWords, liftWords } from '../../app/fieldtest/reading-words.ts'
import { ReadingForm } from '../field-tests/reading-form.tsx'
import { useJob } from '../state/job-state.tsx'
import styles from './details.module.css'

/** One lift reading: what it says, and everything of it that can be changed. */
export function ReadingDetails({ id }: { id: ReadingId }) {
  const { readings, facets, findings } = useJob()
  const reading = readings.find((one) => one.id === id)
  if (reading === undefined) return <p>This reading was removed.</p>
  const facet = facets.find((one) => one.id === reading.facetId)
  const finding = findings.find((one) => one.id === reading.findingId)
  const facts = [
    ['Lift', liftWords(reading)],
    ['Force', forceWords(reading)],
    ['Facet', facet?.letter ?? 'not stated'],
    ['Finding', finding === undefined ? 'none' : findingLabel(finding.number)],
  ] as const
  return (
    <>
      <dl className={styles['facts']}>
        {facts.map(([label, value]) => (
          <FactLine key={label} label={label} value={value} />
        ))}
      </dl>
      <ReadingForm key={reading.id} reading={reading} />
    </>
  )
}

function FactLine({ label, value }: { label: string; value: string }) {
  return (
    <>
      <dt>{label}</dt>
      <dd>{value}</dd>
    </>
  )
}
