import { partPhrases, partWords } from './component-words.ts'
import { signPhrases, signWords } from './condition-words.ts'
import { windowAt } from './joined-windows.ts'
import { isKnownWord } from './known-words.ts'
import { likeness, pairLike, soundsLikePart } from './likeness.ts'
import { remembered } from './remembered.ts'
import { lettersApart, soundOf } from './sounds-like.ts'
import type { SpokenWord } from './spoken-words.ts'
import { irregularForms, stem } from './stem.ts'

/** Words that carry a sentence and are heard right; beside a word of the trade they stay what they are. */
const CARRIERS = new Set(
  `a an the this that these those it its they them their he his she her we us our us you your i me my is are was were be been am do does
did has have had can could will would shall should may might must and or but so if then than as at by for from in into of off on onto
out over to up down under with about here there where when what which who one two three four five six seven eight nine ten no not
all any some each every both more most make made take took like got get go good bad big new old just now okay yes well very too also
only even still right left back front top side end line see look say said look looks looked real really more same found find
first last next near near`.split(/\s+/),
)

const NUMBERS = new Set(
  'one two three four five six seven eight nine ten eleven twelve several couple few dozen many'.split(' '),
)
const AMOUNTS = /^(bunch|lot|lots|couple|handful|dozen|pair|number|some|load|row|most|all)$/

/** Pieces that are counted, and are therefore looked for after a number. */
const COUNTED = ['tile', 'cap', 'nail', 'screw', 'shingle', 'panel']

const PLACE_WORDS = ['front', 'garage', 'chimney', 'slope', 'porch', 'inches', 'pounds', 'several', 'middle', 'corner']

interface Target {
  readonly word: string
  readonly stem: string
  readonly sound: string
  readonly isPart: boolean
}

/** Words that say something by themselves; what only stands within a phrase is too often plain English. */
const targets: readonly Target[] = targetsOf([
  ...[...partWords, ...signWords, ...irregularForms(signPhrases.stems)].filter(
    (word) => !CARRIERS.has(word) && [partPhrases, signPhrases].some((of) => of.at([{ stem: stem(word) }], 0) !== null),
  ),
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
    ].map((form) => ({
      word: form,
      stem: stem(word),
      sound: soundOf(form),
      isPart: partPhrases.at([{ stem: stem(word) }], 0) !== null,
    })),
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
  const single = inPairs(joinedWords(words)).map((word, at, all): SpokenWord => {
    if (isKnownWord(word.text) || word.stem !== stem(word.text) || !/^[a-z]{4,}$/.test(word.text)) return word
    const meant = verbLike(word.text, before(all[at + 1])) ?? meantBy(word.text, heard)
    return meant === null ? word : { ...word, stem: meant }
  })
  const paired = inPairs(single)
  return paired.map((word, at) => inContext(word, at, paired))
}

/** What a verb stands before: its particle, or "up" where a measure follows at once. */
function before(next: SpokenWord | undefined): string {
  return next === undefined ? '' : NUMBERS.has(next.text) || /^(too|an?|\d.*)$/.test(next.text) ? 'up' : next.text
}

/** Words that together are one of the trade's long ones. */
function joinedWords(words: readonly SpokenWord[]): readonly SpokenWord[] {
  const out: SpokenWord[] = []
  for (let at = 0; at < words.length;) {
    const word = words[at]
    if (word === undefined) break
    const window = windowAt(words, at, (text) => isKnownWord(text) && text !== 'under')
    const last = window === null ? undefined : words[at + window.length - 1]
    if (window !== null && last !== undefined) {
      out.push({ ...word, to: last.to, text: window.text, stem: window.stem })
      at += window.length
    } else {
      out.push(word)
      at += 1
    }
  }
  return out
}

function meantBy(text: string, heard: Map<string, string | null>): string | null {
  const before = heard.get(text)
  if (before !== undefined) return before
  const found = nearest(text)
  heard.set(text, found)
  return found
}

/** The word of the trade that a word which is no English sounds like, or has all letters but one of. */
function nearest(text: string): string | null {
  const sound = soundOf(text)
  let best: { readonly stem: string; readonly apart: number } | null = null
  const offer = (target: Target, most: number) => {
    const apart = lettersApart(text, target.word, most)
    if (apart <= most && apart < (best?.apart ?? Infinity)) best = { stem: target.stem, apart }
  }
  for (const target of bySound.get(sound) ?? []) offer(target, mostApart(text, sound, target))
  if (text.length >= 5)
    for (const target of byLetter.get(text.slice(0, 1)) ?? [])
      offer(target, text.length >= 7 && target.isPart && lettersApart(sound, target.sound, 1) <= 1 ? 2 : 1)
  return (best as { readonly stem: string } | null)?.stem ?? null
}

/** How many letters two words of one sound may differ by: more where the sound is long, and for what parts are called. */
function mostApart(text: string, sound: string, { isPart: isPartName, word }: Target): number {
  if (text.length >= 5 && sound.length >= 3) return 2
  return isPartName && text[0] === word[0] ? 2 : 1
}

const VERBS_BEFORE: Readonly<Record<string, readonly string[]>> = {
  up: ['lift', 'bend', 'curl', 'peel', 'pull', 'pop', 'kick'],
  off: ['blow', 'break', 'snap', 'knock', 'rip', 'pull', 'peel'],
  out: ['back', 'pull', 'pop', 'slide'],
  down: ['slip', 'slide'],
  loose: ['work', 'break', 'pull', 'shake'],
  away: ['pull', 'blow', 'break', 'peel'],
}

