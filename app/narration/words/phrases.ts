import { stem } from './stem.ts'

/** Something found at a place in a sentence: what it means and how many words it takes. */
export interface Found<T> {
  readonly value: T
  readonly at: number
  readonly length: number
}

/** A word to be compared: only its stem matters here. */
interface Stemmed {
  readonly stem: string
}

interface Phrase<T> {
  readonly value: T
  /** Each step is a set of stems, or a number: that many other words may stand here. */
  readonly steps: readonly (ReadonlySet<string> | number)[]
}

/** Finds phrases in a sentence. */
export interface Phrases<T> {
  /** The longest phrase that begins at a word; null when none does. */
  readonly at: (words: readonly Stemmed[], at: number) => Found<T> | null
  /** All phrases of a sentence from left to right, the longest first where they begin together, without overlaps. */
  readonly all: (words: readonly Stemmed[]) => readonly Found<T>[]
  /** For each meaning on its own, all its phrases from left to right, the longest first, without overlaps. */
  readonly every: (words: readonly Stemmed[]) => readonly Found<T>[]
  /** Every single stem that occurs in a phrase. */
  readonly stems: ReadonlySet<string>
}

/**
 * Makes a finder from phrases in plain English, parted by `;`: words parted by spaces, alternatives of one word by `|`, `*` for up to two
 * other words and `**` for up to four. Inflections fit by themselves.
 */
export function phrases<T>(entries: readonly (readonly [T, string])[]): Phrases<T> {
  const byFirst = new Map<string, Phrase<T>[]>()
  const stems = new Set<string>()
  for (const [value, texts] of entries) {
    for (const text of phraseTexts(texts)) {
      const steps = text.split(' ').map(stepOf)
      for (const step of steps) if (typeof step !== 'number') for (const one of step) stems.add(one)
      const [first] = steps
      if (first === undefined || typeof first === 'number') continue
      for (const one of first) byFirst.set(one, [...(byFirst.get(one) ?? []), { value, steps }])
    }
  }
  const at: Phrases<T>['at'] = (words, from) => {
    let best: Found<T> | null = null
    for (const phrase of byFirst.get(words[from]?.stem ?? '') ?? []) {
      const length = lengthAt(words, from, phrase.steps)
      if (length > (best?.length ?? 0)) best = { value: phrase.value, at: from, length }
    }
    return best
  }
  const all: Phrases<T>['all'] = (words) => {
    const found: Found<T>[] = []
    for (let from = 0; from < words.length;) {
      const here = at(words, from)
      if (here !== null) found.push(here)
      from += here?.length ?? 1
    }
    return found
  }
  const every: Phrases<T>['every'] = (words) => {
    const found: Found<T>[] = []
    const takenTo = new Map<T, number>()
    for (let from = 0; from < words.length; from += 1) {
      const candidates = byFirst.get(words[from]?.stem ?? '')
      if (candidates === undefined) continue
      const first = found.length
      for (const { value, steps } of candidates) {
        const length = (takenTo.get(value) ?? 0) > from ? 0 : lengthAt(words, from, steps)
        if (length === 0) continue
        const known = found.findIndex((other, at) => at >= first && other.value === value)
        if (known < 0) found.push({ value, at: from, length })
        else if (length > (found[known]?.length ?? 0)) found[known] = { value, at: from, length }
      }
      for (let at = first; at < found.length; at += 1) {
        const one = found[at]
        if (one !== undefined) takenTo.set(one.value, from + one.length)
      }
    }
    return found
  }
  return { at, all, every, stems }
}

/** The phrases of one meaning, as they are written. */
export function phraseTexts(texts: string): readonly string[] {
  return texts.split(';').map((text) => text.trim().replace(/\s+/g, ' '))
}

function stepOf(text: string): ReadonlySet<string> | number {
  if (text === '*') return 2
  if (text === '**') return 4
  return new Set(text.split('|').map(stem))
}

/** How many words the steps take from here; 0 when they don't fit. */
function lengthAt(words: readonly Stemmed[], from: number, steps: Phrase<unknown>['steps']): number {
  // The first step fits: it led here.
  return steps.length === 1 ? 1 : Math.max(0, endAt(words, { at: from + 1, step: 1 }, steps) - from)
}

function endAt(
  words: readonly Stemmed[],
  { at, step }: { at: number; step: number },
  steps: Phrase<unknown>['steps'],
): number {
  const want = steps[step]
  if (want === undefined) return at
  if (typeof want === 'number') {
    for (let skipped = 0; skipped <= want && at + skipped < words.length; skipped += 1) {
      const end = endAt(words, { at: at + skipped, step: step + 1 }, steps)
      if (end > 0) return end
    }
    return 0
  }
  const word = words[at]
  return word !== undefined && want.has(word.stem) ? endAt(words, { at: at + 1, step: step + 1 }, steps) : 0
}
