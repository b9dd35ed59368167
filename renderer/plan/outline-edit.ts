import type { PlanPoint } from '../../app/job/places.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { lengthFt, sidesOf } from '../../app/roof/polygon.ts'
import { samePlace, tidyPoint } from './sheet-geometry.ts'
import { nearestCorner } from './snapping.ts'

/** Corners nearer than this are the same corner: less than an eighth of an inch. */
const SAME_FT = 0.01

/** A facet with a new outline. */
export interface Reshaped {
  readonly facet: Facet
  readonly outline: readonly PlanPoint[]
}

/** An outline with one corner somewhere else. */
function withCornerAt(outline: readonly PlanPoint[], index: number, to: PlanPoint): PlanPoint[] {
  return outline.map((corner, i) => (i === index ? to : corner))
}

/** An outline with a new corner on side `sideIndex`, between that corner and the next. */
function withCornerInserted(outline: readonly PlanPoint[], sideIndex: number, at: PlanPoint): PlanPoint[] {
  return [...outline.slice(0, sideIndex + 1), at, ...outline.slice(sideIndex + 1)]
}

/** An outline without one corner. */
export function withoutCorner(outline: readonly PlanPoint[], index: number): PlanPoint[] {
  return outline.filter((_, i) => i !== index)
}

/** An outline moved as it is, feet. Coordinates are tidied. */
function movedOutline(outline: readonly PlanPoint[], by: PlanPoint): PlanPoint[] {
  return outline.map((corner) => tidyPoint({ xFt: corner.xFt + by.xFt, yFt: corner.yFt + by.yFt }))
}

/**
 * Moves a corner of one facet and, unless it is detached, the corners of other facets at the very same place, so that
 * neighbours stay joined.
 *
 * @returns the facets that change, the given one first
 */
export function moveSharedCorner(
  facets: readonly Facet[],
  corner: { readonly facet: Facet; readonly index: number; readonly detached: boolean },
  to: PlanPoint,
): Reshaped[] {
  const from = corner.facet.outline[corner.index]
  if (from === undefined) return []
  const own: Reshaped = { facet: corner.facet, outline: withCornerAt(corner.facet.outline, corner.index, to) }
  if (corner.detached) return [own]
  const neighbours = facets.flatMap((facet) => {
    if (facet.id === corner.facet.id || !facet.outline.some((p) => samePlace(p, from))) return []
    return [{ facet, outline: facet.outline.map((p) => (samePlace(p, from) ? to : p)) }]
  })
  return [own, ...neighbours]
}

/**
 * Adds a corner on a side of one facet and, unless it is detached, on the same side of the neighbour that shares both of
 * its ends, so that the two stay joined when the corner moves.
 *
 * @returns the facets that change, the given one first
 */
export function insertSharedCorner(
  facets: readonly Facet[],
  side: { readonly facet: Facet; readonly index: number; readonly detached: boolean },
  at: PlanPoint,
): Reshaped[] {
  const own = sidesOf(side.facet.outline)[side.index]
  if (own === undefined) return []
  const changed = { facet: side.facet, outline: withCornerInserted(side.facet.outline, side.index, at) }
  if (side.detached) return [changed]
  const neighbours = facets.flatMap((facet) => {
    if (facet.id === side.facet.id) return []
    const shared = sidesOf(facet.outline).find(
      (other) => samePlace(other.from, own.to) && samePlace(other.to, own.from),
    )
    return shared === undefined ? [] : [{ facet, outline: withCornerInserted(facet.outline, shared.index, at) }]
  })
  return [changed, ...neighbours]
}

/**
 * Moves a whole facet. When one of its corners comes within reach of another facet's corner, the facet is shifted so
 * that the two are the very same point.
 */
export function moveFacetOutline(
  outline: readonly PlanPoint[],
  by: PlanPoint,
  hold: { readonly corners: readonly PlanPoint[]; readonly reachFt: number },
): PlanPoint[] {
  const moved = movedOutline(outline, by)
  let shift: { from: PlanPoint; to: PlanPoint } | null = null
  let bestFt = hold.reachFt
  for (const corner of moved) {
    const near = nearestCorner(corner, hold.corners, bestFt)
    if (near === null) continue
    shift = { from: corner, to: near }
    bestFt = lengthFt(corner, near)
  }
  if (shift === null) return moved
  const { from, to } = shift
  const held = movedOutline(moved, { xFt: to.xFt - from.xFt, yFt: to.yFt - from.yFt })
  // Rounding must not part corners that meet.
  return held.map((corner) => nearestCorner(corner, hold.corners, SAME_FT) ?? corner)
}
