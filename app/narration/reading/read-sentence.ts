import type { DraftPlace, Read } from '../draft.ts'
import type { SaidPlace } from '../places/said-place.ts'
import { phrases } from '../words/phrases.ts'
import type { Sentence } from '../words/spoken-words.ts'
import { amend, retract } from './amend.ts'
import { draftOf } from './draft-of.ts'
import { type Marks, marksOf } from './marks.ts'
import { isOneLeft, lastEdgeOf, partLeft } from './carried.ts'
import { type Observation, observationsOf } from './observe.ts'
import { rangesOf, type Reading, textOf } from './reading.ts'
import { type Weighed, weighed } from './suppressed.ts'

/** After this much silence "it" and "this one" no longer mean what was spoken of before. */
const FORGOTTEN_MS = 240_000

/** Words of a person who is not on the roof. */
const GROUND = phrases([
  [
    true,
    'on|from the ground; from the street|sidewalk|driveway; in the front|back yard; on|off the ladder; still on the ground; back down; down on the ground; at|to the curb',
  ],
])

/** Reads one sentence: drafts what it reports, and changes or takes back what was drafted before. */
export function readSentence(reading: Reading, sentence: Sentence): void {
  const marks = marksOf(sentence, reading.resolver.landmarks, reading.heard)
  if (marks.words.length === 0) return
  if (reading.last !== null && sentence.startMs - reading.last.endMs > FORGOTTEN_MS) reading.last = null
  const weighing = weighed(marks, sentence.isQuestion)
  const isTakenBack = takesBack(reading, marks, weighing)
  const places = placesThatCount(marks, weighing)
  const before = { ...reading }
  const isElsewhere = places.some((place) => startsAnew(reading, place))
  const observations =
    isTakenBack === 'all' ? [] : observationsOf(marks, weighing, { ...before, part: isElsewhere ? null : before.part })
  const isOnlyMoving = isElsewhere && weighing.correctAt === null
  const isSaidAgain = repeatsLast(reading, weighing, observations)
  if (
    (observations.length === 0 || isSaidAgain) &&
    !weighing.isElsewhere &&
    weighing.retractAt === null &&
    !isOnlyMoving
  ) {
    const amended = amend(reading, marks, { weighing, places: places.map((place) => readPlace(reading, marks, place)) })
    if (amended) return
  }
  if (replacesLast(reading, weighing, observations) && reading.last !== null) retract(reading, reading.last)
  const written = observations.flatMap((observation) => {
    const place = placeFor(observation, places)
    const own = place === null ? reading.place : readPlace(reading, marks, place)
    return draftOf(reading, marks, { observation, all: observations, place: own, weighing })
  })
  if (written.length > 0) reading.last = written.at(-1) ?? null
  moveOn(reading, marks, { places, sentence, observations })
}

/** "Correction, three hip caps are loose": said anew from the start, it takes the place of what was said before. */
function replacesLast(
  { last, sentence }: Reading,
  { correctAt }: Weighed,
  observations: readonly Observation[],
): boolean {
  if (last?.draft == null || correctAt === null || correctAt > 2 || sentence - last.sentence > 1) return false
  const { component, condition } = last.draft
  return observations.some(
    (one) =>
      one.part !== null &&
      one.component === component.value &&
      (one.condition === condition.value || one.condition === 'sound'),
  )
}

/** "Sorry, both are split": the same thing of nothing newly named only counts it anew. */
function repeatsLast({ last }: Reading, { correctAt }: Weighed, observations: readonly Observation[]): boolean {
  return (
    last?.draft != null &&
    correctAt !== null &&
    correctAt <= 2 &&
    observations.length > 0 &&
    observations.every(({ part, sign }) => part === null && sign === last.sign)
  )
}

/** Takes back the draft before where the sentence says so; "all" when it reports nothing besides. */
function takesBack(reading: Reading, marks: Marks, weighing: Weighed): 'no' | 'last' | 'all' {
  const { last } = reading
  const isDenied = weighing.denied.some((sign) => last !== null && sign.value === last.sign && isPointing(marks))
  const ownBefore = marks.signs.filter(({ at }) => weighing.retractAt !== null && at < weighing.retractAt)
  const ownParts = marks.parts.filter(({ at }) => weighing.retractAt !== null && at < weighing.retractAt)
  const isRetract = weighing.retractAt !== null && (ownBefore.length === 0 || ownParts.length === 0)
  // "I'd start over, but leave that out": what is taken back is the thought itself.
  if (isRetract && isOwnThought(marks, weighing.retractAt ?? 0)) return 'all'
  const isHarmless = weighing.isHarmless && weighing.signs.length === 0 && !hasOwnBefore(marks)
  if (isTakenForSound(marks, weighing, last)) {
    if (last !== null) retract(reading, last)
    return 'all'
  }
  if (!isDenied && !isRetract && !isHarmless) return 'no'
  if (last !== null) retract(reading, last)
  return isDenied && weighing.retractAt === null && !isHarmless && weighing.signs.length > 0 ? 'last' : 'all'
}

