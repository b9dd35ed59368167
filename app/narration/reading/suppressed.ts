import type { Sign } from '../words/condition-words.ts'
import type { Found } from '../words/phrases.ts'
import type { Marks } from './marks.ts'
import { isAnswer } from './signs-of.ts'
import type { Stance } from './stance-words.ts'

/** Which signs of a sentence count, and what else the sentence does. */
export interface Weighed {
  /** Signs that were seen here and now, as statements. */
  readonly signs: readonly Found<Sign>[]
  /** Signs said not to be there. */
  readonly denied: readonly Found<Sign>[]
  /** From this word on the sentence is opinion; null when none of it is. */
  readonly opinionFrom: number | null
  /** Where the opinion ends and the sentence tells what is seen; its length where it doesn't. */
  readonly opinionTo: number
  /** Where the sentence takes something back; null when it doesn't. */
  readonly retractAt: number | null
  /** Where it puts something else in place of what was said; null when it doesn't. */
  readonly correctAt: number | null
  /** True when it says that what was seen is something harmless. */
  readonly isHarmless: boolean
  /** True when nothing in it is said of this roof, here and now. */
  readonly isElsewhere: boolean
}

/** Weighs the signs of a sentence by how it is said. */
export function weighed(marks: Marks, isQuestion: boolean): Weighed {
  const stances = withoutCovered(marks)
  const at = (stance: Stance) => stances.filter(({ value }) => value === stance)
  const opinionFrom = opinionStart(marks, stances)
  const opinionTo = opinionFrom === null ? marks.words.length : opinionEnd(marks, opinionFrom)
  const retract = at('retract').find((mark) => isOrdered(marks, mark)) ?? null
  const harmless = at('harmless').find((mark) => isPlainly(marks, mark)) ?? null
  const isElsewhere = isQuestion || at('elsewhere').length > 0
  const denied: Found<Sign>[] = []
  const signs = marks.signs.filter((sign) => {
    if (isElsewhere || (opinionFrom !== null && sign.at >= opinionFrom && sign.at < opinionTo)) return false
    if (retract !== null && sign.at < retract.at + retract.length) return false
    if (harmless !== null && sign.at < harmless.at + harmless.length && isTakenFor(marks, sign, harmless)) return false
    if (isDenied(marks, stances, sign)) {
      denied.push(sign)
      return false
    }
    return !isUnreal(marks, stances, sign) && !isForeign(marks, stances, sign)
  })
  const isNewNumber = retract !== null && signs.length === 0 && isNumberAfter(marks, retract)
  return {
    signs,
    denied,
    opinionFrom,
    opinionTo,
    retractAt: isNewNumber ? null : (retract?.at ?? null),
    correctAt:
      (isNewNumber ? retract?.at : undefined) ?? at('correct').at(-1)?.at ?? startsWithNo(marks) ?? countedAnew(marks),
    isHarmless: harmless !== null,
    isElsewhere,
  }
}

/** Drops stances that are only a part of something longer: the "no" of "no doubt", the "not" of "not tight". */
function withoutCovered({ stances, signs }: Marks): readonly Found<Stance>[] {
  const inside = (a: { at: number; length: number }, b: { at: number; length: number }) =>
    a.at >= b.at && a.at + a.length <= b.at + b.length
  return stances.filter((stance) => {
    if (stance.value === 'not') {
      if (signs.some((sign) => sign.length > 1 && inside(stance, sign) && sign.value !== 'no-access')) return false
      return !stances.some(
        (other) => (other.value === 'no-negation' || other.value === 'correct') && inside(stance, other),
      )
    }
    if (stance.value === 'unreal') {
      return !stances.some((other) => other.value === 'real' && inside({ at: stance.at, length: 1 }, other))
    }
    return true
  })
}

