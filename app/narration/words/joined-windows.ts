import { partPhrases, partWords } from './component-words.ts'
import { signPhrases, signWords } from './condition-words.ts'
import { lettersApart, soundOf } from './sounds-like.ts'
import type { SpokenWord } from './spoken-words.ts'
import { stem } from './stem.ts'

/** A long word of the trade that speech recognition may part into short ones. */
interface Long {
  readonly word: string
  readonly stem: string
  readonly sound: string
}

const LONG_LETTERS = 7
const MOST_WORDS = 4
/** Words that begin and end no split word. */
const LINKS = /^(a|an|and|are|as|but|has|he|is|it|no|of|on|or|so|the|they|to|us|was|we|you)$/

const longWords: readonly Long[] = [...new Set([...partWords, ...signWords])]
  .filter((word) => word.length >= LONG_LETTERS && /^[a-z]+$/.test(word) && saysAlone(word))
  .flatMap((word) => [word, `${word}s`].map((form) => ({ word: form, stem: stem(word), sound: soundOf(form) })))

/** A word that is a part or a sign by itself. */
function saysAlone(word: string): boolean {
  const alone = [{ stem: stem(word) }]
  return partPhrases.at(alone, 0) !== null || signPhrases.at(alone, 0) !== null || word === 'somebody'
}

const bySound = new Map<string, readonly Long[]>()
for (const long of longWords) bySound.set(long.sound, [...(bySound.get(long.sound) ?? []), long])
const byLetters = new Map(longWords.map((long) => [long.word, long]))

/** What two to four words beginning here are together: "pen a tray shun", "fast inner", "under lament". */
export interface Window {
  readonly stem: string
  readonly text: string
  readonly length: number
}

/** The long word that words from here on sound like when they are said together, the longest window first; null for none. */
export function windowAt(words: readonly SpokenWord[], at: number, isPlain: (text: string) => boolean): Window | null {
  const first = words[at]?.text ?? ''
  if (first !== 'a' && LINKS.test(first)) return null
  for (let length = MOST_WORDS; length >= 2; length -= 1) {
    const window = words.slice(at, at + length)
    if (window.length < length || !isOneBreath(window)) continue
    const text = window.map((word) => word.text).join('')
    const same = length === 2 ? byLetters.get(text) : undefined
    if (same !== undefined) return { stem: same.stem, text, length }
    const meant = isWhole(window) ? null : soundingLike(window, text, isPlain)
    if (meant !== null) return { stem: meant.stem, text, length }
  }
  return null
}

function isOneBreath(window: readonly SpokenWord[]): boolean {
  const [first] = window
  return window.every(
    (word, i) => /^[a-z]+$/.test(word.text) && word.cue === first?.cue && (i === 0 || word.parted === 'no'),
  )
}

/** A window with a word of the trade in it says what it says. */
function isWhole(window: readonly SpokenWord[]): boolean {
  return window.some(
    (word) => word.text.length > 3 && (partPhrases.at([word], 0) ?? signPhrases.at([word], 0)) !== null,
  )
}

function soundingLike(window: readonly SpokenWord[], text: string, isPlain: (text: string) => boolean): Long | null {
  const [first, last] = [window[0]?.text ?? '', window.at(-1)?.text ?? '']
  const isTight = window.length === 2
  // Two plain words side by side are what they are; a split of three or four is told by its sound alone.
  if (isTight && ((isPlain(first) && isPlain(last)) || LINKS.test(last))) return null
  if (/^(is|it|was|and|has|they|so|we|you)$/.test(last)) return null
  const sound = window.map((word, i) => (i === 0 ? soundOf(word.text) : soundOf(word.text).replace(/^a/, ''))).join('')
  const candidates = bySound.get(sound.replace(/(.)\1+/g, '$1')) ?? []
  return (
    candidates.find(({ word, sound: said }) => {
      const most = Math.ceil(word.length * (said.length >= 4 ? (isTight ? 0.5 : 0.75) : 0.35))
      if (!isTight && partPhrases.at([{ stem: stem(word) }], 0) === null) return false
      return text[0] === word[0] && text.length >= word.length - 2 && lettersApart(text, word, most) <= most
    }) ?? null
  )
}