/** "Actually no, it's tight", "correction, no crack": what was reported is there no more. */
function isTakenForSound(marks: Marks, { correctAt, signs, denied }: Weighed, last: Reading['last']): boolean {
  if (last === null || correctAt === null || correctAt > 2 || marks.parts.length > 0) return false
  const isSound = signs.length > 0 && signs.every(({ value }) => value === 'sound' || value === 'weakly-sound')
  return isSound || (signs.length === 0 && denied.some(({ value }) => value === last.sign))
}

function isOwnThought({ stances }: Marks, retractAt: number): boolean {
  return stances.some(
    ({ value, at }) => (value === 'unreal' || value === 'opinion' || value === 'elsewhere') && retractAt - at >= 4,
  )
}

function isPointing({ words }: Marks): boolean {
  const start = words.slice(0, 5)
  return (
    start.some(({ text }) => /^(that|it|this|those|they|these)$/.test(text)) &&
    start.some(({ stem }) => stem === 'be') &&
    start.some(({ text }) => text === 'not')
  )
}

/** A part and a sign of its own before the harmless thing: that sentence takes back itself, not the one before. */
function hasOwnBefore({ parts, signs }: Marks): boolean {
  return parts.length > 0 && signs.some(({ value }) => value !== 'age' && value !== 'debris')
}

/** Places that are said of here and now, the corrected ones without those before. */
function placesThatCount(
  marks: Marks,
  { opinionFrom, opinionTo, isElsewhere, correctAt }: Weighed,
): readonly SaidPlace[] {
  const isOrdered = marks.stances.some(({ value, at }) => value === 'order' && at < (marks.places[0]?.at ?? 0))
  if (isElsewhere || isOrdered) return []
  const real = marks.places.filter(({ at }) => opinionFrom === null || at < opinionFrom || at >= opinionTo)
  if (correctAt === null) return real
  const after = real.filter(({ at }) => at > correctAt)
  return after.length > 0 ? after : real
}

function placeFor({ signAt, part }: Observation, places: readonly SaidPlace[]): SaidPlace | null {
  const at = Math.min(signAt.at, part?.at ?? signAt.at)
  return places.findLast((place) => place.at <= at) ?? places.find((place) => place.at > at) ?? null
}

function readPlace(reading: Reading, marks: Marks, place: SaidPlace): Read<DraftPlace> {
  const from = rangesOf(marks.words, [place])
  return { value: { words: textOf(reading.cues, from), facetIds: reading.resolver.facetsOf(place) }, from }
}

/** A new place ends what "it" may mean. */
function startsAnew(reading: Reading, place: SaidPlace): boolean {
  const facets = reading.resolver.facetsOf(place)
  const known = reading.place?.value.facetIds ?? []
  return facets.length > 0 && !facets.some((id) => known.includes(id))
}

interface Moved {
  readonly places: readonly SaidPlace[]
  readonly sentence: Sentence
  readonly observations: readonly Observation[]
}

function moveOn(reading: Reading, marks: Marks, { places, sentence, observations }: Moved): void {
  const ground = GROUND.all(marks.words).at(-1)
  if (ground !== undefined && places.length === 0) {
    const words = textOf(reading.cues, rangesOf(marks.words, [ground]))
    const cue = marks.words[ground.at]?.cue ?? 0
    reading.places.push({ cue, startMs: sentence.startMs, words, facetIds: [], isGround: true })
  }
  const last = places.at(-1)
  if (last !== undefined) {
    const isNew = startsAnew(reading, last)
    reading.place = readPlace(reading, marks, last)
    reading.places.push({
      cue: marks.words[last.at]?.cue ?? 0,
      startMs: sentence.startMs,
      ...reading.place.value,
      isGround: false,
    })
    if (isNew && observations.length === 0) {
      reading.part = null
      reading.lastEdge = null
    }
  }
  const before = { group: reading.group, part: reading.part, lastEdge: reading.lastEdge }
  reading.part = partLeft(marks, observations, before)
  reading.isOnePart = isOneLeft(marks, reading.isOnePart)
  reading.lastEdge = lastEdgeOf(marks.parts, reading.lastEdge)
}
