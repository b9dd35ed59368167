import { saidPlaces, type SaidPlace } from '../places/said-place.ts'
import { partPhrases } from '../words/component-words.ts'
import type { Sign } from '../words/condition-words.ts'
import { asMeant } from '../words/misheard.ts'
import { withoutSlips } from '../words/self-repairs.ts'
import type { Found } from '../words/phrases.ts'
import type { Sentence, SpokenWord } from '../words/spoken-words.ts'
import { quantitiesOf, type Quantities } from './quantities.ts'
import { type PartMark, standingOf } from './said-part.ts'
import { isSaidOtherwise } from './said-otherwise.ts'
import { signsOf } from './signs-of.ts'
import { type Stance, stancePhrases } from './stance-words.ts'

/** Everything that was found in a sentence, by position of its words. */
export interface Marks extends Quantities {
  readonly words: readonly SpokenWord[]
  /** For each word the number of its clause. */
  readonly clauses: readonly number[]
  readonly parts: readonly PartMark[]
  readonly signs: readonly Found<Sign>[]
  readonly stances: readonly Found<Stance>[]
  readonly places: readonly SaidPlace[]
}

/** Words that begin a clause although no comma is written. */
const CLAUSE_WORDS =
  /^(and|but|plus|except|while|though|although|however|then|so|because|besides|otherwise|aside|apart|which|where)$/

/** Finds all that matters in a sentence. `heard` keeps what misheard words were taken for, over the whole narration. */
export function marksOf(sentence: Sentence, landmarks: ReadonlySet<string>, heard: Map<string, string | null>): Marks {
  const words = withoutSlips(asMeant(sentence.words, heard))
  const places = saidPlaces(words, landmarks)
  const inPlace = (at: number) => places.some((place) => at >= place.at && at < place.at + place.length)
  const parts = partPhrases
    .all(words)
    .filter(
      ({ at, length }) =>
        !inPlace(at + length - 1) &&
        !isOwn(words, at) &&
        !(length === 1 && isVerb(words[at])) &&
        !(words[at + length - 1]?.stem === 'til' && words[at + length]?.text === 'roof'),
    )
    .map(({ value, at, length }): PartMark => {
      const last = words[at + length - 1]?.text ?? ''
      return { said: value, at, length, stands: standingOf(words, at), isPlural: /[^s]s$/.test(last) }
    })
  const quantities = quantitiesOf(words)
  // "The weather side" is a place.
  const stances = stancePhrases
    .every(words)
    .filter(({ value, at, length }) => value !== 'cause' || words[at + length]?.text !== 'side')
    .filter((stance) => !isSaidOtherwise(words, stance))
  const signs = signsOf({ words, parts, stances, measures: quantities.measures })
  return {
    words,
    places,
    parts,
    signs,
    ...quantities,
    stances,
    clauses: clausesOf(words, [
      ...quantities.measures,
      ...quantities.counts,
      ...places,
      ...signs.filter(({ length }) => length > 1),
    ]),
  }
}

/** "My boot", "his nail gun": things of people. */
function isOwn(words: readonly SpokenWord[], at: number): boolean {
  return (
    /^(my|your|his|her)$/.test(words[at - 1]?.text ?? '') &&
    /^(boot|nail|glove|clip|paper|pipe|lock|head)s?$/.test(words[at]?.text ?? '')
  )
}

/** "Glued" and "nailed" name no glue and no nail. */
function isVerb(word: SpokenWord | undefined): boolean {
  return word !== undefined && word.text.length > 4 && word.text.endsWith('ed') && word.text.startsWith(word.stem)
}

/** Parts a sentence at commas and joining words, but not inside "two and a half" or "back and forth". */
function clausesOf(
  words: readonly SpokenWord[],
  whole: readonly { readonly at: number; readonly length: number }[],
): readonly number[] {
  let clause = 0
  return words.map((word, at) => {
    const isInside = whole.some((span) => at > span.at && at < span.at + span.length)
    if (at > 0 && !isInside && (word.parted !== 'no' || CLAUSE_WORDS.test(word.text))) clause += 1
    return clause
  })
}
