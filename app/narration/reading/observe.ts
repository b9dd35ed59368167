import type { CoveringGroup } from '../../evidence/catalog/entries.ts'
import type { ComponentKey, ConditionKey } from '../../evidence/catalog/keys.ts'
import type { Sign } from '../words/condition-words.ts'
import type { Found } from '../words/phrases.ts'
import { type Chosen, type Sighting, withLock, withPart } from './chosen-part.ts'
import { conditionOf, fitsPart, hasCollar, impliedPart, otherReadings } from './condition-of.ts'
import type { Marks } from './marks.ts'
import { componentOf, edgeOf, isEdge, isUnit, type PartMark, unitOf } from './said-part.ts'
import { isToolOf, type Weighed } from './suppressed.ts'
import { withoutDoubles } from './without-doubles.ts'

/** What earlier sentences leave to this one. */
export interface Before {
  readonly group: CoveringGroup
  /** The part spoken of last; null when nothing was, or somewhere else. */
  readonly part: ComponentKey | null
  readonly lastEdge: 'ridge' | 'hip' | null
}

/** Something seen on a part, as a sentence says it. */
export interface Observation {
  readonly sign: Sign
  /** Words that say what is seen. */
  readonly signAt: Found<Sign>
  readonly component: ComponentKey
  /** The words that name the part; null where it was named earlier or goes without saying. */
  readonly part: PartMark | null
  readonly condition: ConditionKey
  readonly otherComponents: readonly ComponentKey[]
  readonly otherConditions: readonly ConditionKey[]
  /** Everything that is said of it, as the signs that were put together. */
  readonly merged: readonly Found<Sign>[]
}

/** Puts the signs and parts of a sentence together. */
export function observationsOf(marks: Marks, weighed: Weighed, before: Before): readonly Observation[] {
  const parts = partsThatCount(marks, weighed)
  const edge = parts.map(({ said }) => edgeOf(said)).find((found) => found !== null) ?? before.lastEdge
  const sighting = { marks, weighed, before, parts, edge }
  const found = weighed.signs.flatMap((sign) => observed(sign, sighting))
  return withoutDoubles(found)
}

/** Parts that were corrected in the same breath fall away, and those that are spoken of as an opinion. */
function partsThatCount(marks: Marks, { opinionFrom, opinionTo, correctAt }: Weighed): readonly PartMark[] {
  const inSign = marks.signs.filter(({ value }) => value === 'crack-to-fastener' || value === 'hole')
  const real = marks.parts.filter(({ at, said }) => {
    const isNailOfCrack = said === 'fastener' && inSign.some((sign) => at >= sign.at - 1 && at < sign.at + sign.length)
    return (
      !isNailOfCrack && !isBedLeft(marks, { at, said }) && (opinionFrom === null || at < opinionFrom || at >= opinionTo)
    )
  })
  if (correctAt === null || correctAt === 0) return real
  const after = real.filter(({ at }) => at > correctAt && at - correctAt <= 6)
  return after.length === 0 ? real : real.filter(({ at }) => at > correctAt)
}

/** "Slid off their mortar": the bed only says what was left. */
function isBedLeft({ words, parts }: Marks, { at, said }: Pick<PartMark, 'at' | 'said'>): boolean {
  return (
    said === 'mortar-bed' &&
    /^(its|their|the)$/.test(words[at - 1]?.text ?? '') &&
    /^(off|from|of)$/.test(words[at - 2]?.text ?? '') &&
    parts.some((other) => other.at < at && other.stands === 'head')
  )
}

function observed(sign: Found<Sign>, sighting: Sighting): readonly Observation[] {
  const chosen = chosenParts(sign, sighting)
  return chosen.flatMap(({ component, part, condition }) => [
    {
      sign: sign.value,
      signAt: sign,
      component,
      part,
      condition,
      otherComponents:
        part?.said === 'cap' && sighting.edge === null ? [componentOf('hip-tile', sighting.before.group, null)] : [],
      otherConditions: otherReadings(sign.value, condition),
      merged: [sign],
    },
  ])
}

function chosenParts(sign: Found<Sign>, sighting: Sighting): readonly Chosen[] {
  const named = namedPart(sign, sighting)
  if (named.length > 0) return named.filter(({ part }) => part === null || !isNamedAsPlace(sign, part, sighting))
  if (sign.value === 'weakly-sound') return []
  const unnamed = unnamedPart(sign, sighting)
  return unnamed === null ? [] : [unnamed]
}

