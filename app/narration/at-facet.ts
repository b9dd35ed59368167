import type { FacetId } from '../job/ids.ts'
import type { Draft } from './draft.ts'

/** The draft with its place settled on one of the facets that its words leave open; unchanged when they don't leave that one. */
export function atFacet(draft: Draft, facetId: FacetId | null): Draft {
  const { place } = draft
  if (place === null || facetId === null || !place.value.facetIds.includes(facetId)) return draft
  return { ...draft, place: { ...place, value: { ...place.value, facetIds: [facetId] } } }
}

/** Facets among which a person has to choose; none where the words leave one or none. */
export function openFacets({ place }: Draft): readonly FacetId[] {
  const facetIds = place?.value.facetIds ?? []
  return facetIds.length > 1 ? facetIds : []
}
