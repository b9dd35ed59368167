import { partPairs, partPhrases, partWords } from './component-words.ts'
import { signPhrases, signWords } from './condition-words.ts'
import { isKnownWord } from './known-words.ts'
import { lettersApart, soundOf } from './sounds-like.ts'
import type { SpokenWord } from './spoken-words.ts'
import { irregularForms, stem } from './stem.ts'

/** Words that carry a sentence and are heard right; beside a word of the trade they stay what they are. */
const CARRIERS = new Set(
  `a an the this that these those it its they them their he she his her we us our you your i me my is are was were be been am do does
did has have had can could will would shall should may might must and or but so if then than as at by for from in into of off on onto
out over to up down under with about here there where when what which who one two three four five six seven eight nine ten no not
all any some each every both more most make made take took like got get go good bad big new old just now okay yes well very too also
only even still right left back front top side end line see look say said`.split(/\s+/),
)

const NUMBERS = new Set(
  'one two three four five six seven eight nine ten eleven twelve several couple few dozen'.split(' '),
)

/** Pieces that are counted, and are therefore looked for after a number. */
const COUNTED = ['tile', 'cap', 'nail', 'screw', 'shingle', 'panel']

const PLACE_WORDS = ['front', 'garage', 'chimney', 'slope', 'porch', 'inches', 'pounds', 'several', 'middle', 'corner']

interface Target {
  readonly word: string
  readonly stem: string
  readonly sound: string
}

const targets: readonly Target[] = targetsOf([
  ...[...partWords, ...signWords, ...irregularForms(signPhrases.stems)].filter((word) => !CARRIERS.has(word)),
  ...PLACE_WORDS,
])

function targetsOf(words: readonly string[]): readonly Target[] {
  const long = [...new Set(words)].filter((word) => word.length >= 4)
  return long.flatMap((word) =>
    [
      word,
      `${word}s`,
      word.endsWith('e') ? `${word}d` : `${word}ed`,
      `${word}ing`,
      `${word}${word.at(-1) ?? ''}ed`,
    ].map((form) => ({ word: form, stem: stem(word), sound: soundOf(form) })),
  )
}

const bySound = groupBy(targets, (target) => target.sound)
const byLetter = groupBy(targets, (target) => target.word.slice(0, 1))

function groupBy(list: readonly Target[], keyOf: (target: Target) => string): ReadonlyMap<string, readonly Target[]> {
  const groups = new Map<string, Target[]>()
  for (const target of list) {
    const own = groups.get(keyOf(target))
    if (own === undefined) groups.set(keyOf(target), [target])
    else own.push(target)
  }
  return groups
}

/**
 * Takes words that are no English, or that stand where a word of the trade belongs, for the word of the trade that they
 * sound like or differ from by a letter or two: "moarter", "under lament", "ridge cat". Words keep their places in the cue.
 */
export function asMeant(words: readonly SpokenWord[], heard: Map<string, string | null>): readonly SpokenWord[] {
  const joined = joinedWords(words, heard)
  const single = joined.map((word): SpokenWord => {
    if (isKnownWord(word.text) || !/^[a-z]{4,}$/.test(word.text)) return word
    const meant = meantBy(word.text, heard)
    return meant === null ? word : { ...word, stem: meant }
  })
  return single.map((word, at) => inContext(word, { before: single[at - 1], after: single[at + 1] }))
}

/** Two words that together are one of the trade's long ones. */
function joinedWords(words: readonly SpokenWord[], heard: Map<string, string | null>): readonly SpokenWord[] {
  const out: SpokenWord[] = []
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at]
    const next = words[at + 1]
    if (word === undefined) continue
    const isPair = next !== undefined && next.parted === 'no' && next.cue === word.cue && isJoinable(word, next)
    const together = isPair ? word.text + next.text : ''
    const meant = together.length >= 8 ? meantBy(together, heard) : null
    if (meant !== null && next !== undefined) {
      out.push({ ...word, to: next.to, text: together, stem: meant })
      at += 1
    } else out.push(word)
  }
  return out
}

/** Neither word is one of the trade by itself, and it is not two words that carry a sentence. */
function isJoinable(word: SpokenWord, next: SpokenWord): boolean {
  if (CARRIERS.has(next.text) || (CARRIERS.has(word.text) && word.text !== 'under')) return false
  if (!/^[a-z]+$/.test(word.text + next.text) || (isKnownWord(word.text) && isKnownWord(next.text))) return false
  return ![word, next].some(({ stem: one }) => partPhrases.stems.has(one) && one.length > 2 && one !== 'under')
}

function meantBy(text: string, heard: Map<string, string | null>): string | null {
  const before = heard.get(text)
  if (before !== undefined) return before
  const found = nearest(text)
  heard.set(text, found)
  return found
}

function nearest(text: string): string | null {
  const sound = soundOf(text)
  let best: { readonly stem: string; readonly apart: number } | null = null
  const offer = (target: Target, most: number) => {
    const apart = lettersApart(text, target.word, most)
    if (apart <= most && apart < (best?.apart ?? Infinity)) best = { stem: target.stem, apart }
  }
  for (const target of bySound.get(sound) ?? []) offer(target, text.length >= 5 ? 3 : 2)
  if (text.length >= 5)
    for (const target of byLetter.get(text.slice(0, 1)) ?? []) offer(target, text.length >= 7 ? 2 : 1)
  return (best as { readonly stem: string } | null)?.stem ?? null
}

const pairsByFirst = pairIndex(0)
const pairsBySecond = pairIndex(1)

function pairIndex(key: 0 | 1): ReadonlyMap<string, readonly string[]> {
  const index = new Map<string, string[]>()
  for (const pair of partPairs) index.set(stem(pair[key]), [...(index.get(stem(pair[key])) ?? []), pair[1 - key] ?? ''])
  return index
}

/** Beside the other half of a part's name, and after a number, plain English may be misheard too. */
function inContext(
  word: SpokenWord,
  { before, after }: { readonly before: SpokenWord | undefined; readonly after: SpokenWord | undefined },
): SpokenWord {
  if (word.text === 'lose' && before?.stem === 'be') return { ...word, stem: stem('loose') }
  if (CARRIERS.has(word.text) || partPhrases.stems.has(word.stem) || !/^[a-z]{3,}$/.test(word.text)) return word
  const isSign = signPhrases.stems.has(word.stem)
  const nearby = [
    ...(word.parted === 'no' && before !== undefined && !isSign ? (pairsByFirst.get(before.stem) ?? []) : []),
    ...(after?.parted === 'no' && !isSign ? (pairsBySecond.get(after.stem) ?? []) : []),
  ]
  const counted = before !== undefined && NUMBERS.has(before.text) ? COUNTED : []
  const fits = (meant: string) => soundOf(word.stem) === soundOf(meant) || lettersApart(word.stem, stem(meant), 1) <= 1
  const meant =
    nearby.find((one) => one.length >= 3 && fits(one)) ??
    counted.find((one) => soundOf(word.stem) === soundOf(one) && lettersApart(word.stem, stem(one), 2) <= 2)
  return meant === undefined ? word : { ...word, stem: stem(meant) }
}
