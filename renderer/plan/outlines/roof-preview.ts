import { facetIdSchema } from '../../../app/job/ids.ts'
import type { PlanFrame } from '../../../app/job/places.ts'
import type { Facet } from '../../../app/roof/facet.ts'
import { facetsOfOutline } from '../../../app/roof/facets-of-outline.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'

/** The facets that an outline would give, or the sentence that says why there are none. */
export type RoofPreview =
  | {
      readonly ok: true
      /** Those of the outline as it is shown; new ones have no letter until they are saved. */
      readonly facets: readonly Facet[]
      /** Facets that would be removed. */
      readonly goes: readonly Facet[]
    }
  | { readonly ok: false; readonly sentence: string }

/** What of a job an outline's roof depends on. */
export interface HouseAround {
  readonly facets: readonly Facet[]
  readonly outlines: readonly HouseOutline[]
  readonly frame: PlanFrame
}

/** The roof over an outline as saving it would build it, with all that was set by hand, quickly enough to follow a hand. */
export function previewRoof(outline: HouseOutline, { facets, outlines, frame }: HouseAround): RoofPreview {
  const newIds = new Set<string>()
  const built = facetsOfOutline(outline, {
    existing: facets,
    former: [],
    neighbours: outlines.filter(({ id }) => id !== outline.id),
    frame,
    frontAzimuthDeg: null,
    newId: () => {
      const id = facetIdSchema.parse(`new-${newIds.size}`)
      newIds.add(id)
      return id
    },
  })
  if (!built.ok) return built
  return {
    ok: true,
    facets: built.facets.map((facet) => (newIds.has(facet.id) ? { ...facet, letter: '' } : facet)),
    goes: facets.filter(({ id }) => built.removed.includes(id)),
  }
}
