import { addedFraction, numberAt } from '../words/number-words.ts'
import { remembered } from '../words/remembered.ts'
import { isNamedNumber } from './named-number.ts'
import type { SpokenWord } from '../words/spoken-words.ts'

/** Words of a sentence, `at` the first of them. */
export interface Span {
  readonly at: number
  readonly length: number
}

/** A number with a unit, brought to inches, feet, square feet, pounds of force or per cent. */
export interface SpokenMeasure extends Span {
  readonly unit: 'in' | 'ft' | 'sqft' | 'lbf' | 'percent'
  readonly value: number
  /** True for "about", "or so", and where a range was said, of which this is the lower end. */
  readonly isRough: boolean
}

/** A number without a unit. */
export interface SpokenCount extends Span {
  readonly kind: 'exactly' | 'at-least' | 'about'
  readonly count: number
}

export interface Quantities {
  readonly measures: readonly SpokenMeasure[]
  readonly counts: readonly SpokenCount[]
}

type Unit = Pick<SpokenMeasure, 'unit'> & { readonly factor: number; readonly length: number }

/** Metric and other units; 1 in is 25.4 mm and 1 lbf 4.4482216 N exactly enough (NIST SP 811, appendix B). */
const UNITS: readonly (readonly [RegExp, SpokenMeasure['unit'], number])[] = [
  [/^(inch|inche|inches|in|"|″|”)$/, 'in', 1],
  [/^(foot|feet|feat|ft)$/, 'ft', 1],
  [/^(yards?)$/, 'ft', 3],
  [/^(mm|millimeters?|millimetres?|mils?)$/, 'in', 1 / 25.4],
  [/^(cm|centimeters?|centimetres?)$/, 'in', 1 / 2.54],
  [/^(meters?|metres?)$/, 'ft', 1 / 0.3048],
  [/^(pounds?|lbs?|lbf)$/, 'lbf', 1],
  [/^(kilos?|kilograms?|kg|kgs)$/, 'lbf', 2.2046226],
  [/^(newtons?)$/, 'lbf', 1 / 4.4482216],
  [/^(percent|%)$/, 'percent', 1],
]

const ROUGHLY = new Set(
  'about around roughly approximately approx maybe say nearly almost probably like some bout perhaps'.split(' '),
)
const MOVES = /^(a|an|the|good|only|just|up|of)$/
/** What a number counts, measures or names that has nothing to do with a roof's parts. */
const NOT_COUNTED =
  /^(hand|hands|finger|fingers|foot|side|end|pieces|parts|halves|o|oclock|clock|minutes?|mins?|hours?|seconds?|years?|days?|weeks?|months?|degrees?|mph|miles?|bucks?|dollars?|percent|am|pm|times?|guys|people|stor(y|ies)|square|squares|nails?\s|th|knots?|twelve|cents?|second|third)$/
/** Numbers of a sentence: what was measured and what was counted. */
export function quantitiesOf(words: readonly SpokenWord[]): Quantities {
  const measures: SpokenMeasure[] = []
  const counts: SpokenCount[] = []
  for (let at = 0; at < words.length;) {
    if (!isNumeric(words[at]?.text ?? '')) {
      at += 1
      continue
    }
    const measured = measureAt(words, at)
    if (measured !== null) {
      measures.push(...measured.measures)
      at += measured.length
      continue
    }
    const counted = countAt(words, at)
    if (counted !== null) counts.push(counted)
    const passed = counted === null ? numberAt(words, at) : null
    at += counted?.length ?? (passed === null || passed.isArticle ? 1 : passed.length)
  }
  return { measures, counts }
}

const NUMERIC =
  /^([\d½¼¾⅛⅜⅝⅞].*|an?|inch|half|quarter|couple|pair|both|too|to|hundred|thousand|dozen|zero|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|.*teen|(twen|thir|for|fif|six|seven|eigh|nine)ty)$/
const isNumeric = remembered((text) => NUMERIC.test(text))

function measureAt(
  words: readonly SpokenWord[],
  at: number,
): { measures: readonly SpokenMeasure[]; length: number } | null {
  const spoken = coupleOfUnits(words, at) ?? heardTwo(words, at) ?? numberAt(words, at)
  const isBareUnit = spoken === null && startsBare(words, at)
  const first = spoken ?? (isBareUnit ? BARE : null)
  if (first === null) return null
  let end = at + first.length
  const values = [first.value]
  let isRange = false
  const link = words[end]?.text ?? ''
  const second = /^(or|to|by|x|and)$/.test(link) ? numberAt(words, end + 1) : null
  if (
    second !== null &&
    !second.isArticle &&
    !(link === 'and' && second.isFraction) &&
    unitAt(words, end + 1 + second.length) !== null
  ) {
    if (link === 'by' || link === 'x') values.push(second.value)
    else isRange = link !== 'and'
    if (link !== 'and') end += 1 + second.length
  }
  const unit = isBareUnit ? unitAt(words, at) : unitAt(words, end)
  const isHeight = !first.isArticle && !Number.isInteger(first.value) && isForceAt(words, end)
  const asInches = unit === null && (isHeight || (first.isFraction && !isShareWord(words, at, end))) ? INCHES : null
  const said = unit ?? asInches
  if (said === null) return null
  end = isBareUnit ? at + said.length : end + said.length
  const more = said === INCHES ? null : addedFraction(words, end)
  if (more !== null) end += more.length
  const across = values.length === 1 && said.length > 0 ? acrossAt(words, end, said) : null
  if (across !== null) {
    values.push(across.value)
    end += across.length
  }
  const isSquare = said.unit === 'ft' && words[end]?.text === 'square'
  if (isSquare) end += 1
  const isRough = isRange || words[at]?.text === 'couple' || isRoughAt(words, at, end)
  const measures = values.map((value): SpokenMeasure => {
    const whole = rounded((value + (more?.value ?? 0)) * said.factor)
    return {
      at,
      length: end - at,
      isRough,
      unit: isSquare ? 'sqft' : said.unit,
      value: isSquare ? rounded(whole * whole) : whole,
    }
  })
  const [long, wide] = measures
  if (said.unit === 'ft' && long !== undefined && wide !== undefined)
    return { measures: [{ ...long, unit: 'sqft', value: rounded(long.value * wide.value) }], length: end - at }
  return { measures: measures.filter(({ value }) => value > 0 && value < 10_000), length: end - at }
}

/** "Two inches by four", "four feet by three feet". */
function acrossAt(words: readonly SpokenWord[], at: number, unit: Unit): { value: number; length: number } | null {
  const second = /^(by|x)$/.test(words[at]?.text ?? '') ? numberAt(words, at + 1) : null
  if (second === null || second.isArticle) return null
  const end = at + 1 + second.length
  const again = unitAt(words, end)
  return { value: second.value, length: end - at + (again?.unit === unit.unit ? again.length : 0) }
}

const INCHES: Unit = { unit: 'in', factor: 1, length: 0 }

/** "A couple inches", "a couple of feet": two, roughly. */
function coupleOfUnits(words: readonly SpokenWord[], at: number): ReturnType<typeof numberAt> {
  if (words[at]?.text !== 'couple') return null
  const length = words[at + 1]?.text === 'of' ? 2 : 1
  if (unitAt(words, at + length) === null) return null
  return { value: 2, at, length, isArticle: false, isFraction: false }
}

/** "Too inches" was two. */
function heardTwo(words: readonly SpokenWord[], at: number): ReturnType<typeof numberAt> {
  const text = words[at]?.text
  if ((text !== 'too' && text !== 'to') || unitAt(words, at + 1) === null) return null
  return { value: 2, at, length: 1, isArticle: false, isFraction: false }
}

/** "Inch and three quarters", as terse people say it: the unit stands for one of it. */
function startsBare(words: readonly SpokenWord[], at: number): boolean {
  return words[at]?.text === 'inch' && addedFraction(words, at + 1) !== null
}

/** "Two and a quarter at eleven pounds": beside a force a height needs no unit. */
function isForceAt(words: readonly SpokenWord[], at: number): boolean {
  const force = /^(at|with|under)$/.test(words[at]?.text ?? '') ? numberAt(words, at + 1) : null
  return force !== null && unitAt(words, at + 1 + force.length)?.unit === 'lbf'
}

const BARE = { value: 1, length: 0, isArticle: false, isFraction: false }

function unitAt(words: readonly SpokenWord[], at: number): Unit | null {
  const text = words[at]?.text ?? ''
  if ((text === 'square' || text === 'sq') && /^(foot|feet|feat|ft)$/.test(words[at + 1]?.text ?? ''))
    return { unit: 'sqft', factor: 1, length: 2 }
  const found = UNITS.find(([form]) => form.test(text))
  if (found === undefined) return null
  // "Three in the back": a preposition, not a unit.
  if (
    text === 'in' &&
    (words[at + 1]?.parted ?? 'no') === 'no' &&
    !/^(long|wide|up|high|deep|at|by|x)$/.test(words[at + 1]?.text ?? 'long')
  )
    return null
  const isForce =
    found[1] === 'lbf' && words[at + 1]?.text === 'of' && /^(force|pull|pressure|lift)$/.test(words[at + 2]?.text ?? '')
  return { unit: found[1], factor: found[2], length: isForce ? 3 : 1 }
}

/** "Half the tiles", "three quarters of the slope", "quarter mile": shares, not lengths. */
function isShareWord(words: readonly SpokenWord[], at: number, end: number): boolean {
  if (/^(wide|long|deep|high|open|thick|proud|apart)$/.test(words[end]?.text ?? '')) return false
  if (/^(half|quarter|a|an)$/.test(words[at]?.text ?? '')) return true
  return /^(of|way|the|mile|hour|dozen|past|as|full|size)$/.test(words[end]?.text ?? '')
}

function countAt(words: readonly SpokenWord[], at: number): SpokenCount | null {
  if (isNamedNumber(words, at)) return null
  const few = coupleAt(words, at)
  if (few !== null) return few
  const first = numberAt(words, at)
  if (first === null || first.isArticle) return null
  const dozen = words[at + first.length]?.text === 'dozen'
  if (first.isFraction && !dozen) return null
  let end = at + first.length + (dozen ? 1 : 0)
  const value = first.value * (dozen ? 12 : 1)
  const link = words[end]?.text ?? ''
  const second = link === 'or' || link === 'to' ? numberAt(words, end + 1) : null
  if (second !== null && !second.isArticle && second.value > value) {
    end += 1 + second.length
    return { at, length: end - at, kind: 'about', count: value }
  }
  if (!Number.isInteger(value) || value < 1 || value > 999 || NOT_COUNTED.test(words[end]?.text ?? '')) return null
  return { at, length: end - at, kind: kindAt(words, at, end), count: value }
}

/** "A couple" is two or thereabouts, "a pair" and "both" are two, and "too tiles" was heard wrong. */
function coupleAt(words: readonly SpokenWord[], at: number): SpokenCount | null {
  const text = words[at]?.text
  const next = words[at + 1]
  if (text === 'couple' && words[at - 1]?.text !== 'last') return { at, length: 1, kind: 'about', count: 2 }
  if (text === 'pair' || text === 'both') return { at, length: 1, kind: 'exactly', count: 2 }
  if ((text === 'too' || isHeardTo(words, at)) && next?.parted === 'no' && isPieces(words, at + 1))
    return { at, length: 1, kind: 'exactly', count: 2 }
  return null
}

/** "Too tiles", "too hip caps", "too of the tiles". */
function isPieces(words: readonly SpokenWord[], at: number): boolean {
  if (words[at]?.text === 'of') return /^(the|these|those|them)$/.test(words[at + 1]?.text ?? '')
  return words
    .slice(at, at + 2)
    .some(({ stem, text }) => /^(til|cap|nail|screw|shingl|panel)$/.test(stem) && text.endsWith('s'))
}

/** "To tiles" at the start was "two tiles". */
function isHeardTo(words: readonly SpokenWord[], at: number): boolean {
  return words[at]?.text === 'to' && !/^(next|down|up|close|over|on|adjacent|due|back)$/.test(words[at - 1]?.text ?? '')
}

function kindAt(words: readonly SpokenWord[], at: number, end: number): SpokenCount['kind'] {
  const before = words
    .slice(Math.max(0, at - 4), at)
    .map(({ text }) => text)
    .join(' ')
  const after = words
    .slice(end, end + 3)
    .map(({ text }) => text)
    .join(' ')
  if (
    /(at least|minimum of|not less than|no fewer than|no less than|more than|upwards of|better than|good)$/.test(
      before,
    ) ||
    /(^|\b(is|are|has|have|got|see|count|find|found|well|just|be|easily|and|of|to|lost|missing) )over$/.test(before)
  )
    return 'at-least'
  if (/^(or more|plus|and counting|at least|if not more|minimum)/.test(after)) return 'at-least'
  return isRoughAt(words, at, end) ? 'about' : 'exactly'
}

function isRoughAt(words: readonly SpokenWord[], at: number, end: number): boolean {
  let before = at - 1
  while (before >= 0 && MOVES.test(words[before]?.text ?? '')) before -= 1
  if (ROUGHLY.has(words[before]?.text ?? '') || /^(close|near|closer|nearer)$/.test(words[before - 1]?.text ?? ''))
    return true
  const after = words
    .slice(end, end + 3)
    .map(({ text }) => text)
    .join(' ')
  return /^(or so|ish|or thereabouts|give or take|or something|roughly|approximately|maybe)/.test(after)
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000
}
