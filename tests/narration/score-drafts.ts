import type { Extent } from '../../app/evidence/finding.ts'
import type { Draft } from '../../app/narration/draft.ts'
import type { LabelledFinding } from './labelled-cues.ts'

export const scoredFields = [
  'component',
  'condition',
  'component and condition',
  'place',
  'extent',
  'measurement',
] as const
export type ScoredField = (typeof scoredFields)[number]

/** How often a field was read right, read where it should not be or wrong, and missed. */
export interface Tally {
  right: number
  wrong: number
  missed: number
}
export type Score = Readonly<Record<ScoredField, Tally>>

export function emptyScore(): Score {
  const tally = (): Tally => ({ right: 0, wrong: 0, missed: 0 })
  return {
    component: tally(),
    condition: tally(),
    'component and condition': tally(),
    place: tally(),
    extent: tally(),
    measurement: tally(),
  }
}

/** What was right out of what was read; null when nothing was read. */
export function precisionOf({ right, wrong }: Tally): number | null {
  return right + wrong === 0 ? null : right / (right + wrong)
}

/** What was right out of what there was; null when there was nothing. */
export function recallOf({ right, missed }: Tally): number | null {
  return right + missed === 0 ? null : right / (right + missed)
}

/** Compares one cue's drafts with its labels; each draft answers for one label at most. Differences are told to `tell`. */
export function scoreCue(
  score: Score,
  given: {
    readonly drafts: readonly Draft[]
    readonly labels: readonly LabelledFinding[]
    readonly letterOf: (facetId: string) => string
  },
  tell: (difference: string) => void,
): void {
  const open = [...given.drafts]
  const pairs = given.labels.map((label) => ({ label, draft: null as Draft | null }))
  const fits = [
    (label: LabelledFinding, draft: Draft) => isComponent(label, draft) && isCondition(label, draft),
    isCondition,
    isComponent,
    () => true,
  ]
  for (const fit of fits) {
    for (const pair of pairs) {
      if (pair.draft !== null) continue
      const at = open.findIndex((draft) => fit(pair.label, draft))
      if (at >= 0) pair.draft = open.splice(at, 1)[0] ?? null
    }
  }
  for (const { label, draft } of pairs) scorePair(score, { label, draft, letterOf: given.letterOf }, tell)
  for (const draft of open) {
    for (const field of ['component', 'condition', 'component and condition'] as const) score[field].wrong += 1
    tell(`unwanted ${draft.component.value} ${draft.condition.value}`)
  }
}

function isComponent(label: LabelledFinding, draft: Draft): boolean {
  return draft.component.value === label.component
}

function isCondition(label: LabelledFinding, draft: Draft): boolean {
  return draft.condition.value === label.condition
}

function scorePair(
  score: Score,
  { label, draft, letterOf }: { label: LabelledFinding; draft: Draft | null; letterOf: (facetId: string) => string },
  tell: (difference: string) => void,
): void {
  const count = (
    field: ScoredField,
    isRight: boolean,
    { isRead, isWanted = true }: { isRead: boolean; isWanted?: boolean },
  ) => {
    if (isRight) score[field].right += 1
    else {
      if (isRead) score[field].wrong += 1
      if (isWanted) score[field].missed += 1
    }
  }
  const sameComponent = draft !== null && isComponent(label, draft)
  const sameCondition = draft !== null && isCondition(label, draft)
  count('component', sameComponent, { isRead: draft !== null })
  count('condition', sameCondition, { isRead: draft !== null })
  count('component and condition', sameComponent && sameCondition, { isRead: draft !== null })
  if (draft === null) return tell(`missed ${label.component} ${label.condition}`)
  if (!sameComponent || !sameCondition)
    tell(`${draft.component.value} ${draft.condition.value} instead of ${label.component} ${label.condition}`)
  const extent = draft.extent === null ? null : extentSign(draft.extent.value)
  if (extent !== null || label.extent !== null) {
    count('extent', extent === label.extent, { isRead: extent !== null, isWanted: label.extent !== null })
    if (extent !== label.extent) tell(`extent ${extent} instead of ${label.extent}`)
  }
  if (label.facets !== null) {
    const read = (draft.place?.value.facetIds ?? []).map(letterOf).toSorted().join()
    count('place', read === label.facets.join(), { isRead: read !== '', isWanted: label.facets.length > 0 })
    if (read !== label.facets.join())
      tell(`place ${read} (${draft.place?.value.words ?? ''}) instead of ${label.facets.join()}`)
  }
  return scoreMeasures(score, { label, draft }, tell)
}

function scoreMeasures(
  score: Score,
  { label, draft }: { label: LabelledFinding; draft: Draft },
  tell: (difference: string) => void,
): void {
  const open = draft.measurements.map(({ value }) => value)
  for (const wanted of label.measures) {
    const at = open.findIndex(
      (read) =>
        read.what === wanted.what && Math.abs(read.value - wanted.value) < 0.005 && read.forceLbf === wanted.forceLbf,
    )
    if (at >= 0) {
      score.measurement.right += 1
      open.splice(at, 1)
    } else {
      score.measurement.missed += 1
      tell(`measure ${wanted.what} ${wanted.value} missed`)
    }
  }
  score.measurement.wrong += open.length
  for (const read of open) tell(`measure ${read.what} ${read.value} at ${read.forceLbf} unwanted`)
}

function extentSign(extent: Extent): string {
  switch (extent.kind) {
    case 'exactly':
      return `=${extent.count}`
    case 'about':
      return `~${extent.count}`
    case 'at-least':
      return `>=${extent.count}`
    case 'length':
      return `${extent.lengthFt}ft`
    case 'area':
      return `${extent.areaSqFt}sqft`
    case 'whole-facet':
      return 'whole'
    case 'several':
    case 'examples':
    case 'not-stated':
      return extent.kind
  }
}
