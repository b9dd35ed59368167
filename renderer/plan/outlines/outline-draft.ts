import type { EdgeId } from '../../../app/job/ids.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import type { HouseEdge, HouseOutline, HouseRing } from '../../../app/roof/house-outline.ts'
import { lengthFt, signedAreaSqFt } from '../../../app/roof/polygon.ts'
import { tidyPoint } from '../sheet-geometry.ts'

/** A corner, or the edge that starts there: ring 0 is the outside, courtyards count from 1; corners and edges from 0. */
export interface RingPlace {
  readonly ring: number
  readonly index: number
}

/** All rings of an outline, the outside first. */
export function houseRings(outline: HouseOutline): readonly HouseRing[] {
  return [outline.outer, ...outline.courtyards]
}

/** The outline that covers most: the main roof. */
export function largestOutline(outlines: readonly HouseOutline[]): HouseOutline | undefined {
  const area = ({ outer }: HouseOutline) => Math.abs(signedAreaSqFt(outer.corners))
  return outlines.toSorted((a, b) => area(b) - area(a))[0]
}

/** A ring whose edges are all eaves of one pitch. */
export function eavesRing(corners: readonly PlanPoint[], pitchRise: number, newId: () => EdgeId): HouseRing {
  return { corners: [...corners], edges: corners.map(() => ({ id: newId(), kind: 'eave', pitchRise })) }
}

/** The edge at a place; undefined when there is none. */
export function edgeAt(outline: HouseOutline, { ring, index }: RingPlace): HouseEdge | undefined {
  return houseRings(outline)[ring]?.edges[index]
}

/** The pitch that most eaves have; null when every edge is a gable. */
export function commonPitch(outline: HouseOutline): number | null {
  const counts = new Map<number, number>()
  for (const edge of houseRings(outline).flatMap((ring) => ring.edges)) {
    if (edge.kind === 'eave') counts.set(edge.pitchRise, (counts.get(edge.pitchRise) ?? 0) + 1)
  }
  const [most] = [...counts].toSorted((a, b) => b[1] - a[1])
  return most?.[0] ?? null
}

/** The outline with one corner somewhere else. */
export function withCornerMoved(outline: HouseOutline, place: RingPlace, to: PlanPoint): HouseOutline {
  return withRing(outline, place.ring, ({ corners, edges }) => ({
    corners: corners.map((corner, i) => (i === place.index ? to : corner)),
    edges,
  }))
}

/** The outline moved as it is, feet. */
export function movedBy(outline: HouseOutline, by: PlanPoint): HouseOutline {
  const moved = ({ corners, edges }: HouseRing): HouseRing => ({
    corners: corners.map(({ xFt, yFt }) => tidyPoint({ xFt: xFt + by.xFt, yFt: yFt + by.yFt })),
    edges,
  })
  return { ...outline, outer: moved(outline.outer), courtyards: outline.courtyards.map(moved) }
}

/** A new corner on an edge. The part before it keeps the edge's identity, the part after it is a new edge of its kind. */
export function withCornerAdded(
  outline: HouseOutline,
  place: RingPlace,
  added: { readonly at: PlanPoint; readonly newId: () => EdgeId },
): HouseOutline {
  return withRing(outline, place.ring, ({ corners, edges }) => ({
    corners: corners.toSpliced(place.index + 1, 0, added.at),
    edges: edges.flatMap((edge, i) => (i === place.index ? [edge, { ...edge, id: added.newId() }] : [edge])),
  }))
}

/** The outline without a corner: of the two edges that met there the longer one stays. A triangle keeps its corners. */
export function withCornerRemoved(outline: HouseOutline, { ring, index }: RingPlace): HouseOutline {
  return withRing(outline, ring, (own) => {
    const count = own.corners.length
    const before = (index + count - 1) % count
    const [start, corner, end] = [own.corners[before], own.corners[index], own.corners[(index + 1) % count]]
    const [first, second] = [own.edges[before], own.edges[index]]
    if (count <= 3 || start === undefined || corner === undefined || end === undefined) return own
    if (first === undefined || second === undefined) return own
    const staying = lengthFt(start, corner) >= lengthFt(corner, end) ? first : second
    return {
      corners: own.corners.filter((_, i) => i !== index),
      edges: own.edges.map((edge, i) => (i === before ? staying : edge)).filter((_, i) => i !== index),
    }
  })
}

