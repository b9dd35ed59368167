import type { ConditionKey } from '../../evidence/catalog/keys.ts'
import type { FindingKind } from '../../evidence/finding.ts'
import type { Draft, DraftPlace, Read } from '../draft.ts'
import { crackPathOf, degreeOf } from './degree-of.ts'
import { extentOf, type SaidExtent } from './extent-of.ts'
import type { Marks } from './marks.ts'
import { measurementsOf } from './measures-of.ts'
import type { Observation } from './observe.ts'
import type { Span, SpokenMeasure } from './quantities.ts'
import { type HeldDraft, rangesOf, type Reading, textOf } from './reading.ts'
import type { Weighed } from './suppressed.ts'

interface Given {
  readonly observation: Observation
  /** All observations of the sentence, among which its measures are shared out. */
  readonly all: readonly Observation[]
  readonly place: Read<DraftPlace> | null
  readonly weighing: Weighed
}

/** Writes an observation down as a draft, or adds it to the draft before where it goes on speaking of the same thing. */
export function draftOf(reading: Reading, marks: Marks, given: Given): readonly HeldDraft[] {
  const { observation, weighing } = given
  const { words } = marks
  const said = extentOf(marks, observation, weighing.correctAt) ?? ofOne(reading, marks, observation)
  const continued = continuedDraft(reading, marks, {
    observation,
    hasCount: said?.at != null && said.extent.kind !== 'exactly',
  })
  if (continued !== null) return [addTo(reading, marks, { held: continued, given })]
  const ranges = rangesOf(words, [{ at: 0, length: words.length }])
  const degree = degreeOf(clauseWords(marks, observation), observation.condition)
  const read = <T>(value: T, spans: readonly Span[]): Read<T> => ({ value, from: rangesOf(words, spans) })
  const draft: Draft = {
    key: keyOf(observation, marks),
    startMs: reading.cues[words[0]?.cue ?? 0]?.startMs ?? 0,
    kind: kindOf(observation),
    component: read(observation.component, observation.part === null ? [] : [observation.part]),
    otherComponents: observation.otherComponents,
    condition: read(observation.condition, observation.merged),
    otherConditions: observation.otherConditions,
    extent: said === null ? null : read(said.extent, said.at === null ? [] : [said.at]),
    degree:
      degree === null
        ? null
        : { value: degree.degree, from: [degree.at].map(({ cue, from, to }) => ({ cue, from, to })) },
    crackPath: crackPathOf(observation, words),
    measurements: measuredFor(marks, given, said?.at ?? null),
    place: given.place,
    opinion: opinionOf(reading, marks, weighing),
    spoken: { value: textOf(reading.cues, ranges), from: ranges },
    cues: [...new Set(words.map(({ cue }) => cue))],
  }
  const held = { draft, sign: observation.sign, sentence: reading.sentence, endMs: endOf(reading, draft) }
  reading.drafts.push(held)
  return [held]
}

/** "It comes up two inches", of one tile that was named before. */
function ofOne({ isOnePart, part }: Reading, { words }: Marks, observation: Observation): SaidExtent | null {
  const isIt = words.slice(0, observation.signAt.at).some(({ text }) => text === 'it')
  if (!isOnePart || !isIt || observation.part !== null || observation.component !== part) return null
  return { extent: { kind: 'exactly', count: 1 }, at: null }
}

/** Words that tell a draft apart from others: what is seen on what, in which words. */
function keyOf({ component, condition }: Observation, { words }: Marks): string {
  return `${component} ${condition} ${words.map(({ text }) => text).join(' ')}`.slice(0, 400)
}

const KINDS: Partial<Record<ConditionKey, FindingKind>> = {
  sound: 'sound',
  'not-accessible': 'not-accessible',
  'prior-repair': 'earlier-repair',
  'surface-ageing': 'wear',
  'nail-off-pattern': 'installation',
}

function kindOf({ condition, sign }: Observation): FindingKind {
  return sign === 'mark-by-others' ? 'mark-by-others' : (KINDS[condition] ?? 'damage')
}

/** The words that are said of one observation where a sentence holds several. */
function clauseWords(marks: Marks, { part, signAt, merged }: Observation) {
  const clauses = new Set(
    [signAt.at, ...(part === null ? [] : [part.at]), ...merged.map(({ at }) => at)].map((at) => marks.clauses[at] ?? 0),
  )
  return marks.words.filter((_word, at) => {
    const clause = marks.clauses[at] ?? 0
    const isNext = clauses.has(clause - 1) && !marks.parts.some((other) => marks.clauses[other.at] === clause)
    return clauses.has(clause) || isNext
  })
}

