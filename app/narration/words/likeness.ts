import { partPairs, partPhrases, partWords } from './component-words.ts'
import { remembered } from './remembered.ts'
import { lettersApart, soundOf } from './sounds-like.ts'
import { stem } from './stem.ts'

/** How well a word that was written down can be one that was said: 0 the same, 1 sounds like it, 2 sounds like its beginning. */
export type Likeness = 0 | 1 | 2

/** The likeness of a heard word to one that may have been meant, in any of its inflections; null where there is none. */
export function likeness(heard: string, meant: string): Likeness | null {
  if (stem(heard) === stem(meant)) return 0
  const sound = soundOf(heard)
  let best: Likeness | null = null
  for (const form of [meant, `${meant}s`, meant.endsWith('e') ? `${meant}d` : `${meant}ed`, `${meant}ing`]) {
    const one = likenessToForm({ heard, sound, form })
    if (one === 1) return 1
    if (one !== null) best = one
  }
  return best
}

function likenessToForm({ heard, sound, form }: { heard: string; sound: string; form: string }): Likeness | null {
  const length = Math.min(heard.length, form.length)
  const formSound = soundOf(form)
  const most = heard[0] === form[0] && length >= 4 ? 3 : 2
  if (sound === formSound && lettersApart(heard, form, 4) <= Math.max(most, Math.ceil(length / 2))) return 1
  if (length >= 4 && lettersApart(heard, form, 1) <= 1) return 1
  if (length < 4) return sound.length > 1 && lettersApart(heard, form, 1) <= 1 && heard[0] === form[0] ? 1 : null
  const isBeginning =
    heard[0] === form[0] &&
    Math.abs(sound.length - formSound.length) === 1 &&
    (sound.startsWith(formSound) || formSound.startsWith(sound))
  return isBeginning && sound.length > 1 && lettersApart(heard, form, 2) <= 2 ? 2 : null
}

/** The halves of the trade's two-word names that a word can be, first halves and second. */
const PLACES_ON_A_PIECE = ['nail', 'screw', 'fastener'].map((first) => [first, 'hole'] as const)
const named = [...partPairs, ...PLACES_ON_A_PIECE]
const halves = (at: 0 | 1) => [...new Set(named.map((pair) => pair[at]))]
const FIRST = halves(0)
const SECOND = halves(1)
const likeFirst = remembered((heard) => likeOf(heard, FIRST))
const likeSecond = remembered((heard) => likeOf(heard, SECOND))
const PAIRS: ReadonlySet<string> = new Set(named.map(([first, second]) => `${first} ${second}`))

interface Like {
  readonly meant: string
  readonly likeness: Likeness
}

function likeOf(heard: string, words: readonly string[]): readonly Like[] {
  return words.flatMap((meant) => {
    const how = likeness(heard, meant)
    return how === null || (how === 2 && meant.length < 5) ? [] : [{ meant, likeness: how }]
  })
}

/** The two-word name that two words can be together, each with its likeness; null where there is none or they are one. */
export function pairLike(first: string, second: string): readonly [Like, Like] | null {
  let best: readonly [Like, Like] | null = null
  let least = 3
  const seconds = likeSecond(second)
  if (seconds.length === 0) return null
  for (const a of likeFirst(first)) {
    for (const b of seconds) {
      const apart = a.likeness + b.likeness
      if (apart >= least || !PAIRS.has(`${a.meant} ${b.meant}`)) continue
      best = [a, b]
      least = apart
    }
  }
  return least === 0 ? null : best
}

/** Names of parts that are a single long word, by their sound: what a common word may have been beside "cracked". */
const loneParts = partWords.filter((word) => word.length >= 5 && partPhrases.at([{ stem: stem(word) }], 0) !== null)

/** The part whose name sounds like a plain word that differs from it by a letter or two within; null where there is none. */
export const soundsLikePart = remembered((heard): string | null => {
  const isLike = (form: string) =>
    heard !== form &&
    heard[0] === form[0] &&
    heard.at(-1) === form.at(-1) &&
    lettersApart(soundOf(heard), soundOf(form), 1) <= 1 &&
    lettersApart(heard, form, 2) <= 2
  return heard.length < 5 || /(ing|ed)$/.test(heard)
    ? null
    : (loneParts.find((part) => isLike(part) || isLike(`${part}s`)) ?? null)
})
