import { findingLabel } from '../../app/evidence/finding.ts'
import type { ReadingId } from '../../app/job/ids.ts'
import { useJob } from '../state/job-state.tsx'
import styles from './details.module.css'

/** One lift reading, as it was recorded. */
export function ReadingDetails({ id }: { id: ReadingId }) {
  const { readings, facets, findings } = useJob()
  const reading = readings.find((one) => one.id === id)
  if (reading === undefined) return <p>This reading was removed.</p>
  const facet = facets.find((one) => one.id === reading.facetId)
  const finding = findings.find((one) => one.id === reading.findingId)
  const facts = [
    ['Lift', reading.liftIn === null ? 'not recorded' : `${reading.liftIn} in`],
    ['Force', reading.forceLbf === null ? 'not recorded' : `${reading.forceLbf} lbf`],
    ['Method', reading.method === 'gauge' ? `gauge ${reading.instrument}`.trim() : 'by hand'],
    ['Facet', facet?.letter ?? 'not stated'],
    ['Finding', finding === undefined ? 'none' : findingLabel(finding.number)],
    ['Note', reading.note === '' ? 'none' : reading.note],
  ] as const
  return (
    <dl className={styles['facts']}>
      {facts.map(([label, value]) => (
        <FactLine key={label} label={label} value={value} />
      ))}
    </dl>
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
