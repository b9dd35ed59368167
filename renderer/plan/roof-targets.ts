import type { PlanPoint } from '../../app/job/places.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { sidesOf } from '../../app/roof/polygon.ts'
import type { SnapTargets } from './snapping.ts'

/** How far apart the steps are that free lengths are rounded to, feet. */
export const LENGTH_STEP_FT = 0.5

/** Everything of the drawn roof that a new point may hold on to. */
export function roofTargets(
  facets: readonly Facet[],
  more: { readonly levels?: readonly PlanPoint[] } = {},
): SnapTargets {
  const corners = facets.flatMap((facet) => facet.outline)
  return {
    corners,
    sides: facets.flatMap((facet) => sidesOf(facet.outline)),
    levels: [...corners, ...(more.levels ?? [])],
  }
}
