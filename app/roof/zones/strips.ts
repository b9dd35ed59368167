import type { FacetId } from '../../job/ids.ts'
import type { PlanPoint } from '../../job/places.ts'
import type { RoofEdge } from '../edges.ts'
import type { Facet } from '../facet.ts'
import { lengthFt, signedAreaSqFt } from '../polygon.ts'
import type { ZonePart } from './edition.ts'
import { overlapOf, unite, type Region } from './region.ts'

/** Ends of edges this close are one corner: an inch. */
const SAME_CORNER_FT = 1 / 12

/** Outer edges that meet at more than this count as one straight edge, not as a corner. */
const WIDEST_CORNER_DEG = 135

/** Past this the mitre of an inner corner would run far out; it is cut off instead. Cosine of about 135 degrees. */
const SHARPEST_MITRE = -0.7

/** What a part of the roof covers in plan, before it is cut to the facets. */
export interface Strip {
  readonly part: ZonePart
  readonly outline: readonly PlanPoint[]
  /** Facets that it can lie on; null for any. */
  readonly facetIds: readonly FacetId[] | null
}

/** An outer edge, run so that the roof lies on its left. */
interface OuterEdge {
  readonly kind: 'eave' | 'rake' | 'top-edge'
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly along: Vector
  readonly inward: Vector
}

interface Vector {
  readonly x: number
  readonly y: number
}

/**
 * The strips and corners of a roof, each as wide as the edge zone: strips along eaves, rakes and other outer edges,
 * strips on both sides of ridges and hips, and the parallelograms where two outer strips meet at an outer corner
 * (squares where the corner is square). Steps, valleys and breaks of slope have none.
 */
export function zoneStrips(facets: readonly Facet[], edges: readonly RoofEdge[], widthFt: number): readonly Strip[] {
  const outer = edges.flatMap((edge) => outerEdge(edge, facets))
  return [
    ...outer.flatMap((edge) => cornersAt(edge, outer, widthFt)),
    ...ridgeEnds(edges, outer, widthFt),
    ...outer.map((edge): Strip => ({ part: edge.kind, outline: inwardStrip(edge, widthFt), facetIds: null })),
    ...edges.flatMap((edge) => bothSides(edge, widthFt)),
  ]
}

function outerEdge(edge: RoofEdge, facets: readonly Facet[]): readonly OuterEdge[] {
  const { kind } = edge
  if (kind !== 'eave' && kind !== 'rake' && kind !== 'top-edge') return []
  const facet = facets.find(({ id }) => edge.facetIds.includes(id))
  const runsLeft = facet === undefined || signedAreaSqFt(facet.outline) >= 0
  const [from, to] = runsLeft ? [edge.from, edge.to] : [edge.to, edge.from]
  const along = direction(from, to)
  return [{ kind, from, to, along, inward: leftOf(along) }]
}

/** The corner in which an outer edge ends, or the filling that an inner corner leaves open; none in between. */
function cornersAt(edge: OuterEdge, outer: readonly OuterEdge[], widthFt: number): readonly Strip[] {
  const meeting = outer.filter((other) => other !== edge && lengthFt(edge.to, other.from) < SAME_CORNER_FT)
  const [next] = meeting.toSorted((a, b) => insideAngleDeg(edge, a) - insideAngleDeg(edge, b))
  if (next === undefined) return []
  const angle = insideAngleDeg(edge, next)
  if (angle <= WIDEST_CORNER_DEG) {
    return [{ part: cornerPart(edge, next), outline: cornerOutline(edge, next, widthFt), facetIds: null }]
  }
  return angle > 180 ? [{ part: edge.kind, outline: innerFilling(edge, next, widthFt), facetIds: null }] : []
}

function cornerPart(a: OuterEdge, b: OuterEdge): ZonePart {
  const kinds = [a.kind, b.kind].toSorted().join('+')
  if (kinds === 'eave+rake') return 'eave-rake-corner'
  return kinds === 'eave+eave' ? 'eave-corner' : 'other-corner'
}

