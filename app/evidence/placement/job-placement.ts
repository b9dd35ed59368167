import type { FacetId, PhotoId } from '../../job/ids.ts'
import type { CaseFile } from '../case-file.ts'
import {
  placementPhotoOf,
  type ConfirmedPlace,
  type PhotoSuggestion,
  type PlaceHint,
  type PlacementInput,
} from './placement-input.ts'

/**
 * What placement looks at in a job: every photo, what people tagged of them already, and as hints the facets of findings
 * that show a photo without a tag, and else what was said. Pictures of papers lie nowhere on the plan and are left out.
 */
export function placementOfJob(
  file: Pick<CaseFile, 'job' | 'facets' | 'photos' | 'findings'>,
  said: readonly PlaceHint[] = [],
): PlacementInput {
  const placed = file.photos.filter(({ tags }) => tags.role !== 'document')
  const shownBy = new Map(
    file.findings.flatMap((finding) => finding.photos.map(({ photoId }) => [photoId, finding] as const)),
  )
  const confirmed = placed.flatMap(({ id, tags }): ConfirmedPlace[] => {
    const pin = shownBy.get(id)?.pin ?? null
    if (tags.facetId !== null) return [{ photoId: id, place: tags.facetId, pin: pin?.kind === 'point' ? pin.at : null }]
    // A side of the house is photographed from beside it.
    return tags.role === 'elevation' ? [{ photoId: id, place: 'ground', pin: null }] : []
  })
  const known = new Set(confirmed.map(({ photoId }) => photoId))
  const fromFindings = placed.flatMap(({ id }): PlaceHint[] => {
    const facetId = shownBy.get(id)?.facetId ?? null
    return facetId === null || known.has(id) ? [] : [{ photoId: id, weights: [{ place: facetId, weight: 1 }] }]
  })
  // A finding made of the narration is the same words again: they must not count twice.
  const decided = new Set(fromFindings.map(({ photoId }) => photoId))
  const { facets, job } = file
  return {
    facets,
    frame: job.frame,
    photos: placed.map(placementPhotoOf),
    confirmed,
    hints: [...fromFindings, ...said.filter(({ photoId }) => !decided.has(photoId))],
  }
}

/** A facet that a photo may be given without asking further. */
export interface LikelyFacet {
  readonly photoId: PhotoId
  readonly facetId: FacetId
  readonly probability: number
}

/** Photos whose likeliest place is a facet of at least this probability, of those that nobody has placed. */
export function likelyFacets(
  suggestions: readonly Pick<PhotoSuggestion, 'photoId' | 'ranking'>[],
  leastProbability: number,
): readonly LikelyFacet[] {
  return suggestions.flatMap(({ photoId, ranking }): LikelyFacet[] => {
    const [first] = ranking
    if (first === undefined || first.place === 'ground' || first.probability < leastProbability) return []
    return [{ photoId, facetId: first.place, probability: first.probability }]
  })
}
