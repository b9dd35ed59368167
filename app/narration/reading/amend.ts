import type { Draft, DraftPlace, Read } from '../draft.ts'
import { conditionOf, isCap } from './condition-of.ts'
import { joinedText, opinionOf, withSentence } from './draft-of.ts'
import type { Marks } from './marks.ts'
import { measurementsOf } from './measures-of.ts'
import { type HeldDraft, rangesOf, type Reading } from './reading.ts'
import { componentOf, isEdge } from './said-part.ts'
import { runsToFastener } from './signs-of.ts'
import type { Weighed } from './suppressed.ts'

/** Sentences after which a bare measure or opinion no longer belongs to the draft before. */
const NEAR_SENTENCES = 2

/** Takes a draft back. What stood before it may be meant by the next sentence. */
export function retract(reading: Reading, held: HeldDraft): void {
  held.draft = null
  reading.last = null
}

interface Said {
  readonly weighing: Weighed
  readonly places: readonly Read<DraftPlace>[]
}

/**
 * Changes the draft before by a sentence that reports nothing itself: "no, the left side, I mean", "make that four",
 * "the gap is half an inch", "looks like the wind did that". True when the sentence is used up by it.
 */
export function amend(reading: Reading, marks: Marks, { weighing, places }: Said): boolean {
  const { last } = reading
  if (last?.draft == null || reading.sentence - last.sentence > NEAR_SENTENCES) return false
  const before = last.draft
  // "A broken tile here, oh no, only dirt" corrects itself, not what was said before.
  const { correctAt } = weighing
  const isCorrection = correctAt !== null && !marks.signs.some(({ at }) => at < correctAt)
  let draft: Draft = before
  if (isCorrection) draft = corrected(reading, marks, { draft, places, correctAt })
  else if (draft.extent === null || isTotal(marks)) draft = countedAfter(marks, draft)
  draft = crackedTo(marks, draft)
  draft = measuredAgain(marks, { draft, isCorrection, sign: last.sign })
  if (weighing.opinionFrom !== null && isAbout(marks))
    draft = { ...draft, opinion: joinedText(draft.opinion, opinionOf(reading, marks, weighing)) }
  if (draft === before) {
    if (!isCorrection || !isOtherThing(marks) || places.length > 0 || weighing.signs.length > 0) return false
    retract(reading, last)
    return true
  }
  last.draft = {
    ...draft,
    ...withSentence(reading, draft, rangesOf(marks.words, [{ at: 0, length: marks.words.length }])),
  }
  last.sentence = reading.sentence
  if (isCorrection && places.length > 0) reading.place = places.at(-1) ?? reading.place
  return true
}

function corrected(
  reading: Reading,
  marks: Marks,
  { draft, places, correctAt }: { draft: Draft; places: readonly Read<DraftPlace>[]; correctAt: number },
): Draft {
  const { words, counts, parts } = marks
  const place = places.at(-1)
  const count = counts.find(
    ({ at, length }) => words[at - 1]?.text !== 'not' && !(at < correctAt && isShare(words, at + length)),
  )
  const part = parts.find(
    ({ said, at }) =>
      (!isEdge(said) || (correctAt < at && isCap(draft.component.value))) &&
      !words.slice(Math.max(0, at - 2), at).some(({ text }) => text === 'not'),
  )
  const component = part === undefined ? null : componentOf(part.said, reading.group, reading.lastEdge)
  const condition = component === null || reading.last === null ? null : conditionOf(reading.last.sign, component)
  const isOtherPart = component !== null && condition !== null && component !== draft.component.value
  if (place === undefined && count === undefined && !isOtherPart) return draft
  return {
    ...draft,
    ...(place === undefined ? {} : { place }),
    ...(count === undefined || place !== undefined
      ? {}
      : { extent: { value: { kind: count.kind, count: count.count }, from: rangesOf(words, [count]) } }),
    ...(part === undefined || component === null || condition === null || component === draft.component.value
      ? {}
      : {
          component: { value: component, from: rangesOf(words, [part]) },
          condition: { ...draft.condition, value: condition },
        }),
  }
}

