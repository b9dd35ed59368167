import { causes } from '../../app/evidence/catalog/causes.ts'
import { consequenceLabels, findingKindLabels } from '../../app/evidence/catalog/labels.ts'
import { measurementWords } from '../../app/evidence/catalog/measures.ts'
import { type Finding, findingLabel } from '../../app/evidence/finding.ts'
import { howMuchWords, whatWords } from '../../app/packet/finding-words.ts'
import { useGoTo } from '../frame/use-go-to.ts'
import { PlanInset } from '../plan/plan-inset.tsx'
import { useJob } from '../state/job-state.tsx'
import { useFacetName } from '../state/roof-zones.ts'
import { useProblems } from '../state/problems.tsx'
import { useSelection } from '../state/selection.tsx'
import { Badge } from '../ui/badge.tsx'
import { Button } from '../ui/button.tsx'
import styles from './finding-details.module.css'
import { FindingZoneLine } from './finding-zone-line.tsx'
import { FindingPhotos } from './finding-photos.tsx'
import { RemoveFinding } from './remove-finding.tsx'

/** The selected finding, read at a glance: what, how much, where, shown by what, and what it lacks. */
export function FindingDetails() {
  const { findings } = useJob()
  const { selection } = useSelection()
  const finding = findings.find((one) => selection.kind === 'finding' && one.id === selection.id)
  if (finding === undefined)
    return <p className={styles['quiet']}>This finding was removed. Its number stays unused.</p>
  return <FindingSheet key={finding.id} finding={finding} />
}

function FindingSheet({ finding }: { finding: Finding }) {
  const { facets } = useJob()
  const goTo = useGoTo()
  const nameOf = useFacetName()
  const facet = facets.find(({ id }) => id === finding.facetId)
  const place = [facet === undefined ? 'no facet' : `facet ${facet.letter} (${nameOf(facet)})`, finding.placeWords]
    .filter((words) => words !== '')
    .join(', ')
  return (
    <div className={styles['details']}>
      <p className={styles['badges']}>
        <Badge>{findingKindLabels[finding.kind]}</Badge>
        {finding.urgent ? <Badge tone="bad">Urgent</Badge> : null}
        {finding.showsPoorly ? <Badge tone="note">Shows poorly in the picture</Badge> : null}
      </p>
      <div>
        <p className={styles['what']}>{whatWords(finding)}</p>
        <p>
          {howMuchWords(finding)}
          {finding.degree === '' ? '' : `; ${finding.degree}`}
        </p>
        <p className={styles['quiet']}>On {place}</p>
      </div>
      <FindingZoneLine finding={finding} />
      {finding.observation === '' ? null : <p className={styles['observation']}>{finding.observation}</p>}
      <ul>
        {finding.measurements.map((measurement, index) => (
          <li key={index}>{measurementWords(measurement)}</li>
        ))}
      </ul>
      <FindingPhotos finding={finding} />
      <PlanInset facetId={finding.facetId} findingId={finding.id} />
      <p className={styles['opinion']}>
        <strong>Opinion.</strong> {causes[finding.cause.cause].opinion}
      </p>
      {finding.consequences.length === 0 ? null : (
        <p>
          <strong>Consequence.</strong> {finding.consequences.map((key) => consequenceLabels[key]).join(', ')}
        </p>
      )}
      <FindingProblems finding={finding} />
      <div className={styles['line']}>
        <Button onPress={() => goTo({ workspace: 'findings', target: { kind: 'finding', id: finding.id } })}>
          Open the form
        </Button>
        <Button onPress={() => goTo({ workspace: 'plan', target: { kind: 'finding', id: finding.id } })}>
          Show on the plan
        </Button>
        <RemoveFinding finding={finding} />
      </div>
    </div>
  )
}

function FindingProblems({ finding }: { finding: Finding }) {
  const own = useProblems().filter(({ place }) => place.kind === 'finding' && place.id === finding.id)
  if (own.length === 0) return null
  const label = findingLabel(finding.number)
  return (
    <section className={styles['lacks']} aria-label={`What ${label} lacks`}>
      <ul>
        {own.map((problem) => (
          <li key={problem.id}>{problem.sentence}</li>
        ))}
      </ul>
    </section>
  )
}
