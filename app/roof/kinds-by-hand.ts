import type { PlanPoint } from '../job/places.ts'
import { wrapDegrees } from './angles.ts'
import type { EdgeByHand, EdgeOfFacet } from './edge-by-hand.ts'
import type { RoofEdge } from './edges.ts'
import type { Facet } from './facet.ts'
import { azimuthOf, sheetDirection } from './plan-frame.ts'
import { signedAreaSqFt } from './polygon.ts'

/** A side that was stated by hand is looked for among those that face within this of how it faced. */
const SAME_FACING_DEG = 35

/** And whose middle lies within this of where it lay, as a share of the facet's width and depth. */
const SAME_PLACE = 0.6

type SideOfFacet = Extract<EdgeOfFacet, { at: 'side' }>

/** How an edge is named on one of its facets, so that the name outlasts small moves. */
export function edgeOfFacet(edge: RoofEdge, facet: Facet, upAzimuthDeg: number): EdgeOfFacet {
  const other = edge.facetIds.find((id) => id !== facet.id)
  return other === undefined ? sideOfFacet(edge, facet, upAzimuthDeg) : { at: 'shared', with: other }
}

/** The edges with the kinds that people stated on their facets; what was found stays beside it. */
export function withKindsByHand(
  edges: readonly RoofEdge[],
  facets: readonly Facet[],
  upAzimuthDeg: number,
): readonly RoofEdge[] {
  const stated = new Map<RoofEdge, EdgeByHand['kind']>()
  for (const facet of facets) {
    for (const { edge, kind } of facet.edgesByHand ?? []) {
      for (const meant of edgesMeant(edges, { facet, edge, upAzimuthDeg })) stated.set(meant, kind)
    }
  }
  if (stated.size === 0) return edges
  return edges.map((edge) => {
    const kind = stated.get(edge)
    return kind === undefined ? edge : { ...edge, kind, foundKind: edge.kind }
  })
}

/**
 * States the kind of an edge, or leaves it to the slopes again where the kind is null. Gives the facets that change; what
 * was stated before about the same edge is forgotten, on either of its facets. Null when there is no such edge.
 *
 * @param edges what `roofEdges` gives for all the facets
 */
export function facetsWithEdgeKind(
  roof: { readonly facets: readonly Facet[]; readonly edges: readonly RoofEdge[]; readonly upAzimuthDeg: number },
  asked: { readonly facet: Facet; readonly edge: EdgeOfFacet; readonly kind: EdgeByHand['kind'] | null },
): readonly Facet[] | null {
  const { facets, edges, upAzimuthDeg } = roof
  const meant = edgesMeant(edges, { ...asked, upAzimuthDeg })
  if (meant.length === 0) return null
  return facets.flatMap((facet): readonly Facet[] => {
    const before = facet.edgesByHand ?? []
    const others = before.filter(
      ({ edge }) => !edgesMeant(edges, { facet, edge, upAzimuthDeg }).some((one) => meant.includes(one)),
    )
    const isOwner = facet.id === asked.facet.id && asked.kind !== null
    if (others.length === before.length && !isOwner) return []
    const after = isOwner && asked.kind !== null ? [...others, { edge: asked.edge, kind: asked.kind }] : others
    const { edgesByHand: _before, ...rest } = facet
    return [after.length === 0 ? rest : { ...rest, edgesByHand: after }]
  })
}

/** The edges that a facet's name for one of its edges stands for: all stretches of a pair, or the side nearest to it. */
function edgesMeant(
  edges: readonly RoofEdge[],
  name: { readonly facet: Facet; readonly edge: EdgeOfFacet; readonly upAzimuthDeg: number },
): readonly RoofEdge[] {
  const { facet, edge: meant, upAzimuthDeg } = name
  const own = edges.filter(({ facetIds }) => facetIds.includes(facet.id))
  if (meant.at === 'shared') return own.filter(({ facetIds }) => facetIds.includes(meant.with))
  const [nearest] = own
    .filter(({ facetIds }) => facetIds.length === 1)
    .map((edge) => ({ edge, side: sideOfFacet(edge, facet, upAzimuthDeg) }))
    .filter(({ side }) => turnBetween(side.facingDeg, meant.facingDeg) < SAME_FACING_DEG)
    .map(({ edge, side }) => ({ edge, away: apart(side, meant) }))
    .filter(({ away }) => away < SAME_PLACE)
    .toSorted((a, b) => a.away - b.away)
  return nearest === undefined ? [] : [nearest.edge]
}

function apart(a: SideOfFacet, b: SideOfFacet): number {
  return Math.hypot(a.across - b.across, a.up - b.up)
}

function sideOfFacet({ from, to }: RoofEdge, facet: Facet, upAzimuthDeg: number): SideOfFacet {
  const downhill = sheetDirection(facet.downslopeAzimuthDeg, upAzimuthDeg)
  const across = { x: downhill.y, y: -downhill.x }
  const middle = { xFt: (from.xFt + to.xFt) / 2, yFt: (from.yFt + to.yFt) / 2 }
  // Edges run as their facet's corners do, so that the outside lies on one hand all round.
  const hand = signedAreaSqFt(facet.outline) >= 0 ? 1 : -1
  const out = { x: (to.yFt - from.yFt) * hand, y: -(to.xFt - from.xFt) * hand }
  const facingDeg = wrapDegrees(azimuthOf(out, upAzimuthDeg) - facet.downslopeAzimuthDeg)
  return {
    at: 'side',
    facingDeg: rounded(facingDeg, 1),
    across: rounded(shareAlong(facet.outline, middle, across), 3),
    up: rounded(1 - shareAlong(facet.outline, middle, downhill), 3),
  }
}

function shareAlong(
  outline: readonly PlanPoint[],
  point: PlanPoint,
  direction: { readonly x: number; readonly y: number },
): number {
  const along = ({ xFt, yFt }: PlanPoint) => xFt * direction.x + yFt * direction.y
  const reach = outline.map(along)
  const least = Math.min(...reach)
  const lengthFt = Math.max(...reach) - least
  return lengthFt === 0 ? 0 : (along(point) - least) / lengthFt
}

/** Degrees between two directions, 0 to 180. */
function turnBetween(a: number, b: number): number {
  const turn = wrapDegrees(a - b)
  return Math.min(turn, 360 - turn)
}

function rounded(value: number, digits: number): number {
  return Number(value.toFixed(digits))
}
