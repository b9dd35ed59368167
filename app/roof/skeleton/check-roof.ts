import type { PlanPoint } from '../../job/places.ts'
import { signedAreaSqFt } from '../polygon.ts'
import type { DirectedEdge } from './directed-rings.ts'
import type { UnsolvedFault } from './roof-faults.ts'
import { heightOverFt } from './slope-plane.ts'
import { AREA_SHARE, SAME_HEIGHT_FT, SAME_PLACE_FT } from './tolerances.ts'
import { crossingsWithin } from './touches.ts'
import { cornersOf, facetAreaSqFt, type FacetWalk } from './walk-facets.ts'

/**
 * Proves a roof before anyone relies on it; the first thing wrong, or null.
 *
 * Every facet is a simple polygon, counter-clockwise, with an eave of its own; every eave is in one facet; corners lie on
 * the facet's plane, so that neighbours agree in height along the lines they share; and plan areas sum to the outline's.
 * Since every line inside is walked once from each side, simple facets with that sum leave no gap and no overlap.
 */
export function checkRoof(
  rings: readonly (readonly DirectedEdge[])[],
  walks: readonly FacetWalk[],
): UnsolvedFault | null {
  for (const walk of walks) {
    const wrong = wrongWithFacet(walk)
    if (wrong !== null) return { kind: 'unsolved', ...wrong }
  }
  const eaves = rings.flat().filter((edge) => edge.plane.pitchRise !== null)
  const walked = new Set(
    walks.flatMap(({ steps }) => steps.flatMap(({ line }) => (line.kind === 'eave' ? [line.edge] : []))),
  )
  const missed = eaves.find((edge) => !walked.has(edge))
  if (missed !== undefined) return { kind: 'unsolved', check: 'an eave has no slope', at: missed.from }
  const facetsSqFt = walks.reduce((sum, walk) => sum + facetAreaSqFt(walk), 0)
  if (!fillsOutline(rings, facetsSqFt)) {
    const at = rings[0]?.[0]?.from ?? { xFt: 0, yFt: 0 }
    return { kind: 'unsolved', check: 'the facets do not fill the outline', at }
  }
  return null
}

/** True when facets have the plan area of the outline. */
export function fillsOutline(rings: readonly (readonly DirectedEdge[])[], facetsSqFt: number): boolean {
  const outlineSqFt = rings.reduce((sum, ring) => sum + signedAreaSqFt(ring.map(({ from }) => from)), 0)
  return Math.abs(facetsSqFt - outlineSqFt) <= AREA_SHARE * outlineSqFt
}

function wrongWithFacet(walk: FacetWalk): { readonly check: string; readonly at: PlanPoint } | null {
  const loops = [walk.steps, ...walk.holes].map(cornersOf)
  const corners = loops.flat()
  const at = corners[0] ?? { xFt: 0, yFt: 0 }
  if (!walk.steps.some(({ line }) => line.kind === 'eave')) return { check: 'a facet has no eave', at }
  if (facetAreaSqFt(walk) <= 0) return { check: 'a facet is inside out', at }
  const off = corners.find((corner) => {
    const heightFt = heightOverFt(walk.plane, corner)
    return heightFt === undefined || Math.abs(heightFt - corner.heightFt) > SAME_HEIGHT_FT
  })
  if (off !== undefined) return { check: 'facets disagree in height', at: off }
  const [crossing] = crossingsWithin(loops, SAME_PLACE_FT)
  return crossing === undefined ? null : { check: 'a facet crosses itself', at: crossing.at }
}