/** The outline with one edge an eave of a pitch, or a gable where the pitch is null. The edge keeps its identity. */
export function withEdgePitch(outline: HouseOutline, place: RingPlace, pitchRise: number | null): HouseOutline {
  return withRing(outline, place.ring, ({ corners, edges }) => ({
    corners,
    edges: edges.map((edge, i) => (i === place.index ? edgeOf(edge.id, pitchRise) : edge)),
  }))
}

/** An eave becomes a gable; a gable becomes an eave of the outline's usual pitch, or of `pitchRise` when it has none. */
export function withEdgeToggled(outline: HouseOutline, place: RingPlace, pitchRise: number): HouseOutline {
  const isEave = edgeAt(outline, place)?.kind === 'eave'
  return withEdgePitch(outline, place, isEave ? null : (commonPitch(outline) ?? pitchRise))
}

/** The outline with every eave at one pitch. */
export function withAllPitches(outline: HouseOutline, pitchRise: number): HouseOutline {
  const pitched = ({ corners, edges }: HouseRing): HouseRing => ({
    corners,
    edges: edges.map((edge) => (edge.kind === 'eave' ? { ...edge, pitchRise } : edge)),
  })
  return { ...outline, outer: pitched(outline.outer), courtyards: outline.courtyards.map(pitched) }
}

/**
 * Gives an edge a new length by moving the edge after it parallel to itself; the edge after that grows or shrinks along
 * its own line, so that directions stay.
 */
export function withEdgeLength(outline: HouseOutline, place: RingPlace, newLengthFt: number): HouseOutline {
  return withRing(outline, place.ring, ({ corners, edges }) => {
    const count = corners.length
    const at = (step: number): PlanPoint => corners[(place.index + step) % count] ?? { xFt: 0, yFt: 0 }
    const [from, to, next, far] = [at(0), at(1), at(2), at(3)]
    const before = lengthFt(from, to)
    if (before === 0) return { corners, edges }
    const grown = newLengthFt / before
    const moved = { xFt: from.xFt + (to.xFt - from.xFt) * grown, yFt: from.yFt + (to.yFt - from.yFt) * grown }
    const shift = { xFt: moved.xFt - to.xFt, yFt: moved.yFt - to.yFt }
    const slid = tidyPoint(
      slidAlong({ next, far }, { shift, along: { xFt: next.xFt - to.xFt, yFt: next.yFt - to.yFt } }),
    )
    const places = new Map([
      [(place.index + 1) % count, tidyPoint(moved)],
      [(place.index + 2) % count, slid],
    ])
    return { corners: corners.map((corner, i) => places.get(i) ?? corner), edges }
  })
}

/** The outline with one more courtyard. */
export function withCourtyard(outline: HouseOutline, courtyard: HouseRing): HouseOutline {
  return { ...outline, courtyards: [...outline.courtyards, courtyard] }
}

/** The outline without a courtyard; ring numbers start at 1 there. */
export function withoutCourtyard(outline: HouseOutline, ring: number): HouseOutline {
  return { ...outline, courtyards: outline.courtyards.filter((_, i) => i !== ring - 1) }
}

/** Where the far end of a shifted edge meets the line of the edge after it; shifted as it is where the two are parallel. */
function slidAlong(
  { next, far }: { readonly next: PlanPoint; readonly far: PlanPoint },
  { shift, along }: { readonly shift: PlanPoint; readonly along: PlanPoint },
): PlanPoint {
  const line = { xFt: far.xFt - next.xFt, yFt: far.yFt - next.yFt }
  const turn = line.xFt * along.yFt - line.yFt * along.xFt
  const size = Math.hypot(line.xFt, line.yFt) * Math.hypot(along.xFt, along.yFt)
  if (Math.abs(turn) < 1e-9 * size) return { xFt: next.xFt + shift.xFt, yFt: next.yFt + shift.yFt }
  const share = (shift.xFt * along.yFt - shift.yFt * along.xFt) / turn
  return { xFt: next.xFt + line.xFt * share, yFt: next.yFt + line.yFt * share }
}

function edgeOf(id: EdgeId, pitchRise: number | null): HouseEdge {
  return pitchRise === null ? { id, kind: 'gable' } : { id, kind: 'eave', pitchRise }
}

function withRing(outline: HouseOutline, ring: number, change: (ring: HouseRing) => HouseRing): HouseOutline {
  if (ring === 0) return { ...outline, outer: change(outline.outer) }
  return { ...outline, courtyards: outline.courtyards.map((own, i) => (i === ring - 1 ? change(own) : own)) }
}