function opinionStart(marks: Marks, stances: readonly Found<Stance>[]): number | null {
  const starts = stances.filter(({ value }) => value === 'opinion').map(({ at }) => at)
  for (const cause of stances.filter(({ value }) => value === 'cause')) {
    const before = marks.words[cause.at - 1]?.text ?? ''
    const article = /^(the|a|some|that|old|this)$/.test(before) ? (marks.words[cause.at - 2]?.text ?? '') : before
    const start = /^(by|from|of|to|with)$/.test(article) ? cause.at - (article === before ? 1 : 2) : null
    const clause = marks.clauses[cause.at]
    const first = marks.clauses.indexOf(clause ?? 0)
    const hasPart = marks.parts.some((part) => marks.clauses[part.at] === clause)
    // "Foot traffic cracks" names cracks; what they come from is only their kind.
    if (marks.signs.some((sign) => sign.at === cause.at + cause.length)) continue
    if (start !== null) starts.push(start)
    else if (!hasPart && !leadsToSight(marks, clause ?? 0)) starts.push(first)
  }
  return starts.length === 0 ? null : Math.min(...starts)
}

/** "They must have patched this, there is tar on a dozen tiles": from "there is" on it is told what is seen. */
function opinionEnd({ words, clauses }: Marks, from: number): number {
  const at = words.findIndex(
    (word, i) =>
      i > from + 1 &&
      word.parted !== 'no' &&
      clauses[i] !== clauses[from] &&
      /^(there|here)$/.test(word.text) &&
      words[i + 1]?.stem === 'be',
  )
  return at < 0 ? words.length : at
}

/** "Somebody stepped on these, there are four broken corners": after the cause a clause of its own says what is seen. */
function leadsToSight({ words, clauses, signs }: Marks, clause: number): boolean {
  return signs.some((sign) => {
    const own = clauses[sign.at] ?? 0
    const start = clauses.indexOf(own)
    return own > clause && words.slice(start, start + 3).some(({ text }) => /^(there|here|i|we)$/.test(text))
  })
}

/** "Strike that, five was right": a number takes the place of the one before. */
function isNumberAfter({ words, parts, counts, measures }: Marks, { at }: Found<Stance>): boolean {
  const isPointed = (number: number) => /^(that|this|last|the)$/.test(words[number - 1]?.text ?? '')
  return parts.length === 0 && at <= 2 && [...counts, ...measures].some((one) => one.at > at && !isPointed(one.at))
}

/** "Something struck this tile" takes nothing back; "strike this" does. */
function isOrdered({ words }: Marks, { at }: Found<Stance>): boolean {
  return !/^(struck|scratched|dropped|deleted|erased)$/.test(words[at]?.text ?? '')
}

/** "Five, no, six": a number takes the place of the one before. */
function countedAnew({ words, counts }: Marks): number | null {
  const at = words.findIndex((_word, i) => i > 0 && isAnswer(words, i) && counts.some((count) => count.at === i + 1))
  return at < 0 ? null : at
}

/** "No, three quarters" begins a correction. */
function startsWithNo({ words }: Marks): number | null {
  const [first, second] = words
  if (first?.text !== undefined && /^(hmm|oh|ah|well|um|uh|wait)$/.test(first.text) && second?.text === 'no') return 1
  return first?.text === 'no' &&
    (second === undefined ||
      second.parted !== 'no' ||
      /^(it|that|this|wait|hold|the|they|there|make)$/.test(second.text))
    ? 0
    : null
}

const NEW_SUBJECT = /^(but|except|just|only|however|though|although|otherwise|besides|aside|apart)$/
const DENIAL_REACH = 11

/** Said not to be there: "no cracks", "nothing loose", "no broken, slipped or loose tile". */
function isDenied(marks: Marks, stances: readonly Found<Stance>[], sign: Found<Sign>): boolean {
  if (sign.value === 'no-access') return false
  // "Lift: none".
  if (/^(none|nil|negative)$/.test(marks.words[sign.at + sign.length]?.text ?? '')) return true
  return stances.some((not) => {
    if (not.value !== 'not' || not.at + not.length > sign.at || isAnswer(marks.words, not.at)) return false
    if (sign.at - not.at > 16) return false
    const from = marks.clauses[not.at] ?? 0
    const to = marks.clauses[sign.at] ?? 0
    if (from === to) return sign.at - not.at <= DENIAL_REACH
    // A list goes on denying until something is said of its own.
    return marks.words.slice(not.at + 1, sign.at).every((word, i) => {
      const at = not.at + 1 + i
      if (NEW_SUBJECT.test(word.text)) return false
      return (
        (marks.clauses[at] ?? 0) === from ||
        !/^(be|i|there|this|that|we|it|they|he|have|get|one|two|three|see)$/.test(word.stem)
      )
    })
  })
}

