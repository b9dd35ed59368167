import type { PlanPoint } from '../../job/places.ts'
import { containsPoint } from '../polygon.ts'
import { buildRoof, type RoofResult } from './build-roof.ts'
import { directedRings } from './directed-rings.ts'
import type { RoofFault } from './roof-faults.ts'
import { ringsOf, type RoofOutline } from './roof-outline.ts'
import { crossingsWithin } from './touches.ts'

/** Outlines that share a wall may run into each other by this much, feet: an eighth of an inch. */
const SHARED_WALL_FT = 1 / 96

/**
 * The roof over one outline of a house with several: a garage, a porch, a dormer cheek to cheek with a wall. Each has a
 * roof of its own; to cover the same place as another one is a fault that names the other, counted from 1.
 */
export function buildRoofBeside(outline: RoofOutline, neighbours: readonly RoofOutline[]): RoofResult {
  const result = buildRoof(outline)
  if (!result.ok) return result
  const faults = neighbours.flatMap((neighbour, index): readonly RoofFault[] => {
    const at = placeInBoth(outline, neighbour)
    return at === null ? [] : [{ kind: 'roofs-overlap', other: index + 1, at }]
  })
  return faults.length === 0 ? result : { ok: false, faults }
}

/** A place that two outlines both cover: where their sides cross, or just inside a side of one that lies in the other. */
function placeInBoth(a: RoofOutline, b: RoofOutline): PlanPoint | null {
  const lines = [a, b].flatMap((outline) => ringsOf(outline).map((ring) => ring.corners))
  const ringsOfA = ringsOf(a).length
  const crossing = crossingsWithin(lines, SHARED_WALL_FT).find(
    (touch) => touch.a.ring < ringsOfA !== touch.b.ring < ringsOfA,
  )
  if (crossing !== undefined) return crossing.at
  return placesInside(a).find((place) => covers(b, place)) ?? placesInside(b).find((place) => covers(a, place)) ?? null
}

function placesInside(outline: RoofOutline): readonly PlanPoint[] {
  const inFt = 2 * SHARED_WALL_FT
  return directedRings(outline)
    .flat()
    .map(({ from, to, plane }) => ({
      xFt: (from.xFt + to.xFt) / 2 + plane.inwardX * inFt,
      yFt: (from.yFt + to.yFt) / 2 + plane.inwardY * inFt,
    }))
}

function covers({ outer, courtyards }: RoofOutline, place: PlanPoint): boolean {
  return containsPoint(outer.corners, place) && !courtyards.some((courtyard) => containsPoint(courtyard.corners, place))
}
