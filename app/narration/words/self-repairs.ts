import { numberAt } from './number-words.ts'
import { phrases } from './phrases.ts'
import type { SpokenWord } from './spoken-words.ts'

/** What people say between a number that slipped out and the one that they mean. */
const EDITS = phrases([
  [
    true,
    `no wait; wait no; no; nope; wait; wait a minute|second|sec; excuse me; pardon; pardon me; sorry; i be sorry; i mean; i mean to say; make
    that|it; correction; scratch|strike|check|cancel that; or rather; rather; actually; hold on; hang on; hold up; well; let me look|see|count|check again; let me
    recount|recheck|correct|fix|count|check|redo|remeasure; my mistake|bad|error; i misread|misspeak|misspoke|miscount * that|it|tape|gauge; i misread|misspeak|misspoke|miscount;
    oops; whoops; hmm; recount; no no; say; better say|make; let us say; call it; more like; it|that be|look * more like; it|that be * closer; it|that be actually|really; make it; i take that back; take that back; on second
    thought|look; i stand corrected; that be wrong|not right; that be not right; come to think`,
  ],
])

/** An edit that needs no comma before it. */
const PLAIN_EDIT =
  /^(no wait|wait no|excuse me|i mean|make that|scratch that|strike that|check that|correction|or rather|sorry|no make that|no)$/
const AFTER_NO = /^(i|it|that|this|there|they|make|wait|hold|actually|sorry|more|closer|about|at|let|the)$/
const QUALIFIER =
  /^(about|around|roughly|closer|close|to|at|least|most|more|like|over|nearly|almost|maybe|probably|say|approximately|exactly|good|only|just|better|than|for)$/
const LEADING =
  /^(it|is|was|that|the|tape|gauge|ruler|says|said|reads|read|should|be|are|i|we|got|have|count|counted|call|make|really|now|there|they|measured|a|an|would|shows|see|get|this|to|actually|well|no|wait)$/