/** The part in the same clause, or in one beside it that has nothing of its own; several where they are named together. */
function namedPart(sign: Found<Sign>, sighting: Sighting): readonly Chosen[] {
  const { marks, parts } = sighting
  const clauseOf = (at: number) => marks.clauses[at] ?? 0
  const own = clauseOf(sign.at)
  const inOwn = parts.filter(({ at }) => clauseOf(at) === own)
  const byDistance = (list: readonly PartMark[]) => list.toSorted((a, b) => distance(a, sign) - distance(b, sign))
  const heads = inOwn.filter(({ stands, said }) => stands === 'head' && !isEdge(said))
  if (sign.value === 'weakly-sound') {
    const before = [...byDistance(heads), ...byDistance(inOwn)].find((part) => part.at < sign.at)
    return before === undefined ? [] : withPart(sign, [before], sighting)
  }
  const orders = [
    () => heads,
    () => parts.filter((part) => part.stands === 'head' && isFreeBefore(part, own, sighting) && !isEdge(part.said)),
    () => parts.filter((part) => isFreeBefore(part, own, sighting) && !isEdge(part.said)),
    () => inOwn.filter(({ stands, said }) => stands === 'head' && isEdge(said)),
    () => inOwn.filter(({ stands }) => stands === 'on'),
    () => parts.filter((part) => isFreeAfter(part, own, sighting)),
    () => parts.filter((part) => isFreeBefore(part, own, sighting) && isEdge(part.said)),
    () => inOwn.filter(({ stands, said }) => stands === 'near' && !isEdge(said) && !isReference(sign, said, sighting)),
  ]
  for (const order of orders) {
    const fitting = byDistance(order()).find((part) => withPart(sign, [part], sighting).length > 0)
    if (fitting !== undefined) {
      const whole = withLock(fitting, sighting)
      return withPart(sign, whole === undefined ? namedTogether(fitting, sighting) : [whole], sighting)
    }
  }
  return []
}

function distance(part: PartMark, sign: Found<Sign>): number {
  const end = part.at + part.length
  if (end <= sign.at) return sign.at - end
  return part.at >= sign.at + sign.length ? part.at - sign.at - sign.length + 1.5 : 0
}

/** What lies near a tile's damage only says where it is. */
function isReference({ value }: Found<Sign>, said: PartMark['said'], { before }: Sighting): boolean {
  return (
    value !== 'debris' &&
    !isUnit(componentOf(said, before.group, null)) &&
    impliedPart(value, unitOf(before.group)) !== null
  )
}

/** "Torn under the missing tile": a damaged piece that only says where something else is. */
function isNamedAsPlace(sign: Found<Sign>, { at, stands }: PartMark, { marks, weighed }: Sighting): boolean {
  return (
    stands === 'near' &&
    sign.at + sign.length === at &&
    /^(the|that)$/.test(marks.words[sign.at - 1]?.text ?? '') &&
    weighed.signs.some((other) => other.at < sign.at)
  )
}

/** A part in an earlier clause that no sign of its own clause speaks of: "second pipe, mortar cracked". */
function isFreeBefore(part: PartMark, own: number, { marks, weighed }: Sighting): boolean {
  const clause = marks.clauses[part.at] ?? 0
  if (clause >= own || part.stands === 'near') return false
  const between = weighed.signs.filter(
    (sign) => (marks.clauses[sign.at] ?? 0) >= clause && (marks.clauses[sign.at] ?? 0) < own,
  )
  const isRepeated = /^(one|two|three|four|five|another|some|several|a)$/.test(
    marks.words[marks.clauses.indexOf(own)]?.text ?? '',
  )
  return between.length === 0 || !isRepeated || marks.parts.every((other) => (marks.clauses[other.at] ?? 0) !== own)
}

/** A part in the next clause that no sign of its own speaks of: "corner gone, one tile". */
function isFreeAfter(part: PartMark, own: number, { marks, weighed }: Sighting): boolean {
  const clause = marks.clauses[part.at] ?? 0
  return (
    clause > own &&
    clause - own <= 2 &&
    !weighed.signs.some((sign) => (marks.clauses[sign.at] ?? 0) === clause) &&
    part.stands === 'head'
  )
}

