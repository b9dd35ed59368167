import { components } from '../../app/evidence/catalog/components.ts'
import { conditions } from '../../app/evidence/catalog/conditions.ts'
import { findingKindLabels } from '../../app/evidence/catalog/labels.ts'
import { measurementWords } from '../../app/evidence/catalog/measures.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import type { FacetId } from '../../app/job/ids.ts'
import { atFacet } from '../../app/narration/at-facet.ts'
import type { Draft } from '../../app/narration/draft.ts'
import { isCrackPathOpen } from '../../app/narration/drafted-finding.ts'
import { howMuchWords, whatWords } from '../../app/packet/finding-words.ts'
import { useJob } from '../state/job-state.tsx'
import { Badge } from '../ui/badge.tsx'
import { Button } from '../ui/button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { CueText } from './cue-text.tsx'
import styles from './narration.module.css'
import { PlaceChooser } from './place-chooser.tsx'
import type { DraftWork } from './use-draft-work.ts'
import type { StandingDraft } from './use-narration.ts'

interface DraftCardProps {
  readonly standing: StandingDraft
  readonly work: DraftWork
}

/** One draft whole: what it would record, the words it was read from, and what to do with it. */
export function DraftCard({ standing, work }: DraftCardProps) {
  const { draft } = standing
  return (
    <section className={styles['card']} aria-label="Draft">
      <header className={styles['cardHead']}>
        <h3 className={styles['what']}>
          {whatWords({ component: draft.component.value, condition: draft.condition.value })}
        </h3>
        <Badge>{findingKindLabels[draft.kind]}</Badge>
        <Standing standing={standing} />
        <span className={styles['gap']} />
        <Actions standing={standing} work={work} />
      </header>
      <dl className={styles['facts']}>
        {factsOf(atFacet(draft, work.chosen), useLetters()).map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <PlaceChooser work={work} />
      <SpokenWords draft={draft} cues={work.cues} />
    </section>
  )
}

function Standing({ standing: { decision, finding } }: Pick<DraftCardProps, 'standing'>) {
  if (decision === null) return <Badge tone="caution">Not decided</Badge>
  if (decision.findingId === null) return <Badge>Dropped</Badge>
  return finding === null ? (
    <Badge>Finding removed</Badge>
  ) : (
    <Badge tone="good">Accepted as {findingLabel(finding.number)}</Badge>
  )
}

function Actions({ standing, work }: DraftCardProps) {
  if (standing.decision !== null) {
    return (
      <Button onPress={work.reopen}>
        Take up again <KeyHint keys="R" />
      </Button>
    )
  }
  return (
    <>
      <Button look="main" onPress={work.accept}>
        Accept <KeyHint keys="A" />
      </Button>
      <Button onPress={work.edit}>
        Edit… <KeyHint keys="E" />
      </Button>
      <Button onPress={work.drop}>
        Drop <KeyHint keys="D" />
      </Button>
    </>
  )
}

function useLetters(): (id: FacetId) => string {
  const { facets } = useJob()
  return (id) => facets.find((facet) => facet.id === id)?.letter ?? '?'
}

function factsOf(draft: Draft, letterOf: (id: FacetId) => string): readonly (readonly [string, string])[] {
  const component = draft.component.value
  const others = [
    ...draft.otherComponents.map((key) => components[key].label),
    ...draft.otherConditions.map((key) => conditions[key].label),
  ]
  const measured = draft.measurements.map(({ value }) => measurementWords(value))
  return [
    ['How much', howMuchWords({ component, extent: draft.extent?.value ?? { kind: 'not-stated' } })],
    ['Where', placeWords(draft, letterOf)],
    ...(isCrackPathOpen(draft) ? [['Direction of the crack', 'not said; the name is the likeliest'] as const] : []),
    ...(draft.degree === null ? [] : [['Degree', draft.degree.value] as const]),
    ...(measured.length === 0 ? [] : [['Measured', measured.join('; ')] as const]),
    ...(draft.opinion === null ? [] : [['Opinion, as spoken', draft.opinion.value] as const]),
    ...(others.length === 0 ? [] : [['The words may also mean', others.join(', ')] as const]),
  ]
}

function placeWords({ place }: Draft, letterOf: (id: FacetId) => string): string {
  if (place === null) return 'no place spoken'
  const letters = place.value.facetIds.map(letterOf)
  const said = `“${place.value.words}”`
  if (letters.length === 0) return `${said}, not found on the plan`
  return letters.length === 1 ? `facet ${letters[0] ?? ''}, ${said}` : `${said}: one of ${letters.join(', ')}`
}

function SpokenWords({ draft, cues }: { draft: Draft; cues: DraftWork['cues'] }) {
  return (
    <p className={styles['spoken']}>
      {draft.cues.map((cue) => (
        <span key={cue}>
          <CueText text={cues[cue]?.text ?? ''} cue={cue} drafts={[draft]} />{' '}
        </span>
      ))}
    </p>
  )
}
