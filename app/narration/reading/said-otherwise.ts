import type { Found } from '../words/phrases.ts'
import type { SpokenWord } from '../words/spoken-words.ts'
import type { Stance } from './stance-words.ts'

/** "I've come over" orders nobody, "the gauge says" corrects nothing, "because I count eight" tells what is seen. */
export function isSaidOtherwise(words: readonly SpokenWord[], { value, at, length }: Found<Stance>): boolean {
  const text = words[at]?.text ?? ''
  const before = words[at - 1]
  if (value === 'order')
    return words.slice(Math.max(0, at - 3), at).some((word) => /^(i|we|have|had|they|who)$/.test(word.text))
  // "Uplift test" names no cause.
  if (value === 'cause') return /^(test|tests|check)$/.test(words[at + length]?.text ?? '')
  if (value === 'correct' && length === 1) return /^(says|said|saying)$/.test(text)
  // "The tile's neighbor" is a tile.
  if (value === 'elsewhere' && text.startsWith('neighbor'))
    return /^(til|cap|it|its|their|same|shingl|panel|left|right|upper|lower)$/.test(before?.stem ?? '')
  if (value === 'opinion' && text === 'because')
    return (
      /^(i|we)$/.test(words[at + 1]?.text ?? '') && /^(count|see|find|get|have|can)$/.test(words[at + 2]?.stem ?? '')
    )
  return false
}
