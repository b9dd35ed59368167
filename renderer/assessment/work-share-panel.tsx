import { useMemo } from 'react'
import { jobRepair, jobWorkShares } from '../../app/assessment/job-repair.ts'
import type { SectionShare } from '../../app/assessment/work-share.ts'
import {
  exceptionSentence,
  OFFICIAL_DECIDES,
  sharePercent,
  shareSentence,
  shareWorking,
  workArea,
} from '../../app/assessment/work-share-words.ts'
import { groupedNumber } from '../../app/evidence/catalog/grouped-number.ts'
import type { WorkShareRule } from '../../app/rules/rule.ts'
import { useRules } from '../diary/use-rules.ts'
import { ShowWorking } from '../field-tests/show-working.tsx'
import { useJob } from '../state/job-state.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { DateField } from './date-field.tsx'
import { EarlierWorkLines } from './earlier-work-lines.tsx'
import { PlannedWorkLines } from './planned-work-lines.tsx'
import { SectionLines } from './section-lines.tsx'
import styles from './stated.module.css'
import { useAssessment } from './use-assessment.ts'

/** Area of work over area of each roof section within the months of a rule; nothing until a person chooses a rule. */
export function WorkSharePanel() {
  const { job, facets, findings } = useJob()
  const { assessment, save } = useAssessment()
  const { rule } = assessment
  const shares = useMemo(() => {
    const file = { job, facets, findings, assessment }
    return jobWorkShares(file, jobRepair(file))
  }, [job, facets, findings, assessment])
  return (
    <section aria-label="Share of work">
      <div className={styles['fields']}>
        <RuleField />
        {rule === null ? null : (
          <DateField
            label="Day of the work"
            value={assessment.workDate}
            onChange={(workDate) => void save({ workDate })}
          />
        )}
      </div>
      {rule === null || shares === null ? (
        <p className={styles['quiet']}>
          No rule is chosen, so no share is held against one. Rules are general information; which one applies is for
          the building official.
        </p>
      ) : (
        <>
          <Shares shares={shares} rule={rule} />
          <PlannedWorkLines />
          <EarlierWorkLines />
          <SectionLines sections={shares.map(({ section }) => section)} />
        </>
      )}
    </section>
  )
}

function RuleField() {
  const { assessment, save } = useAssessment()
  const rules = useRules().flatMap(({ rule, isPutAway }) => (rule.kind === 'work-share' && !isPutAway ? [rule] : []))
  const { rule: chosen } = assessment
  const listed = chosen === null || rules.some(({ key }) => key === chosen.key) ? rules : [chosen, ...rules]
  return (
    <SelectField
      label="Rule on the share of work"
      emptyLabel="None"
      options={listed.map(({ key, title, jurisdiction }) => ({
        key,
        label: jurisdiction === '' ? title : `${jurisdiction}: ${title}`,
      }))}
      value={chosen?.key ?? null}
      onChange={(key) => void save({ rule: listed.find((one) => one.key === key) ?? null })}
    />
  )
}

function Shares({ shares, rule }: { shares: readonly SectionShare[]; rule: WorkShareRule }) {
  return (
    <>
      <p>{rule.says}</p>
      <p className={styles['quiet']}>
        Source: {rule.source}. Standing: {rule.status}; looked at {rule.asOf}.
      </p>
      <div className={styles['scroll']}>
        <table className={styles['lines']} aria-label="Share of work by section">
          <thead>
            <tr>
              {['Section', 'Area, sq ft', 'Work, sq ft', 'Earlier, sq ft', 'Share'].map((title, at) => (
                <th key={title} scope="col" className={at === 0 ? undefined : styles['figure']}>
                  {title}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {shares.map(({ section, plannedSqFt, earlierSqFt, percent, verdict }) => (
              <tr key={section.id}>
                <td>{section.name}</td>
                <td className={styles['figure']}>{groupedNumber(section.areaSqFt, 1)}</td>
                <td className={styles['figure']}>{workArea(plannedSqFt)}</td>
                <td className={styles['figure']}>{groupedNumber(earlierSqFt, 1)}</td>
                <td className={styles['figure']}>{verdict === 'not-known' ? 'not known' : sharePercent(percent)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div role="status">
        {shares.map((share) => (
          <p key={share.section.id} className={styles['verdict']}>
            {shareSentence(share, rule)} {exceptionSentence(share.exception, rule)}
          </p>
        ))}
      </div>
      <p>{OFFICIAL_DECIDES}</p>
      <ul className={styles['cautions']}>
        {rule.cautions.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
      <ShowWorking
        lines={[
          ...shares.flatMap((share) => [`${share.section.name}: ${shareWorking(share)}`, ...share.lacks]),
          rule.data.sections,
          ...(rule.data.exception === null ? [] : [rule.data.exception.says]),
        ]}
      />
    </>
  )
}