const UNIT =
  /^(inch|inches|foot|feet|ft|in|pounds?|lbs?|square|sq|yards?|mm|cm|millimeters?|centimeters?|percent|"|%|″|”|kilos?|newtons?)$/
const MOST_BETWEEN = 6
const MOST_ASIDE = 9

interface Amount {
  readonly at: number
  /** Words of the number and of its unit. */
  readonly end: number
  readonly unitAt: number
}

/**
 * The sentence as it was meant where a number is put right in the same breath: "two, excuse me, five square feet", "fifteen
 * feet, no, I paced it off, eighteen feet". The number that slipped out and the words that take it back fall away; a unit or a
 * noun that was only said before stays.
 */
export function withoutSlips(words: readonly SpokenWord[]): readonly SpokenWord[] {
  let out = withoutAlmost(words)
  for (let at = 1; at < out.length; at += 1) {
    const edit = EDITS.at(out, at)
    if (edit === null || !isEdit(out, at, edit.length)) continue
    const repaired = repairedAt(out, at, edit.length) ?? replacedAt(out, at, edit.length)
    if (repaired === null) continue
    out = repaired
    at = 0
  }
  return out
}

function isEdit(words: readonly SpokenWord[], at: number, length: number): boolean {
  const text = textOf(words.slice(at, at + length))
  // "No gauge on me" denies, "no, six" and "no I paced it" put right.
  if (
    text === 'no' &&
    words[at + 1]?.parted === 'no' &&
    !isNumber(words, at + 1) &&
    !AFTER_NO.test(words[at + 1]?.text ?? '')
  )
    return false
  // "Well" and "like" are edits only with a comma before them; "there is no" denies.
  return words[at]?.parted !== 'no' || (PLAIN_EDIT.test(text) && (text !== 'no' || isNumber(words, at + 1)))
}

function isNumber(words: readonly SpokenWord[], at: number): boolean {
  const number = numberAt(words, at)
  return number !== null && !number.isArticle
}

function repairedAt(words: readonly SpokenWord[], at: number, length: number): readonly SpokenWord[] | null {
  const slip = amountBefore(words, at)
  const meant = slip === null ? null : amountAfter(words, at + length)
  if (slip === null || meant === null) return null
  const slipUnit = words.slice(slip.unitAt, slip.end)
  const unit = words.slice(meant.unitAt, meant.end)
  if (slipUnit.length > 0 && unit.length > 0 && !isSameKind(slipUnit, unit)) return null
  const between = words.slice(slip.end, at)
  const after = words.slice(meant.end)
  const noun = after[0]
  // "Three caps, no, four": the noun was said before; "three caps, no, four caps": it comes again.
  const isNounAgain =
    noun !== undefined && noun.parted === 'no' && between.some((word) => clauseStems(after).has(word.stem))
  const isNounAfter = noun !== undefined && noun.parted === 'no' && !/^(and|at|on|in|for|with|of)$/.test(noun.text)
  const kept = isNounAgain || (isNounAfter && between.length <= 3 && unit.length === 0) ? [] : between
  const qualifiers = words.slice(at + length, meant.at).filter((word) => QUALIFIER.test(word.text))
  const number = words
    .slice(meant.at, meant.unitAt)
    .map((word, i): SpokenWord => (i === 0 ? { ...word, parted: 'no' } : word))
  return [
    ...words.slice(0, slip.at),
    ...qualifiers
      .filter((word) => !/^(for|to)$/.test(word.text) || qualifiers.some(({ text }) => text.startsWith('clos')))
      .map((word): SpokenWord => ({ ...word, parted: 'no' })),
    ...number,
    ...(unit.length > 0 ? unit : slipUnit),
    ...kept,
    ...after,
  ]
}

const PREPOSITION = /^(on|at|along|under|over|by|near|in|around|below|above)$/

/** "On the hip, no, on the ridge": the same preposition again, and another place. */
function replacedAt(words: readonly SpokenWord[], at: number, length: number): readonly SpokenWord[] | null {
  const again = words[at + length]?.text ?? ''
  if (!PREPOSITION.test(again) || words[at]?.parted === 'no') return null
  for (let from = at - 2; from >= Math.max(0, at - 5); from -= 1) {
    const word = words[from]
    if (word === undefined || (words[from + 1]?.parted ?? 'no') !== 'no') return null
    if (word.text !== again) continue
    const rest = words.slice(at + length)
    return [...words.slice(0, from), ...rest.map((one, i) => (i === 0 ? { ...one, parted: word.parted } : one))]
  }
  return null
}

function clauseStems(words: readonly SpokenWord[]): ReadonlySet<string> {
  const end = words.findIndex((word, i) => i > 0 && word.parted !== 'no')
  return new Set(words.slice(0, end < 0 ? words.length : end).map(({ stem }) => stem))
}

/** The last amount before an edit, with at most a few words after it. */
function amountBefore(words: readonly SpokenWord[], edit: number): Amount | null {
  for (let at = edit - 1; at >= Math.max(0, edit - MOST_BETWEEN - 4); at -= 1) {
    const amount = amountAt(words, at)
    if (amount === null || amount.end > edit || isInsideNumber(words, at)) continue
    return edit - amount.end <= MOST_BETWEEN ? amount : null
  }
  return null
}

/** "Two" of "twenty two" begins no number, nor does the "half" of "one and a half". */
function isInsideNumber(words: readonly SpokenWord[], at: number): boolean {
  for (let before = at - 1; before >= Math.max(0, at - 4); before -= 1) {
    const amount = numberAt(words, before)
    if (amount !== null && before + amount.length > at) return true
  }
  return false
}

/** The amount that takes the other's place: after the edit, further edits, and an aside such as "I paced it off". */
function amountAfter(words: readonly SpokenWord[], from: number): Amount | null {
  for (let at = from; at <= from + MOST_ASIDE && at < words.length; at += 1) {
    const amount = amountAt(words, at)
    if (amount !== null) return amount
    const text = words[at]?.text ?? ''
    if (!LEADING.test(text) && !QUALIFIER.test(text) && !ASIDE.test(text)) return null
  }
  return null
}

/** Words of an aside that says how the better number came about. */
const ASIDE =
  /^(misread|misspoke|misspeak|miscounted|miscount|paced|counted|measured|recount|recounted|remeasured|checked|recheck|check|tape|gauge|off|out|again|one|looking|look|see|hiding|missed|mine|back|behind|me|let|my|mistake|bad|on|hold|excuse|pardon|second|thought|strike|scratch|here|too|many|wrong|number|glare|another|hand|closer|up|now|stand|corrected|of|first|that)$/

function amountAt(words: readonly SpokenWord[], at: number): Amount | null {
  const number = numberAt(words, at)
  if (number === null) return null
  const unitAt = at + number.length
  let end = unitAt
  while (end < words.length && end - unitAt < 2 && words[end]?.parted === 'no' && UNIT.test(words[end]?.text ?? ''))
    end += 1
  if (number.isArticle && end === unitAt) return null
  if (words[unitAt]?.text === 'in' && end === unitAt + 1) end = unitAt
  const more = end > unitAt && words[end]?.text === 'and' ? numberAt(words, end + 1) : null
  return { at, unitAt, end: more !== null && more.isFraction ? end + 1 + more.length : end }
}

function isSameKind(a: readonly SpokenWord[], b: readonly SpokenWord[]): boolean {
  const kind = (unit: readonly SpokenWord[]) => unit.map(({ stem }) => stem).join(' ')
  const isLength = (unit: readonly SpokenWord[]) => /^(inch|foot|in|ft)/.test(kind(unit))
  return kind(a).split(' ')[0] === kind(b).split(' ')[0] || (isLength(a) && isLength(b)) || kind(b).endsWith('foot')
}

/** "I almost said a dozen but I didn't count": the number was not said of anything. */
function withoutAlmost(words: readonly SpokenWord[]): readonly SpokenWord[] {
  const at = words.findIndex(
    ({ text }, i) =>
      /^(almost|nearly)$/.test(text) && /^(say|writ|wrot|put|call|count|went)$/.test(words[i + 1]?.stem ?? ''),
  )
  const number = at < 0 ? null : [2, 3].map((skip) => numberAt(words, at + skip)).find((found) => found !== null)
  if (number == null) return words
  const from = words[at - 1]?.text === 'i' ? at - 1 : at
  const isPieces = words[number.at + number.length]?.text === 'of' ? 1 : 0
  return [...words.slice(0, from), ...words.slice(number.at + number.length + isPieces)]
}

function textOf(words: readonly SpokenWord[]): string {
  return words.map(({ text }) => text).join(' ')
}