/** Measures go to the observation that was named last before them. */
function measuredFor(marks: Marks, { observation, all, weighing }: Given, taken: Span | null): Draft['measurements'] {
  const { correctAt } = weighing
  const mine = marks.measures.filter((measure) => {
    if (taken !== null && measure.at === taken.at) return false
    const isCorrected =
      correctAt !== null &&
      measure.at < correctAt &&
      marks.measures.some(({ at, unit }) => at > correctAt && unit === measure.unit)
    return !isCorrected && ownerOf(measure, all) === observation
  })
  const measured = { condition: observation.condition, signs: observation.merged.map(({ value }) => value) }
  return measurementsOf(marks, measured, mine).map(({ measurement, at }) => ({
    value: measurement,
    from: rangesOf(marks.words, [at]),
  }))
}

function ownerOf({ at }: SpokenMeasure, all: readonly Observation[]): Observation | undefined {
  return all.findLast(({ signAt, part }) => Math.min(signAt.at, part?.at ?? signAt.at) <= at) ?? all[0]
}

/** What is said of causes and comparisons, word for word. */
export function opinionOf(
  reading: Reading,
  { words }: Marks,
  { opinionFrom, opinionTo }: Weighed,
): Read<string> | null {
  if (opinionFrom === null) return null
  const from = rangesOf(words, [{ at: opinionFrom, length: opinionTo - opinionFrom }])
  return { value: textOf(reading.cues, from), from }
}

/** "The crack is hairline": the same thing again, without a new count, right after it was drafted. */
function continuedDraft(
  reading: Reading,
  marks: Marks,
  { observation, hasCount }: { observation: Observation; hasCount: boolean },
): HeldDraft | null {
  const { last } = reading
  if (last?.draft == null || hasCount || reading.sentence - last.sentence > 1) return null
  const { component, condition } = last.draft
  if (condition.value !== observation.condition || component.value !== observation.component) return null
  if (
    marks.counts.length > 0 ||
    marks.words.some(({ text }) => /^(another|more|also|here|next|second|third|other|again|too)$/.test(text))
  )
    return null
  const first = marks.words[0]?.text ?? ''
  const isAnaphor = /^(it|that|the|they|this|these|those|its|and|so|which)$/.test(first) || observation.part === null
  return isAnaphor &&
    !(observation.part !== null && /^(a|an|one)$/.test(marks.words[observation.part.at - 1]?.text ?? ''))
    ? last
    : null
}

function addTo(reading: Reading, marks: Marks, { held, given }: { held: HeldDraft; given: Given }): HeldDraft {
  const { draft } = held
  if (draft === null) return held
  const ranges = rangesOf(marks.words, [{ at: 0, length: marks.words.length }])
  const degree = degreeOf(marks.words, given.observation.condition)
  const opinion = opinionOf(reading, marks, given.weighing)
  held.draft = {
    ...draft,
    degree:
      draft.degree ??
      (degree === null
        ? null
        : { value: degree.degree, from: [{ cue: degree.at.cue, from: degree.at.from, to: degree.at.to }] }),
    measurements: [...draft.measurements, ...measuredFor(marks, given, null)],
    opinion: joinedText(draft.opinion, opinion),
    ...withSentence(reading, draft, ranges),
  }
  held.sentence = reading.sentence
  held.endMs = endOf(reading, held.draft)
  return held
}

/** A draft's own words with those of one more sentence. */
export function withSentence(
  reading: Reading,
  draft: Draft,
  ranges: Draft['spoken']['from'],
): Pick<Draft, 'spoken' | 'cues'> {
  const from = [...draft.spoken.from, ...ranges]
  return {
    spoken: { value: textOf(reading.cues, from), from },
    cues: [...new Set([...draft.cues, ...ranges.map(({ cue }) => cue)])].toSorted((a, b) => a - b),
  }
}

/** Two opinions on one thing, one after the other. */
export function joinedText(a: Read<string> | null, b: Read<string> | null): Read<string> | null {
  if (a === null || b === null) return a ?? b
  return { value: `${a.value} … ${b.value}`, from: [...a.from, ...b.from] }
}

/** When the last cue of a draft ends. */
export function endOf(reading: Reading, { cues }: Draft): number {
  return reading.cues[cues.at(-1) ?? 0]?.endMs ?? 0
}