/** "Ridge and hip caps": parts joined by "and" or a comma share what is said of them. */
function namedTogether(part: PartMark, { marks, parts }: Sighting): readonly PartMark[] {
  const before = parts.find((other) => {
    const gap = marks.words
      .slice(other.at + other.length, part.at)
      .map(({ text }) => text)
      .join(' ')
    return other.at < part.at && /^(and|and the|or|and both|plus the)$/.test(gap) && other.stands === part.stands
  })
  return before === undefined ? [part] : [before, part]
}

/** "The strap broke": what it is said of is no part of a roof. */
function hasStrangeSubject({ words }: Marks): boolean {
  const [article, noun, verb] = words
  if (article?.text === 'i' && /^(slip|trip|slid|fal|drop|step|lose)$/.test(noun?.stem ?? '')) return true
  return (
    /^(the|my|our|his|her|a)$/.test(article?.text ?? '') &&
    (words.length <= 3 || /^(be|have)$/.test(verb?.stem ?? '')) &&
    !/^(surface|glaze|finish|coating|color|paint|profile|corner|edge|lock|one|ones|rest|other|others|whole|next|first|second|third|last|bottom|top|crack|gap|hole|piece|slope|side|front|back)$/.test(
      noun?.text ?? '',
    )
  )
}

/** "Break.": a word by itself that may order or name anything. */
function isBareVerb({ words }: Marks): boolean {
  return words.length === 1 && !/(ed|en|ing|gone|loose|torn|bent)$/.test(words[0]?.text ?? '')
}

/** Signs that are said of the covering as a whole without anything being pointed at. */
const PLAIN: ReadonlySet<Sign> = new Set<Sign>([
  'age',
  'debris',
  'repair',
  'scour',
  'flaw',
  'discontinued',
  'mismatch',
  'corner',
  'hole',
  'lock',
])

/** Somewhere that was not reached: a place or a stretch of the roof must be named. */
function notReached({ words, places }: Marks): Chosen | null {
  const isSomewhere = words.some(({ text }) =>
    /^(section|slope|part|area|side|end|roof|corner|valley|ridge|stretch|level)$/.test(text),
  )
  return places.length === 0 && !isSomewhere ? null : { component: 'other', part: null, condition: 'not-accessible' }
}

/** No part is named: the one spoken of last if it fits, else the covering's own unit, and only where something is pointed at or counted. */
function unnamedPart(sign: Found<Sign>, { marks, before, weighed, parts }: Sighting): Chosen | null {
  const own = marks.clauses[sign.at]
  const isHere = (at: number) => marks.clauses[at] === own
  const starts = marks.words[0]
  const isTerse = marks.words.length <= 6 && !/^(i|we|you|he|she|they|my)$/.test(starts?.text ?? '')
  const isPointed =
    marks.stances.some(({ value, at }) => value === 'pointing' && (isHere(at) || at < sign.at)) ||
    marks.counts.length > 0
  const hasOther = marks.stances.some(
    (stance) =>
      (stance.value === 'cause' && isHere(stance.at)) ||
      stance.value === 'order' ||
      (stance.value === 'foreign' && !isToolOf(marks, sign, stance)),
  )
  if (hasOther || parts.some(({ at, stands, said }) => isHere(at) && stands !== 'near' && !isEdge(said))) return null
  if (sign.value === 'no-access') return notReached(marks)
  if (hasStrangeSubject(marks) || isBareVerb(marks)) return null
  if (!isTerse && !isPointed && !PLAIN.has(sign.value) && marks.measures.length === 0) return null
  if (sign.value === 'mark-by-others') return { component: unitOf(before.group), part: null, condition: 'other' }
  // A force was read on a piece that was lifted, whatever was spoken of before.
  // "One has cracked, two have slid" counts pieces, also after a pipe was spoken of.
  const isLifted = marks.measures.some(({ unit }) => unit === 'lbf') || marks.counts.some(({ at }) => isHere(at))
  if (before.part !== null && (!isLifted || isUnit(before.part))) {
    const condition = conditionOf(sign.value, before.part, hasCollar(before.part))
    if (condition !== null && fitsPart(condition, before.part)) return { component: before.part, part: null, condition }
  }
  const implied = weighed.signs.length > 0 ? impliedPart(sign.value, unitOf(before.group)) : null
  const condition = implied === null ? null : conditionOf(sign.value, implied)
  return implied === null || condition === null ? null : { component: implied, part: null, condition }
}