/** Wish, question, plan, habit or hearsay in the same clause, or in one before that leads up to it. */
function isUnreal(marks: Marks, stances: readonly Found<Stance>[], sign: Found<Sign>): boolean {
  return stances.some((stance) => {
    if (stance.value !== 'unreal' && stance.value !== 'order') return false
    const own = marks.clauses[stance.at] ?? 0
    const to = marks.clauses[sign.at] ?? 0
    if (stance.value === 'order') return own === to && !marks.counts.some(({ at }) => marks.clauses[at] === to)
    if (stance.at >= sign.at) return isSaidOfAKind(marks, stance, sign)
    const isLeading = /^(if|when|whether|they|he|she|owner|homeowner|let|unless)$/.test(
      marks.words[stance.at]?.text ?? '',
    )
    const isOwnPhrase = sign.value === 'no-access' && stance.at >= sign.at - 1
    return !isOwnPhrase && (own === to || (isLeading && to - own <= 2))
  })
}

/** "They said", "the owner told". */
function isHearsay(words: Marks['words'], at: number): boolean {
  return (
    /^(they|he|she|owner|homeowner|neighbor|adjuster|customer)$/.test(words[at]?.text ?? '') &&
    /^(say|tell|claim|mention|report)$/.test(words[at + 1]?.stem ?? '')
  )
}

/** "A broken tile would rattle", "tiles crack when people walk on them": said of such tiles, wherever they are. */
function isSaidOfAKind({ words, clauses, counts }: Marks, stance: Found<Stance>, sign: Found<Sign>): boolean {
  const said = words[stance.at]?.text ?? ''
  // "A crack like this takes years".
  if (stance.at === sign.at && stance.length > 2) return true
  if (words.slice(stance.at, stance.at + stance.length + 1).some((_word, i) => isHearsay(words, stance.at + i)))
    return true
  if (clauses[stance.at] !== clauses[sign.at] || counts.length > 0) return false
  const isKind =
    /^(would|will|usually|normally|generally|typically|sometimes|often|always)$/.test(said) ||
    (said === 'when' && /^(walk|step|tread)$/.test(words[stance.at + 2]?.stem ?? ''))
  return isKind && !words.slice(0, sign.at).some(({ text }) => /^(this|that|it|here|there)$/.test(text))
}

/** Another thing's crack: no part of a roof stands in the clause, but a phone or a truck does. */
function isForeign(marks: Marks, stances: readonly Found<Stance>[], sign: Found<Sign>): boolean {
  const clause = marks.clauses[sign.at]
  const isHere = (at: number) => marks.clauses[at] === clause
  return (
    !marks.parts.some((part) => isHere(part.at)) &&
    stances.some((stance) => stance.value === 'foreign' && isHere(stance.at) && !isToolOf(marks, sign, stance))
  )
}

/** A hand or a gauge lifts tiles, and "a piece of fence" is named by the debris itself. */
export function isToolOf({ words }: Marks, sign: Found<Sign>, { at, length }: Found<Stance>): boolean {
  if (at >= sign.at && at < sign.at + sign.length) return true
  const isHeld = sign.value === 'lift' || sign.value === 'loose'
  return isHeld && /^(hand|finger|thumb|foot|gauge|gaug|tap|scal)$/.test(words[at + length - 1]?.stem ?? '')
}

/** "It's just a shadow", "that is a cobweb": said of what was seen, not of something else beside it. */
function isPlainly({ words }: Marks, { at }: Found<Stance>): boolean {
  const before = words.slice(Math.max(0, at - 4), at)
  return (
    before.some(({ stem }) => /^(just|only|be)$/.test(stem)) &&
    words.slice(0, at).some(({ text }) => /^(that|it|this|those|they|these|no|not|actually)$/.test(text))
  )
}

/** A sign before "that's only dirt" in the same sentence, or the harmless thing itself. */
function isTakenFor({ words }: Marks, sign: Found<Sign>, harmless: Found<Stance>): boolean {
  if (sign.at >= harmless.at) return true
  return words.slice(sign.at, harmless.at).some(({ text }) => /^(no|not|actually|just|only|oh)$/.test(text))
}
