import type { SpokenWord } from './spoken-words.ts'

/** A number as it was said, and the words it takes. */
export interface SpokenNumber {
  readonly value: number
  readonly at: number
  readonly length: number
  /** True for "a" and "an", which count one only before some words. */
  readonly isArticle: boolean
  /** True when it is a fraction without a whole part, which is a length even where no unit is said. */
  readonly isFraction: boolean
}

const UNITS =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  )
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ')
const FRACTION_SIGNS: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
}
const PARTS: Readonly<Record<string, number>> = {
  half: 2,
  third: 3,
  quarter: 4,
  fourth: 4,
  fifth: 5,
  eighth: 8,
  sixteenth: 16,
  halfs: 2,
  halves: 2,
  thirds: 3,
  quarters: 4,
  fourths: 4,
  fifths: 5,
  eighths: 8,
  sixteenths: 16,
  eights: 8,
}

const STARTS = new Set([...UNITS, ...TENS, 'a', 'an', 'half', 'quarter', 'hundred', 'thousand', 'dozen'])

/** The number that begins at a word: digits, words, fractions, "two and a half", "a hundred"; null when none does. */
export function numberAt(words: readonly SpokenWord[], at: number): SpokenNumber | null {
  if (!STARTS.has(words[at]?.text ?? '') && !/^[\d½¼¾⅛⅜⅝⅞]/.test(words[at]?.text ?? '')) return null
  const fraction = fractionAt(words, at)
  if (fraction !== null) return { ...fraction, at, isArticle: false, isFraction: true }
  const whole = wholeAt(words, at)
  if (whole === null) return null
  const more = addedFraction(words, at + whole.length)
  if (more === null) return { ...whole, at, isFraction: false }
  return {
    value: whole.value + more.value,
    at,
    length: whole.length + more.length,
    isArticle: false,
    isFraction: false,
  }
}

/** A fraction after a whole number or its unit: "and a half", "and three quarters", "1/2", "½". */
export function addedFraction(words: readonly SpokenWord[], at: number): { value: number; length: number } | null {
  const direct = words[at]?.text
  if (direct === undefined) return null
  if (direct !== 'and') {
    const sign = FRACTION_SIGNS[direct] ?? slashed(direct)
    return sign === null || sign === undefined ? null : { value: sign, length: 1 }
  }
  const fraction = fractionAt(words, at + 1)
  return fraction === null ? null : { value: fraction.value, length: fraction.length + 1 }
}

type Part = { readonly value: number; readonly length: number }

function fractionAt(words: readonly SpokenWord[], at: number): Part | null {
  const text = words[at]?.text ?? ''
  const sign = FRACTION_SIGNS[text] ?? slashed(text)
  if (sign !== null) return { value: sign, length: 1 }
  const next = words[at + 1]?.text ?? ''
  if (text === 'half') return { value: 1 / 2, length: next === 'a' || next === 'an' ? 2 : 1 }
  if (text === 'quarter') return { value: 1 / 4, length: next === 'of' && words[at + 2]?.text === 'an' ? 3 : 1 }
  const top = text === 'a' || text === 'an' ? 1 : UNITS.indexOf(text)
  const bottom = PARTS[next]
  if (top < 1 || bottom === undefined || top >= 16 || words[at + 1]?.parted !== 'no') return null
  // "Two halves" are pieces, not a length.
  if (top >= bottom) return null
  const ofAn = words[at + 2]?.text === 'of' && /^(an?|one)$/.test(words[at + 3]?.text ?? '')
  return { value: top / bottom, length: ofAn ? 4 : 2 }
}

function slashed(text: string): number | null {
  const match = /^(\d{1,3})\/(\d{1,3})$/.exec(text)
  return match === null || Number(match[2]) === 0 ? null : Number(match[1]) / Number(match[2])
}

function wholeAt(words: readonly SpokenWord[], at: number): (Part & { isArticle: boolean }) | null {
  const text = words[at]?.text ?? ''
  if (/^\d+(\.\d+)?$/.test(text)) return { value: Number(text), length: 1, isArticle: false }
  const isArticle = text === 'a' || text === 'an'
  let value = 0
  let length = 0
  let isNumber = false
  for (let i = at; i < words.length && (i === at || words[i]?.parted === 'no'); i += 1) {
    const word = words[i]?.text ?? ''
    const ten = TENS.indexOf(word)
    const unit = UNITS.indexOf(word)
    if (ten >= 0 && !isNumber) value += (ten + 2) * 10
    else if (unit >= 0 && (!isNumber || value % 100 === 0 || (value % 10 === 0 && unit < 10 && value >= 20)))
      value += unit
    else if (word === 'hundred' && value <= 20) value = Math.max(1, value) * 100
    else if (word === 'thousand') value = Math.max(1, value) * 1000
    else if (word === 'dozen') value = Math.max(1, value) * 12
    else if (isArticle && i === at) {
      length = 1
      continue
    } else break
    isNumber = true
    length = i - at + 1
  }
  if (isNumber) return { value, length, isArticle: false }
  return isArticle ? { value: 1, length: 1, isArticle: true } : null
}