/** Where the strips of two edges cross: a parallelogram with its point in the corner. */
function cornerOutline(edge: OuterEdge, next: OuterEdge, widthFt: number): readonly PlanPoint[] {
  const at = next.from
  const side = widthFt / Math.sin((insideAngleDeg(edge, next) * Math.PI) / 180)
  const onNext = moved(at, next.along, side)
  return [at, onNext, moved(onNext, edge.along, -side), moved(at, edge.along, -side)]
}

/** Strips end square at an inner corner; this fills what lies between them. */
function innerFilling(edge: OuterEdge, next: OuterEdge, widthFt: number): readonly PlanPoint[] {
  const at = next.from
  const cosine = edge.inward.x * next.inward.x + edge.inward.y * next.inward.y
  const both = { x: edge.inward.x + next.inward.x, y: edge.inward.y + next.inward.y }
  const ends = [moved(at, next.inward, widthFt), moved(at, edge.inward, widthFt)] as const
  return cosine < SHARPEST_MITRE ? [at, ...ends] : [at, ends[0], moved(at, both, widthFt / (1 + cosine)), ends[1]]
}

/** Where a ridge runs into a rake: the last stretch of the ridge's strips, as far in as the rake's strip reaches. */
function ridgeEnds(edges: readonly RoofEdge[], outer: readonly OuterEdge[], widthFt: number): readonly Strip[] {
  const rakes = outer.filter(({ kind }) => kind === 'rake')
  return edges
    .filter(({ kind }) => kind === 'ridge')
    .flatMap((ridge) =>
      [ridge.from, ridge.to].flatMap((end) => {
        const met = rakes.filter((rake) => [rake.from, rake.to].some((p) => lengthFt(p, end) < SAME_CORNER_FT))
        const reach: Region = unite(met.map((rake) => inwardStrip(rake, widthFt)))
        return overlapOf(reach, unite([ridgeStrip(ridge, widthFt)])).map(({ outer: outline }): Strip => ({
          part: 'ridge-rake-corner',
          outline,
          facetIds: ridge.facetIds,
        }))
      }),
    )
}

function bothSides(edge: RoofEdge, widthFt: number): readonly Strip[] {
  const { kind, facetIds } = edge
  return kind === 'ridge' || kind === 'hip' ? [{ part: kind, outline: ridgeStrip(edge, widthFt), facetIds }] : []
}

function inwardStrip({ from, to, inward }: OuterEdge, widthFt: number): readonly PlanPoint[] {
  return [from, to, moved(to, inward, widthFt), moved(from, inward, widthFt)]
}

function ridgeStrip({ from, to }: RoofEdge, widthFt: number): readonly PlanPoint[] {
  const across = leftOf(direction(from, to))
  return [
    moved(from, across, -widthFt),
    moved(to, across, -widthFt),
    moved(to, across, widthFt),
    moved(from, across, widthFt),
  ]
}

/** Angle of the roof at the corner where one outer edge ends and the next begins, 0 to 360 degrees. */
function insideAngleDeg(edge: OuterEdge, next: OuterEdge): number {
  const turn = Math.atan2(
    edge.along.x * next.along.y - edge.along.y * next.along.x,
    edge.along.x * next.along.x + edge.along.y * next.along.y,
  )
  return 180 - (turn * 180) / Math.PI
}

function direction(from: PlanPoint, to: PlanPoint): Vector {
  const length = lengthFt(from, to)
  return { x: (to.xFt - from.xFt) / length, y: (to.yFt - from.yFt) / length }
}

function leftOf({ x, y }: Vector): Vector {
  return { x: -y, y: x }
}

function moved(point: PlanPoint, along: Vector, byFt: number): PlanPoint {
  return { xFt: point.xFt + along.x * byFt, yFt: point.yFt + along.y * byFt }
}
