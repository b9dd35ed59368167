import type { Extent } from '../../evidence/finding.ts'
import { isCounted } from '../words/component-words.ts'
import type { Sign } from '../words/condition-words.ts'
import { phrases } from '../words/phrases.ts'
import type { Marks } from './marks.ts'
import type { Observation } from './observe.ts'
import type { Span } from './quantities.ts'
import { isEdge, isOnePiece, isUnit, type PartMark } from './said-part.ts'

type Vague = 'several' | 'whole-facet' | 'examples'

const VAGUE = phrases<Vague>([
  [
    'several',
    `several; some; few; a few; handful; many; bunch; a lot; lots; plenty; multiple; numerous; ton; load; various;
    quite a few|bunch|number|lot; a number of; dozens; here and there; scattered; half of|the; most; a good
    many|few|deal|handful|number; others; whole row|line|string|bunch|run|patch of`,
  ],
  [
    'whole-facet',
    `whole|entire * slope|side|roof|face|section|thing|facet|plane|field|area|back|front; every
    tile|one|cap|last|single; all of it|them|these|those|the; all over|throughout; all the|of|these|those **
    tile|cap|shingle|panel|nail|screw|fastener; throughout;
    everywhere; just about|practically|nearly everything|every|all; everything; all these|those; across the
    whole|entire; wall to wall; top to bottom`,
  ],
  [
    'examples',
    `for example|instance; as an example; example of|here; a|good|prime|perfect|classic|great|textbook|nice|fine example; keep run into|across; keep see|find|get|hit; kind of thing; an example; typical; sample of; representative; like this|that all
    over|everywhere|throughout; one of many; just an example`,
  ],
])

/** An extent and the words that say it. */
export interface SaidExtent {
  readonly extent: Extent
  readonly at: Span | null
}

/**
 * How much of it there is, as it was said. Of "three or four" the lower is kept as "about 3", "a couple" is "about 2",
 * "several" and "a few" stay uncounted; "a cracked tile" and "this tile" are one. A number nobody said is never given.
 */
export function extentOf(marks: Marks, observation: Observation, correctAt: number | null): SaidExtent | null {
  return (
    counted(marks, observation, correctAt) ??
    measured(marks, observation) ??
    vague(marks, observation) ??
    single(marks, observation)
  )
}

function clausesOf(marks: Marks, { part, signAt, merged }: Observation): ReadonlySet<number> {
  const ats = [part?.at, signAt.at, ...merged.map(({ at }) => at)].flatMap((at) => (at === undefined ? [] : [at]))
  return new Set(ats.map((at) => marks.clauses[at] ?? 0))
}

function counted(marks: Marks, observation: Observation, correctAt: number | null): SaidExtent | null {
  const own = clausesOf(marks, observation)
  const anchor = observation.part?.at ?? observation.signAt.at
  const fitting = marks.counts.filter(({ at }) => {
    if (/^(not|than)$/.test(marks.words[at - 1]?.text ?? '')) return false
    return own.has(marks.clauses[at] ?? 0) || isJoined(marks, at, own)
  })
  const later = correctAt === null ? [] : fitting.filter(({ at }) => at > correctAt)
  const chosen = (later.length > 0 ? later : fitting).toSorted((a, b) => gap(a, anchor) - gap(b, anchor))[0]
  if (chosen === undefined) return null
  if (
    observation.part !== null &&
    !isCounted(observation.part.said) &&
    !observation.part.isPlural &&
    !/^(place|spot|area|section|piece)/.test(marks.words[chosen.at + chosen.length]?.text ?? '') &&
    !isOfItsCaps(marks, observation, chosen)
  )
    return null
  return { extent: { kind: chosen.kind, count: chosen.count }, at: chosen }
}

/** "The ridge shakes, ten caps maybe": the edge is not counted, its caps are. */
function isOfItsCaps({ parts }: Marks, { part }: Observation, count: Span): boolean {
  return (
    part !== null &&
    isEdge(part.said) &&
    parts.some(({ said, at }) => at === count.at + count.length && (said === 'cap' || said.endsWith('-tile')))
  )
}

/** A count that stands alone in its clause belongs to its neighbour: "corner gone, one tile", "three, no, four". */
function isJoined(marks: Marks, at: number, own: ReadonlySet<number>): boolean {
  const clause = marks.clauses[at] ?? 0
  const hasSign = marks.signs.some((sign) => (marks.clauses[sign.at] ?? 0) === clause)
  return !hasSign && [clause - 2, clause - 1, clause + 1, clause + 2].some((near) => own.has(near))
}

function gap({ at, length }: Span, anchor: number): number {
  return at < anchor ? anchor - at - length : at - anchor + 2
}

