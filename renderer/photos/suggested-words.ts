import type { Suggestion } from '../../app/contract/placement.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { Facet } from '../../app/roof/facet.ts'

/** Below this a guess beside a picture would mislead more than it helps. */
const LEAST = 0.4

/** The likeliest facet of a photo that has none, as its tile shows it: "B? 84 %". Null when nothing is likely enough. */
export function suggestedWords(
  { tags }: Photo,
  suggestion: Suggestion | undefined,
  facets: readonly Facet[],
): string | null {
  const first = suggestion?.ranking[0]
  if (first === undefined || tags.facetId !== null || tags.role === 'elevation' || first.probability < LEAST)
    return null
  const letter = facets.find(({ id }) => id === first.place)?.letter
  return letter === undefined ? null : `${letter}? ${percentWords(first.probability)}`
}

/** A probability as it is shown: never surer than it is. */
export function percentWords(probability: number): string {
  return `${Math.min(99, Math.round(probability * 100))} %`
}
