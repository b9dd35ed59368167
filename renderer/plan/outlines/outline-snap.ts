import type { PlanPoint } from '../../../app/job/places.ts'
import type { Facet } from '../../../app/roof/facet.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { lengthFt, sidesOf } from '../../../app/roof/polygon.ts'
import type { HandleMove } from '../drag-handle.tsx'
import { LENGTH_STEP_FT, roofTargets } from '../roof-targets.ts'
import { nearestOnSide, samePlace, tidyPoint } from '../sheet-geometry.ts'
import { nearestCorner, snapPoint, type SnapTargets } from '../snapping.ts'
import { houseRings, movedBy, type RingPlace } from './outline-draft.ts'

interface Around {
  readonly outline: HouseOutline
  /** All facets of the job; those of this outline are not held on to, since they move with it. */
  readonly facets: readonly Facet[]
}

/** Where a dragged corner goes: it holds on to other roofs, and keeps the edges on either hand straight where it can. */
export function cornerSnap(around: Around, { ring, index }: RingPlace, { at, reachFt, free }: HandleMove): PlanPoint {
  const corners = houseRings(around.outline)[ring]?.corners ?? []
  const count = corners.length
  const own = corners[index]
  if (free || own === undefined) return tidyPoint(at)
  const given = { targets: targetsWithout(around, own), settings: { reachFt, stepFt: LENGTH_STEP_FT } }
  const fromBefore = snapPoint(at, corners[(index + count - 1) % count] ?? null, given)
  return fromBefore.to === 'free' ? snapPoint(at, corners[(index + 1) % count] ?? null, given).at : fromBefore.at
}

/** Where a corner goes that is pulled out of an edge. */
export function addedSnap(around: Around, { ring, index }: RingPlace, { at, reachFt, free }: HandleMove): PlanPoint {
  const start = houseRings(around.outline)[ring]?.corners[index]
  if (free || start === undefined) return tidyPoint(at)
  const given = { targets: targetsWithout(around, null), settings: { reachFt, stepFt: LENGTH_STEP_FT } }
  return snapPoint(at, start, given).at
}

/** The outline moved from one place to another; a corner that comes near another roof's corner meets it. */
export function movedSnap(around: Around, from: PlanPoint, { at, reachFt, free }: HandleMove): HouseOutline {
  const moved = movedBy(around.outline, { xFt: at.xFt - from.xFt, yFt: at.yFt - from.yFt })
  if (free) return moved
  const { corners } = roofTargets(othersOf(around))
  let best: { readonly by: PlanPoint; readonly away: number } | null = null
  for (const corner of moved.outer.corners) {
    const near = nearestCorner(corner, corners, best?.away ?? reachFt)
    if (near === null) continue
    best = { by: { xFt: near.xFt - corner.xFt, yFt: near.yFt - corner.yFt }, away: lengthFt(corner, near) }
  }
  return best === null ? moved : movedBy(moved, best.by)
}

/** The edge nearest to a place within reach; null when none is near. */
export function edgeNear(outline: HouseOutline, at: PlanPoint, reachFt: number): RingPlace | null {
  let best: RingPlace | null = null
  let bestFt = reachFt
  for (const [ring, { corners }] of houseRings(outline).entries()) {
    for (const side of sidesOf(corners)) {
      const away = lengthFt(nearestOnSide(side, at), at)
      if (away > bestFt) continue
      best = { ring, index: side.index }
      bestFt = away
    }
  }
  return best
}

function targetsWithout(around: Around, corner: PlanPoint | null): SnapTargets {
  const roof = roofTargets(othersOf(around))
  const own = houseRings(around.outline).flatMap((ring) => ring.corners)
  const levels = own.filter((other) => corner === null || !samePlace(other, corner))
  return { corners: roof.corners, sides: roof.sides, levels: [...roof.levels, ...levels] }
}

function othersOf({ outline, facets }: Around): readonly Facet[] {
  return facets.filter((facet) => facet.from?.outlineId !== outline.id)
}
