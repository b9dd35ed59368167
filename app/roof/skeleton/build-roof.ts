import type { BuiltRoof } from './built-roof.ts'
import { checkRoofOutline } from './check-outline.ts'
import { checkRoof } from './check-roof.ts'
import { directedRings, type DirectedEdge } from './directed-rings.ts'
import { growSkeleton, type Skeleton } from './grow-skeleton.ts'
import type { RoofFault } from './roof-faults.ts'
import type { RoofOutline } from './roof-outline.ts'
import { shapeRoof } from './shape-roof.ts'
import { walkFacets } from './walk-facets.ts'

/** A roof, or every reason why there is none. */
export type RoofResult =
  | { readonly ok: true; readonly roof: BuiltRoof }
  | { readonly ok: false; readonly faults: readonly RoofFault[] }

/**
 * The roof over an outline: every eave's slope up to where it meets its neighbours', by weighted straight skeleton.
 *
 * Feet and inches in 12; corners in either winding; facets come counter-clockwise. The result has been proved to tile the
 * outline and to agree in height where facets meet; an outline without such a roof gives faults that name the place.
 */
export function buildRoof(outline: RoofOutline): RoofResult {
  const faults = checkRoofOutline(outline)
  if (faults.length > 0) return { ok: false, faults }
  const rings = directedRings(outline)
  const skeleton = growSkeleton(rings)
  const stuck = leftOverFault(rings, skeleton)
  if (stuck !== null) return { ok: false, faults: [stuck] }
  const walks = walkFacets(rings, skeleton)
  if (walks === null) {
    const at = rings[0]?.[0]?.from ?? { xFt: 0, yFt: 0 }
    return { ok: false, faults: [{ kind: 'unsolved', check: 'the lines of a facet do not join', at }] }
  }
  const wrong = checkRoof(rings, walks)
  return wrong === null
    ? { ok: true, roof: shapeRoof(walks, outline.eaveHeightFt ?? 0) }
    : { ok: false, faults: [wrong] }
}

function leftOverFault(rings: readonly (readonly DirectedEdge[])[], skeleton: Skeleton): RoofFault | null {
  const [corner] = skeleton.leftOver
  if (corner === undefined) return null
  const planes = new Set(skeleton.leftOver.map(({ after }) => after))
  const at = { xFt: corner.node.xFt, yFt: corner.node.yFt }
  if ([...planes].some((plane) => plane.pitchRise !== null))
    return { kind: 'unsolved', check: 'slopes that do not meet', at }
  const edges = rings.flat().filter((edge) => planes.has(edge.plane))
  return { kind: 'no-slope', edges: edges.map((edge) => edge.place), at }
}
