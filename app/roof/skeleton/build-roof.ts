import type { PlanPoint } from '../../job/places.ts'
import type { BuiltRoof } from './built-roof.ts'
import { checkRoofOutline } from './check-outline.ts'
import { checkRoof, fillsOutline } from './check-roof.ts'
import { directedRings, type DirectedEdge } from './directed-rings.ts'
import { growSkeleton, type Skeleton } from './grow-skeleton.ts'
import type { NoSlopeFault, RoofFault, UnsolvedFault } from './roof-faults.ts'
import type { OutlineRing, RoofOutline } from './roof-outline.ts'
import { shapeRoof } from './shape-roof.ts'
import type { SkeletonNode } from './skeleton.ts'
import { walkFacets, type FacetWalk } from './walk-facets.ts'

/** A roof, or every reason why there is none. */
export type RoofResult =
  | { readonly ok: true; readonly roof: BuiltRoof }
  | { readonly ok: false; readonly faults: readonly RoofFault[] }

/**
 * Grids to which corners may be rounded, feet, in the order of trying. Walls that are parallel but for a millionth of a
 * degree are neither parallel nor apart to floating-point numbers; where that spoils a roof, rounding makes them one or
 * the other. The last grid is a tenth of an inch.
 */
const ROUNDINGS_FT = [1 / 1024, 1 / 120]

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
  const asDrawn = solve(rings)
  const solved = asDrawn.kind === 'unsolved' ? (solveRounded(outline) ?? asDrawn) : asDrawn
  if (solved.kind !== 'solved') return { ok: false, faults: [solved] }
  const roof = shapeRoof(solved.walks, drawnCorners(rings, solved.skeleton), outline.eaveHeightFt ?? 0)
  const areaSqFt = roof.facets.reduce((sum, facet) => sum + facet.planAreaSqFt, 0)
  return asDrawn.kind === 'unsolved' && !fillsOutline(rings, areaSqFt)
    ? { ok: false, faults: [asDrawn] }
    : { ok: true, roof }
}

interface Solution {
  readonly kind: 'solved'
  readonly skeleton: Skeleton
  readonly walks: readonly FacetWalk[]
}

function solve(rings: readonly (readonly DirectedEdge[])[]): Solution | UnsolvedFault | NoSlopeFault {
  const skeleton = growSkeleton(rings)
  const stuck = leftOverFault(rings, skeleton)
  if (stuck !== null) return stuck
  const walks = walkFacets(rings, skeleton)
  if (walks === null) {
    const at = rings[0]?.[0]?.from ?? { xFt: 0, yFt: 0 }
    return { kind: 'unsolved', check: 'the lines of a facet do not join', at }
  }
  return checkRoof(rings, walks) ?? { kind: 'solved', skeleton, walks }
}

function solveRounded(outline: RoofOutline): Solution | null {
  for (const gridFt of ROUNDINGS_FT) {
    const rounded = roundedTo(outline, gridFt)
    if (checkRoofOutline(rounded).length > 0) continue
    const solved = solve(directedRings(rounded))
    if (solved.kind === 'solved') return solved
  }
  return null
}

function leftOverFault(
  rings: readonly (readonly DirectedEdge[])[],
  skeleton: Skeleton,
): UnsolvedFault | NoSlopeFault | null {
  const [corner] = skeleton.leftOver
  if (corner === undefined) return null
  const planes = new Set(skeleton.leftOver.map(({ after }) => after))
  const at = { xFt: corner.node.xFt, yFt: corner.node.yFt }
  if ([...planes].some((plane) => plane.pitchRise !== null))
    return { kind: 'unsolved', check: 'slopes that do not meet', at }
  const edges = rings.flat().filter((edge) => planes.has(edge.plane))
  return { kind: 'no-slope', edges: edges.map((edge) => edge.place), at }
}

function roundedTo(outline: RoofOutline, gridFt: number): RoofOutline {
  const round = (ft: number) => Math.round(ft / gridFt) * gridFt
  const ring = ({ corners, edges }: OutlineRing): OutlineRing => ({
    corners: corners.map(({ xFt, yFt }) => ({ xFt: round(xFt), yFt: round(yFt) })),
    edges,
  })
  return { ...outline, outer: ring(outline.outer), courtyards: outline.courtyards.map(ring) }
}

/** Where the outline's own corners were drawn, by their nodes: a roof ends at the corners it was asked for. */
function drawnCorners(
  rings: readonly (readonly DirectedEdge[])[],
  skeleton: Skeleton,
): ReadonlyMap<SkeletonNode, PlanPoint> {
  return new Map(
    rings.flatMap((ring, index) =>
      ring.flatMap(({ from }, corner): readonly (readonly [SkeletonNode, PlanPoint])[] => {
        const node = skeleton.cornerNodes[index]?.[corner]
        return node === undefined ? [] : [[node, from]]
      }),
    ),
  )
}
