import type { PlanPoint } from '../../app/job/places.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { samePlace, tidyPoint } from './sheet-geometry.ts'

/** A facet with a new outline. */
export interface Reshaped {
  readonly facet: Facet
  readonly outline: readonly PlanPoint[]
}

/** An outline with one corner somewhere else. */
export function withCornerAt(outline: readonly PlanPoint[], index: number, to: PlanPoint): PlanPoint[] {
  return outline.map((corner, i) => (i === index ? to : corner))
}

/** An outline with a new corner on side `sideIndex`, between that corner and the next. */
export function withCornerInserted(outline: readonly PlanPoint[], sideIndex: number, at: PlanPoint): PlanPoint[] {
  return [...outline.slice(0, sideIndex + 1), at, ...outline.slice(sideIndex + 1)]
}

/** An outline without one corner. */
export function withoutCorner(outline: readonly PlanPoint[], index: number): PlanPoint[] {
  return outline.filter((_, i) => i !== index)
}

/** An outline moved as it is, feet. Coordinates are tidied. */
export function movedOutline(outline: readonly PlanPoint[], by: PlanPoint): PlanPoint[] {
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
