import type { FacetId } from '../job/ids.ts'
import type { PlanPoint } from '../job/places.ts'
import { roofEdges, type RoofEdge } from './edges.ts'
import type { Facet } from './facet.ts'
import type { House } from './front-words.ts'
import { directionWord, distanceAlong, houseSide } from './house-sides.ts'
import type { EdgeKind } from './plan-drawing.ts'
import { sheetDirection } from './plan-frame.ts'
import { containsPoint, lengthFt, sidesOf } from './polygon.ts'

/** A place within this of an edge is near it. */
const NEAR_EDGE_FT = 3

/** A place this far outside every facet is still taken to be on the nearest: gutters and edges are pinned roughly. */
const BESIDE_ROOF_FT = 1

/** A place within this to either side of the door is above it. */
const ABOVE_DOOR_FT = 3

/** Edges shorter than this have no ends worth naming. */
const LONG_ENOUGH_FT = 8

/** The first and last quarter of an edge are its ends. */
const END_SHARE = 0.25

const EDGE_WORDS = {
  ridge: 'ridge',
  hip: 'hip',
  valley: 'valley',
  eave: 'eave',
  rake: 'rake',
  'pitch-break': 'break in slope',
  step: 'step',
  'top-edge': 'top edge',
} as const satisfies Readonly<Record<EdgeKind, string>>

/**
 * Where on its facet a place is, in plain words for a pin: "left of the front door, near the eave", "near the right end
 * of the ridge", "along the ridge", "near the lower end of the hip", "in the upper third of the slope". Left and right
 * are those of a person who looks at the front from the street; where the front is not known, ends are named by the
 * compass. The door is named only for places on slopes that face the front. Off the roof: "off the drawn roof".
 *
 * @param onFacet the facet that the place is known to be on, which decides for places on a line between two
 */
export function placeWords(point: PlanPoint, house: House, onFacet: FacetId | null = null): string {
  const facet = house.facets.find(({ id }) => id === onFacet) ?? facetUnder(point, house.facets)
  if (facet === null) return 'off the drawn roof'
  const near = nearestEdge(point, facet, house)
  const onSlope = near === null ? slopeWords(point, facet, house.upAzimuthDeg) : edgeWords(near, facet, house)
  return [doorWords(point, facet, house), onSlope].filter((words) => words !== '').join(', ')
}

function facetUnder(point: PlanPoint, facets: readonly Facet[]): Facet | null {
  const holding = facets.find(({ outline }) => containsPoint(outline, point))
  if (holding !== undefined) return holding
  const [nearest] = facets
    .map((facet) => ({ facet, awayFt: Math.min(...sidesOf(facet.outline).map((side) => onLine(point, side).awayFt)) }))
    .toSorted((a, b) => a.awayFt - b.awayFt)
  return nearest !== undefined && nearest.awayFt <= BESIDE_ROOF_FT ? nearest.facet : null
}

function doorWords(point: PlanPoint, facet: Facet, house: House): string {
  const door = house.doorAt ?? null
  const side = houseSide(facet, house)
  if (door === null || house.frontAzimuthDeg === null || side.place !== 0) return ''
  const toRight = distanceAlong(point, side.across) - distanceAlong(door, side.across)
  if (Math.abs(toRight) <= ABOVE_DOOR_FT) return 'above the front door'
  return `${toRight < 0 ? 'left' : 'right'} of the front door`
}

/** An edge, and how far along it the place is nearest: 0 at its start, 1 at its end. */
interface NearEdge {
  readonly edge: RoofEdge
  readonly share: number
  readonly awayFt: number
}

interface Line {
  readonly from: PlanPoint
  readonly to: PlanPoint
}

function nearestEdge(point: PlanPoint, facet: Facet, house: House): NearEdge | null {
  const own = roofEdges(house.facets, house.upAzimuthDeg).filter(({ facetIds }) => facetIds.includes(facet.id))
  const [nearest] = own.map((edge) => ({ edge, ...onLine(point, edge) })).toSorted((a, b) => a.awayFt - b.awayFt)
  return nearest !== undefined && nearest.awayFt <= NEAR_EDGE_FT ? nearest : null
}

function onLine(point: PlanPoint, { from, to }: Line): { readonly share: number; readonly awayFt: number } {
  const dx = to.xFt - from.xFt
  const dy = to.yFt - from.yFt
  const along = ((point.xFt - from.xFt) * dx + (point.yFt - from.yFt) * dy) / (dx * dx + dy * dy || 1)
  const share = Math.min(1, Math.max(0, along))
  return { share, awayFt: lengthFt(point, { xFt: from.xFt + share * dx, yFt: from.yFt + share * dy }) }
}

function edgeWords({ edge, share }: NearEdge, facet: Facet, house: House): string {
  const name = EDGE_WORDS[edge.kind]
  if (edge.planLengthFt < LONG_ENOUGH_FT) return `near the ${name}`
  if (share > END_SHARE && share < 1 - END_SHARE) return `along the ${name}`
  const [end, other] = share <= END_SHARE ? [edge.from, edge.to] : [edge.to, edge.from]
  return `near the ${endWord(end, other, { facet, house })} end of the ${name}`
}

/** Level edges have a left and a right end, or a front and a back one; sloping edges have an upper and a lower end. */
function endWord(end: PlanPoint, other: PlanPoint, on: { readonly facet: Facet; readonly house: House }): string {
  const { facet, house } = on
  const towards = { x: end.xFt - other.xFt, y: end.yFt - other.yFt }
  const downhill = sheetDirection(facet.downslopeAzimuthDeg, house.upAzimuthDeg)
  const fall = (towards.x * downhill.x + towards.y * downhill.y) / Math.hypot(towards.x, towards.y)
  const isLevel = facet.pitchRise === 0 || Math.abs(fall) < 0.1
  if (isLevel) return directionWord(towards, house)
  return fall > 0 ? 'lower' : 'upper'
}

function slopeWords(point: PlanPoint, facet: Facet, upAzimuthDeg: number): string {
  if (facet.pitchRise === 0) return ''
  const downhill = sheetDirection(facet.downslopeAzimuthDeg, upAzimuthDeg)
  const reach = facet.outline.map((corner) => distanceAlong(corner, downhill))
  const top = Math.min(...reach)
  const share = (distanceAlong(point, downhill) - top) / (Math.max(...reach) - top)
  const third = share < 1 / 3 ? 'upper third' : share <= 2 / 3 ? 'middle third' : 'lower third'
  return `in the ${third} of the slope`
}