/** Feet of what runs along the roof, square feet of what covers it. */
function measured(marks: Marks, observation: Observation): SaidExtent | null {
  const own = clausesOf(marks, observation)
  for (const measure of marks.measures) {
    const clause = marks.clauses[measure.at] ?? 0
    if (
      ![0, -1, 1, -2].some(
        (step) => own.has(clause + step) && (step > -2 || ![clause, clause - 1].some((one) => hasOwnSign(marks, one))),
      )
    )
      continue
    if (measure.unit === 'sqft') return { extent: { kind: 'area', areaSqFt: measure.value }, at: measure }
    const isRun = observation.part === null || !isCounted(observation.part.said) || RUNS.has(observation.component)
    if (measure.unit === 'ft' && isRun && !isAway(marks, measure))
      return { extent: { kind: 'length', lengthFt: measure.value }, at: measure }
  }
  return null
}

/** "Is loose, oh, fifteen feet of it": two clauses on, but of nothing else. */
function hasOwnSign({ clauses, signs, parts }: Marks, clause: number): boolean {
  return [...signs, ...parts].some(({ at }) => clauses[at] === clause)
}

const RUNS: ReadonlySet<string> = new Set([
  'eave-closure',
  'mortar-bed',
  'ridge-tile',
  'hip-tile',
  'rake-tile',
  'seam',
  'rake-trim',
  'ridge-flashing',
  'eave-cleat',
  'seal-strip',
  'flashing',
])

/** "Six feet from the ridge" says where, not how much. */
export function isAway(marks: Marks, { at, length }: Span): boolean {
  const next = marks.words[at + length]
  return next?.parted === 'no' && /^(from|above|below|away|back|left|right|over|past|in|off)$/.test(next.text)
}

function vague(marks: Marks, observation: Observation): SaidExtent | null {
  const own = clausesOf(marks, observation)
  const found = VAGUE.all(marks.words).find(({ at }) => own.has(marks.clauses[at] ?? 0) || isJoined(marks, at, own))
  if (found === undefined) return null
  const isUncounted = observation.part !== null && !isCounted(observation.part.said)
  if (found.value === 'several' && (isUncounted || isOnlySome(marks, found))) return null
  return { extent: { kind: found.value }, at: found }
}

/** "Some mortar", "some kind of", "a little more": no number of pieces. */
function isOnlySome(marks: Marks, { at, length }: Span): boolean {
  const text = marks.words[at]?.text ?? ''
  return (
    (text === 'some' || text === 'most') &&
    /^(kind|sort|more|point|time|how|of\s)/.test(marks.words[at + length]?.text ?? '')
  )
}

/** Conditions that are said of a kind of tile rather than of one. */
const OF_A_KIND: ReadonlySet<string> = new Set(['sound', 'surface-ageing', 'discontinued-profile', 'not-accessible'])

/** What is one on one tile: "a crack", "this broken corner". */
const ONE_A_TILE: ReadonlySet<Sign> = new Set<Sign>(['crack', 'crack-to-fastener', 'across', 'corner', 'chip', 'break'])

/**
 * "A cracked tile", "this tile", "another one", and of whole pieces "the cap" and "tile out" too. "The fastener" and "the
 * foam" leave open how many.
 */
function single(marks: Marks, observation: Observation): SaidExtent | null {
  const { part, signAt, component, condition } = observation
  if (component === 'other' || component === 'mortar-bed') return null
  if (part !== null && !isOnePiece(part)) return null
  const isPiece = isUnit(component) && !OF_A_KIND.has(condition)
  const from = part?.at ?? signAt.at
  for (let at = from - 1; at >= Math.max(0, from - 4); at -= 1) {
    const word = marks.words[at]
    if (word === undefined || marks.words[at + 1]?.parted === 'strong') break
    if (word.text === 'the' && (part === null || !isPiece)) return null
    if (/^(a|an|another|this|that|the)$/.test(word.text)) {
      const isOne =
        part !== null ||
        marks.words[at + 1]?.text === 'one' ||
        word.text === 'another' ||
        (isPiece && ONE_A_TILE.has(signAt.value))
      return isOne ? { extent: { kind: 'exactly', count: 1 }, at: { at, length: 1 } } : null
    }
  }
  return part !== null && isPiece && part.said !== 'nose' && isBare(marks, part)
    ? { extent: { kind: 'exactly', count: 1 }, at: { at: part.at, length: part.length } }
    : null
}

/** "Tile out", "loose field tile": terse people leave the article out, so that the piece stands near its clause's start. */
function isBare({ words, clauses }: Marks, { at, stands }: PartMark): boolean {
  const before = words.slice(clauses.indexOf(clauses[at] ?? 0), at)
  return (
    stands === 'head' &&
    before.length <= 3 &&
    !before.some(({ text }) =>
      /^(no|any|every|each|all|some|of|the|these|those|most|both|many|is|are|was|were)$/.test(text),
    )
  )
}