/** "One of those is by my foot, actually" counts some of them. */
function isShare(words: Marks['words'], at: number): boolean {
  return words[at]?.text === 'of' && /^(those|them|these|the)$/.test(words[at + 1]?.text ?? '')
}

/** "Three total", "so that makes two": all of it, counted at the end. */
function isTotal({ words }: Marks): boolean {
  return words.some(
    ({ text, stem }, at) =>
      /^(total|altogether|told)$/.test(text) || (stem === 'mak' && /^(that|which|so)$/.test(words[at - 1]?.text ?? '')),
  )
}

/** "One tile." after "Lifts two inches at thirty pounds.": a count by itself belongs to what was just reported. */
function countedAfter({ words, counts, signs, measures }: Marks, draft: Draft): Draft {
  const [count] = counts
  if (count === undefined || counts.length > 1 || signs.length > 0 || measures.length > 0) return draft
  if (words.length > count.length + 3) return draft
  return { ...draft, extent: { value: { kind: count.kind, count: count.count }, from: rangesOf(words, [count]) } }
}

/** "It runs up to the nail" says how a crack runs that was reported without saying so. */
function crackedTo({ words }: Marks, draft: Draft): Draft {
  if (!draft.otherConditions.includes('crack-to-fastener') || !runsToFastener(words)) return draft
  return {
    ...draft,
    condition: { ...draft.condition, value: 'crack-to-fastener' },
    otherConditions: [],
    crackPath: 'to-fastener',
  }
}

/** Measures said in a sentence of their own; corrected ones take the place of those before. */
function measuredAgain(
  marks: Marks,
  { draft, isCorrection, sign }: { draft: Draft; isCorrection: boolean; sign: HeldDraft['sign'] },
): Draft {
  if (isOfAnother(marks, draft)) return draft
  const force = marks.measures.find(({ unit }) => unit === 'lbf')
  const found = measurementsOf(marks, { condition: draft.condition.value, signs: [sign] }, marks.measures).map(
    ({ measurement, at }) => ({ value: measurement, from: rangesOf(marks.words, [at]) }),
  )
  if (found.length === 0) {
    const lift = draft.measurements.findLast(({ value }) => value.what === 'lift-in' && value.forceLbf === null)
    if (force === undefined || lift === undefined) return draft
    const read = {
      value: { ...lift.value, forceLbf: force.value },
      from: [...lift.from, ...rangesOf(marks.words, [force])],
    }
    return { ...draft, measurements: draft.measurements.map((one) => (one === lift ? read : one)) }
  }
  const replaced = new Set(found.map(({ value }) => value.what))
  const kept = isCorrection ? draft.measurements.filter(({ value }) => !replaced.has(value.what)) : draft.measurements
  return { ...draft, measurements: [...kept, ...found] }
}

/** A measure of something newly named: "nail heads up, a quarter inch" after a pipe, "one tile, two inches" after another. */
function isOfAnother({ words, parts, counts, measures }: Marks, draft: Draft): boolean {
  const isForce = measures.some(({ unit }) => unit === 'lbf') && draft.condition.value !== 'lifts-by-hand'
  const isNew = parts.some(
    ({ at, stands }) =>
      stands === 'head' &&
      at <= 6 &&
      (counts.some((count) => count.at + count.length === at) || /^(an?|another)$/.test(words[at - 1]?.text ?? '')),
  )
  return isNew || (isForce && measures.some(({ unit }) => unit === 'in'))
}

/** "No, they're cut tiles": what was seen is something else. */
function isOtherThing({ words, counts, measures }: Marks): boolean {
  const isSaidOfIt = words.some(
    ({ text }, at) => /^(it|that|this|they|those|these)$/.test(text) && words[at + 1]?.stem === 'be',
  )
  return isSaidOfIt && counts.length === 0 && measures.length === 0
}

/** An opinion about what was just reported points at it, or is short. */
function isAbout({ words }: Marks): boolean {
  return words.length <= 30
}
