import { useMemo } from 'react'
import { handCheckPattern, handCheckWords } from '../../app/assessment/hand-check-pattern.ts'
import { facetsLookedAt, sidePattern, zonePattern, type Pattern } from '../../app/assessment/pattern.ts'
import {
  apartSentence,
  groupWorking,
  PATTERN_CAUTIONS,
  patternSentence,
  ratioWords,
  testWorking,
} from '../../app/assessment/pattern-words.ts'
import { windForSides, windSideLabels } from '../../app/assessment/wind-side.ts'
import { jobZone } from '../../app/evidence/job-zone.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { zoneLabels } from '../../app/roof/zones/zone-words.ts'
import { ShowWorking } from '../field-tests/show-working.tsx'
import { useJob } from '../state/job-state.tsx'
import { useRoofZones } from '../state/roof-zones.ts'
import { EmptyState } from '../ui/empty-state.tsx'
import styles from './assessment.module.css'
import { WindFields } from './wind-fields.tsx'

/** Where findings of damage lie against the area that was looked at, by zone and by side of the wind. */
export function PatternPanel() {
  const { facets, findings, survey, job, weather, assessment } = useJob()
  const zones = useRoofZones()
  const byZone = useMemo(() => zonePattern({ facets, findings }, zones), [facets, findings, zones])
  const wind = useMemo(() => windForSides({ job, weather, assessment }, jobZone(job)), [job, weather, assessment])
  const bySide = useMemo(() => sidePattern({ facets, findings }, wind), [facets, findings, wind])
  const checks = handCheckPattern(survey.checks)
  if (facets.length === 0) {
    return (
      <EmptyState
        title="No roof to compare on"
        sentence="Draw the roof plan. Findings are then held against the area that was looked at, by zone and by side of the wind."
      />
    )
  }
  return (
    <>
      <Comparison title="By zone of the roof" pattern={byZone} labels={zoneLabels} />
      <Comparison title="By side of the wind" pattern={bySide} labels={windSideLabels} />
      <WindFields wind={wind} />
      <h2 className={styles['heading']}>Tiles checked by hand</h2>
      <p className={styles['said']}>
        {checks === null
          ? 'Nothing to compare: hand checks are needed both in the field and at edges, corners or ridges. They are written down under Field tests.'
          : handCheckWords(checks)}
      </p>
      <Slopes lists={facetsLookedAt({ facets, findings })} />
      <ul className={styles['quiet']}>
        {PATTERN_CAUTIONS.map((caution) => (
          <li key={caution}>{caution}</li>
        ))}
      </ul>
    </>
  )
}

interface ComparisonProps<Key extends string> {
  readonly title: string
  readonly pattern: Pattern<Key>
  readonly labels: Readonly<Record<Key, string>>
}

const titles = ['Part', 'Looked at, sq ft', 'Observed', 'Expected', 'Ratio', 'Tiles counted', 'Tiles expected'] as const

function Comparison<Key extends string>({ title, pattern, labels }: ComparisonProps<Key>) {
  if (pattern.kind === 'refused') {
    return (
      <>
        <h2 className={styles['heading']}>{title}</h2>
        {pattern.sentences.map((sentence) => (
          <p key={sentence} className={styles['said']}>
            {sentence}
          </p>
        ))}
      </>
    )
  }
  const apart = apartSentence(pattern)
  const working = [
    ...pattern.groups.map((group) => groupWorking(labels[group.key], group, pattern)),
    testWorking(pattern.test),
    ...(apart === null ? [] : [apart]),
  ]
  return (
    <>
      <h2 className={styles['heading']}>{title}</h2>
      <p className={styles['said']}>{patternSentence(pattern, labels)}</p>
      <div className={styles['scroll']}>
        <table className={styles['lines']} aria-label={title}>
          <thead>
            <tr>
              {titles.map((one, i) => (
                <th key={one} scope="col" className={i === 0 ? '' : styles['figure']}>
                  {one}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {pattern.groups.map((group) => (
              <tr key={group.key}>
                <td>{labels[group.key]}</td>
                <td className={styles['figure']}>{group.lookedAtSqFt.toFixed(1)}</td>
                <td className={styles['figure']}>{group.findings}</td>
                <td className={styles['figure']}>{group.expected.toFixed(1)}</td>
                <td className={styles['figure']}>{ratioWords(group.ratio)}</td>
                <td className={styles['figure']}>{group.tiles}</td>
                <td className={styles['figure']}>{group.tilesExpected.toFixed(1)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <ShowWorking lines={working} />
    </>
  )
}

function Slopes({ lists }: { lists: ReturnType<typeof facetsLookedAt> }) {
  const { withoutFindings, notLookedAt, notStated } = lists
  const letters = (facets: readonly Facet[]) => facets.map(({ letter }) => letter).join(', ') || 'none'
  const shares = withoutFindings.map(({ letter, inspected }) => `${letter} (${inspected.percent ?? 0} %)`).join(', ')
  return (
    <>
      <h2 className={styles['heading']}>Slopes</h2>
      <ul>
        <li>Looked at, without findings of damage: {shares || 'none'}</li>
        <li>Not looked at: {letters(notLookedAt)}</li>
        <li>Not stated how much was looked at: {letters(notStated)}</li>
      </ul>
    </>
  )
}
