import { useMemo } from 'react'
import { jobRepair } from '../../app/assessment/job-repair.ts'
import { type Repair, repairAssumptions, repairVerdictWords } from '../../app/assessment/repair/repair.ts'
import { needAgainstStock, rangeWords, repairWorking } from '../../app/assessment/repair/repair-words.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { ShowWorking } from '../field-tests/show-working.tsx'
import { useJob } from '../state/job-state.tsx'
import { NumberField } from '../ui/number-field.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './stated.module.css'
import { StockLines } from './stock-lines.tsx'
import { TreatmentLines } from './treatment-lines.tsx'
import { useAssessment } from './use-assessment.ts'

/** What a repair by single tiles takes, against matching tile that is known to exist. */
export function RepairPanel() {
  const { job, facets, findings } = useJob()
  const { assessment } = useAssessment()
  const repair = useMemo(() => jobRepair({ job, facets, findings, assessment }), [job, facets, findings, assessment])
  return (
    <section aria-label="Repair by single tiles">
      <p className={styles['verdict']} role="status">
        {repairVerdictWords[repair.verdict]} {repair.verdict === 'nothing-to-do' ? null : needAgainstStock(repair)}
      </p>
      {repair.lacks.length === 0 ? null : (
        <ul className={styles['list']} aria-label="Missing before this can be judged">
          {repair.lacks.map((lack) => (
            <li key={lack}>{lack}</li>
          ))}
        </ul>
      )}
      <LayingFields />
      {repair.facets.length === 0 ? null : <RepairTable repair={repair} />}
      <ShowWorking
        lines={[...repair.facets.map((one) => repairWorking(one, assessment)), ...repairAssumptions(assessment)]}
      />
      <TreatmentLines />
      <StockLines />
    </section>
  )
}

const bonds = [
  { key: 'straight', label: 'Straight up' },
  { key: 'staggered', label: 'Staggered by half' },
] as const
const sides = [
  { key: 'left', label: 'Left' },
  { key: 'right', label: 'Right' },
] as const

function LayingFields() {
  const { assessment, save } = useAssessment()
  const { bond, lockFrom, breakage } = assessment
  const setBreakage = (change: Partial<NonNullable<typeof breakage>>) => {
    const next = { fromPercent: 0, toPercent: 0, ...breakage, ...change }
    const last = Math.max(next.toPercent, change.fromPercent ?? 0)
    const first = Math.min(next.fromPercent, change.toPercent ?? next.fromPercent)
    void save({ breakage: { fromPercent: first, toPercent: last } })
  }
  return (
    <div className={styles['fields']}>
      <SelectField
        label="Joints run"
        options={bonds}
        value={bond}
        onChange={(key) => void save({ bond: key ?? 'straight' })}
      />
      <SelectField
        label="Side lock is lapped from the"
        options={sides}
        value={lockFrom}
        onChange={(key) => void save({ lockFrom: key ?? 'left' })}
      />
      <NumberField
        label="Of lifted tiles may break, from"
        unit="%"
        min={0}
        max={100}
        value={breakage?.fromPercent ?? null}
        onChange={(value) => (value === null ? void save({ breakage: null }) : setBreakage({ fromPercent: value }))}
      />
      <NumberField
        label="to"
        unit="%"
        min={0}
        max={100}
        value={breakage?.toPercent ?? null}
        onChange={(value) => (value === null ? void save({ breakage: null }) : setBreakage({ toPercent: value }))}
      />
    </div>
  )
}

function RepairTable({ repair }: { repair: Repair }) {
  return (
    <div className={styles['scroll']}>
      <table className={styles['lines']} aria-label="Tiles that a repair takes">
        <thead>
          <tr>
            {['Facet', 'Replace', 'Set again', 'Lifted to reach them', 'May break', 'New tiles', 'Not counted'].map(
              (title, at) => (
                <th key={title} scope="col" className={at === 0 || at === 6 ? undefined : styles['figure']}>
                  {title}
                </th>
              ),
            )}
          </tr>
        </thead>
        <tbody>
          {repair.facets.map(({ facet, replace, reset, lifted, broken, needed, notCounted }) => (
            <tr key={facet.id}>
              <td>{facet.letter}</td>
              <td className={styles['figure']}>{replace}</td>
              <td className={styles['figure']}>{reset}</td>
              <td className={styles['figure']}>{rangeWords(lifted)}</td>
              <td className={styles['figure']}>{broken === null ? '–' : rangeWords(broken)}</td>
              <td className={styles['figure']}>{needed === null ? '–' : rangeWords(needed)}</td>
              <td>{notCounted.map(({ number }) => findingLabel(number)).join(', ')}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}
