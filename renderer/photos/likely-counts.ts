import type { Placement } from '../../app/contract/placement.ts'
import { likelyFacets } from '../../app/evidence/placement/job-placement.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { Facet } from '../../app/roof/facet.ts'

/** Below this a suggestion is more often wrong than right. */
const LEAST_PERCENT = 50

/** A typed percentage as a share, or what is wrong with it. */
export function readThreshold(
  text: string,
): { readonly ok: true; readonly share: number } | { readonly ok: false; readonly error: string } {
  const percent = Number(text.replace('%', '').trim() === '' ? Number.NaN : text.replace('%', ''))
  if (percent >= LEAST_PERCENT && percent <= 100) return { ok: true, share: percent / 100 }
  return { ok: false, error: `Type a number from ${LEAST_PERCENT} to 100.` }
}

interface LikelyInput {
  readonly placement: Placement | null
  readonly photos: readonly Photo[]
  readonly facets: readonly Facet[]
  /** Least probability, 0 to 1. */
  readonly least: number
}

/** How many photos would be tagged, and in words which facets they would get and how many of them may be wrong. */
export function likelyCounts({ placement, photos, facets, least }: LikelyInput): { count: number; sentence: string } {
  const open = new Set(photos.filter(({ tags }) => tags.facetId === null).map(({ id }) => id))
  const suggestions = (placement?.suggestions ?? []).filter(({ photoId }) => open.has(photoId))
  const likely = likelyFacets(suggestions, least)
  if (likely.length === 0) {
    return {
      count: 0,
      sentence: `None of the ${open.size} photos without a facet is that sure. Confirm a few by hand, or lower the number.`,
    }
  }
  const byFacet = facets.flatMap(({ id, letter }) => {
    const count = likely.filter(({ facetId }) => facetId === id).length
    return count === 0 ? [] : [`${letter} ${count}`]
  })
  const wrong = Math.round(likely.reduce((sum, { probability }) => sum + 1 - probability, 0))
  const doubt = wrong === 0 ? 'Look them over all the same' : `About ${wrong} of them may be wrong: look them over`
  return {
    count: likely.length,
    sentence: `Would tag ${likely.length} of ${open.size} photos without a facet: ${byFacet.join(', ')}. ${doubt}; one undo takes all of it back.`,
  }
}