/** Before "up", "off" and the like a verb is expected: "lips up" for "lifts up", "pills away". */
function verbLike(text: string, next: string): string | null {
  const verbs = Object.hasOwn(VERBS_BEFORE, next) ? (VERBS_BEFORE[next] ?? []) : []
  const isLike = (verb: string) =>
    likeness(text, verb) === 1 ||
    (text[0] === verb[0] &&
      [`${verb}s`, `${verb}ed`].some((form) => text.at(-1) === form.at(-1) && lettersApart(text, form, 2) <= 2))
  const found = verbs.find(isLike)
  return found === undefined ? null : stem(found)
}

const isSignAlone = remembered((one) => signPhrases.at([{ stem: one }], 0) !== null)
const isPartAlone = remembered((one) => partPhrases.at([{ stem: one }], 0) !== null)
const isSign = (word: SpokenWord) => isSignAlone(word.stem)
const isPart = (word: SpokenWord) => isPartAlone(word.stem)

/** Two words that together sound like a part's name: "feel tiles", "ridge cat", "wall flushing". */
function inPairs(words: readonly SpokenWord[]): readonly SpokenWord[] {
  const out = [...words]
  for (let at = 0; at + 1 < out.length; at += 1) {
    const [first, second] = [out[at], out[at + 1]]
    if (first === undefined || second === undefined || second.parted !== 'no') continue
    const pair = pairLike(spelled(first), spelled(second))
    if (pair === null || !isOpen(first, pair[0].likeness) || !isOpen(second, pair[1].likeness)) continue
    if (pair[0].likeness > 0 && pair[1].likeness > 0 && !/^(tile|cap|closure)$/.test(pair[1].meant)) continue
    out[at] = pair[0].likeness === 0 ? first : { ...first, stem: stem(pair[0].meant) }
    out[at + 1] = pair[1].likeness === 0 ? second : { ...second, stem: stem(pair[1].meant) }
  }
  return out
}

/** The word as it is compared: as written, or what it was already taken for. */
function spelled(word: SpokenWord): string {
  return stem(word.text) === word.stem ? word.text : word.stem
}

/** A word that may be taken for another: it carries nothing of its own and names nothing seen. */
function isOpen(word: SpokenWord, how: number): boolean {
  return how === 0 || (!CARRIERS.has(word.text) && /^[a-z]{3,}$/.test(word.text) && !isSign(word) && !isPart(word))
}

/** After a number, beside what is seen, and after "is", plain English may be misheard too. */
function inContext(word: SpokenWord, at: number, words: readonly SpokenWord[]): SpokenWord {
  const before = words[at - 1]
  if (word.stem === stem('lose') && word.text !== 'lost' && before?.stem === 'be')
    return { ...word, stem: stem('loose') }
  if (!isOpen(word, 1) || signPhrases.stems.has(word.stem) || partPhrases.stems.has(word.stem)) return word
  const isAmount =
    before !== undefined &&
    word.parted === 'no' &&
    (NUMBERS.has(before.text) || (before.text === 'of' && AMOUNTS.test(words[at - 2]?.text ?? '')))
  const piece =
    isAmount && (!isKnownWord(word.text) || isToldOf(words[at + 1]))
      ? COUNTED.find((one) => isHeardPiece(word.text, one))
      : undefined
  if (piece !== undefined) return { ...word, stem: stem(piece) }
  const part = soundsLikePart(word.text)
  const isBeside = part !== null && ([-1, 1].some((step) => isSignNext(words, at, step)) || isSaidOf(words, at))
  return part !== null && isBeside ? { ...word, stem: stem(part) } : word
}

/** "The motor on the caps is cracked": the thing itself, with what it is on, and something seen. */
function isSaidOf(words: readonly SpokenWord[], at: number): boolean {
  return (
    /^(the|this|that|some)$/.test(words[at - 1]?.text ?? '') &&
    /^(on|under|around|along|at|between|of|underneath)$/.test(words[at + 1]?.text ?? '') &&
    words.some(isSign) &&
    words.slice(at + 2, at + 6).some(isPart)
  )
}

/** What is seen stands beside the word, with nothing between but words that carry. */
function isSignNext(words: readonly SpokenWord[], at: number, step: number): boolean {
  for (let i = at + step; ; i += step) {
    const near = words[i]
    if (near === undefined) return false
    if (isSign(near)) return true
    if (!CARRIERS.has(near.text) && near.text !== 'around') return false
  }
}

/** What follows tells something of a thing: "towels have", "titles up here"; not "towels to dry it". */
function isToldOf(next: SpokenWord | undefined): boolean {
  return (
    next !== undefined &&
    (isSign(next) ||
      /^(be|have|hav|get)$/.test(next.stem) ||
      /^(up|here|over|on|along|that|with|at|in)$/.test(next.text))
  )
}

/** "Towels" and "titles" for tiles: the same sound, and as many letters as a careless ear adds. */
function isHeardPiece(heard: string, piece: string): boolean {
  return [piece, `${piece}s`].some((form) => soundOf(heard) === soundOf(form) && lettersApart(heard, form, 3) <= 3)
}
