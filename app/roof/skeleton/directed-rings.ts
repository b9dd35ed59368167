import type { PlanPoint } from '../../job/places.ts'
import { lengthFt, sidesOf, signedAreaSqFt } from '../polygon.ts'
import { ringsOf, type EdgePlace, type RoofOutline } from './roof-outline.ts'
import { liesIn, planeOver, type SlopePlane } from './slope-plane.ts'

/** An edge of the outline, directed so that the roof lies on its left, with the plane that rises from it. */
export interface DirectedEdge {
  readonly place: EdgePlace
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly plane: SlopePlane
}

type Drawn = Omit<DirectedEdge, 'plane'> & { readonly pitchRise: number | null }

/**
 * The rings of a checked outline, each directed with the roof on its left, the outside first. Edges of one line, direction
 * and pitch share one plane object, wherever they stand: a wall with a corner drawn in it, or the two arms of a U.
 */
export function directedRings(outline: RoofOutline): readonly (readonly DirectedEdge[])[] {
  const rings = ringsOf(outline).map((ring, index) => {
    const drawn = sidesOf(ring.corners).flatMap(({ from, to, index: side }): Drawn[] => {
      const edge = ring.edges[side]
      if (edge === undefined) return []
      const pitchRise = edge.kind === 'eave' ? edge.pitchRise : null
      return [{ place: { ring: index, edge: side + 1 }, from, to, pitchRise }]
    })
    const roofIsLeft = signedAreaSqFt(ring.corners) > 0 === (index === 0)
    return roofIsLeft ? drawn : drawn.toReversed().map((edge) => ({ ...edge, from: edge.to, to: edge.from }))
  })
  const planes = sharedPlanes(rings.flat())
  return rings.map((ring) => ring.flatMap((edge) => withPlane(edge, planes.get(edge))))
}

function withPlane({ place, from, to }: Drawn, plane: SlopePlane | undefined): readonly DirectedEdge[] {
  return plane === undefined ? [] : [{ place, from, to, plane }]
}

/** Longer edges give their planes first, since a short edge says little of where its line runs far away. */
function sharedPlanes(edges: readonly Drawn[]): ReadonlyMap<Drawn, SlopePlane> {
  const planes: SlopePlane[] = []
  const planeOf = new Map<Drawn, SlopePlane>()
  const longestFirst = edges.toSorted((a, b) => lengthFt(b.from, b.to) - lengthFt(a.from, a.to))
  for (const edge of longestFirst) {
    const own = planeOver(edge.from, edge.to, edge.pitchRise)
    const known = planes.find((plane) => liesIn(plane, own, [edge.from, edge.to]))
    if (known === undefined) planes.push(own)
    planeOf.set(edge, known ?? own)
  }
  return planeOf
}
