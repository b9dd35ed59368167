import type { Suggestion } from '../../app/contract/placement.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'

type Ranking = Suggestion['ranking']

/** Chips that are offered at most, and the least probability of one. */
const AT_MOST = 3
const LEAST = 0.03

/**
 * The places that some photos are likely to show, likeliest first: of several photos the mean of what is likely for each.
 * Empty when one of them has a facet already or nothing is suggested of one.
 */
export function jointSuggestion(photos: readonly Photo[], byPhoto: ReadonlyMap<PhotoId, Suggestion>): Ranking {
  const sums = new Map<Ranking[number]['place'], number>()
  for (const { id, tags } of photos) {
    const suggestion = byPhoto.get(id)
    if (suggestion === undefined || tags.facetId !== null || tags.role === 'elevation') return []
    for (const { place, probability } of suggestion.ranking) sums.set(place, (sums.get(place) ?? 0) + probability)
  }
  return [...sums]
    .map(([place, sum]) => ({ place, probability: sum / photos.length }))
    .filter(({ probability }) => probability >= LEAST)
    .toSorted((a, b) => b.probability - a.probability)
    .slice(0, AT_MOST)
}
