import { conditions } from '../../evidence/catalog/conditions.ts'
import type { ConditionKey } from '../../evidence/catalog/keys.ts'
import type { Finding } from '../../evidence/finding.ts'
import type { SpokenWord } from '../words/spoken-words.ts'
import { stem } from '../words/stem.ts'
import type { Observation } from './observe.ts'

/** Small words that carry no degree. */
const EMPTY = new Set('a an the in its of by at to with but its place is and or'.split(' '))

/** Everyday words for the catalog's graded ones. */
const SAME: Readonly<Record<string, readonly string[]>> = {
  slight: ['slight', 'slightly', 'little', 'barely', 'bit'],
  slightly: ['slight', 'slightly', 'little', 'barely', 'bit'],
  gone: ['gone', 'missing', 'lose', 'fall', 'off'],
  open: ['open', 'wide', 'through', 'gap'],
  movement: ['move', 'movement', 'play'],
  brittle: ['brittle', 'crispy', 'dry'],
  heavy: ['heavy', 'heavily', 'thick', 'lots'],
  chip: ['chip', 'nick'],
  hairline: ['hairline', 'fine', 'thin'],
  holds: ['hold', 'tight', 'stick'],
  two: ['two', 'half'],
  scuffed: ['scuff', 'rub'],
}

/** The catalog's graded word that the sentence uses for a condition, and the word that says it; null where it uses none. */
export function degreeOf(
  words: readonly SpokenWord[],
  condition: ConditionKey,
): { degree: string; at: SpokenWord } | null {
  let best: { degree: string; at: SpokenWord; score: number } | null = null
  for (const degree of conditions[condition].degrees) {
    for (const way of degree.split(/,? or |, /)) {
      const needed = way.split(' ').filter((word) => !EMPTY.has(word))
      const found = needed.map((word) => words.find(({ stem: said }) => stemsOf(word).includes(said)))
      const [first] = found
      if (first === undefined || found.includes(undefined) || needed.length <= (best?.score ?? 0)) continue
      best = { degree, at: first, score: needed.length }
    }
  }
  return best === null ? null : { degree: best.degree, at: best.at }
}

function stemsOf(word: string): readonly string[] {
  return (SAME[word] ?? [word]).map(stem)
}

/** How a crack runs, where the words say so. */
export function crackPathOf({ condition, merged }: Observation, words: readonly SpokenWord[]): Finding['crackPath'] {
  if (condition === 'crack-to-fastener') return 'to-fastener'
  if (condition === 'corner-break') return 'corner'
  if (condition === 'lock-broken') return 'side-lock'
  if (condition !== 'diagonal-crack') return null
  if (
    words.some(({ stem: said }) => said.startsWith('diagonal')) ||
    (merged.some(({ value }) => value === 'across') && words.some(({ text }) => text === 'corner'))
  )
    return 'diagonal'
  return null
}
