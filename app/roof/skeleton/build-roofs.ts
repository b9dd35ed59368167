import type { PlanPoint } from '../../job/places.ts'
import { containsPoint } from '../polygon.ts'
import { buildRoof } from './build-roof.ts'
import type { BuiltRoof } from './built-roof.ts'
import { directedRings } from './directed-rings.ts'
import type { RoofFault } from './roof-faults.ts'
import { ringsOf, type RoofOutline } from './roof-outline.ts'
import { crossingsWithin } from './touches.ts'
import { wallSteps, type PlacedRoof, type WallStep } from './wall-steps.ts'

/** Outlines that share a wall may run into each other by this much, feet: an eighth of an inch. */
const SHARED_WALL_FT = 1 / 96

/** Roofs in the order of their outlines, or every fault with the number of its outline, from 1. */
export type RoofsResult =
  | { readonly ok: true; readonly roofs: readonly BuiltRoof[]; readonly steps: readonly WallStep[] }
  | { readonly ok: false; readonly faults: readonly { readonly outline: number; readonly fault: RoofFault }[] }

/**
 * The roofs of a house whose parts stand at different heights: a garage, a porch, a dormer cheek to cheek with a wall.
 *
 * Each outline has a roof of its own; where one touches the wall of an outline with higher eaves, the stretch is reported
 * as a step. Outlines that cover the same place are a fault that names both.
 */
export function buildRoofs(outlines: readonly RoofOutline[]): RoofsResult {
  const results = outlines.map(buildRoof)
  const faults = results.flatMap((result, index) =>
    result.ok ? [] : result.faults.map((fault) => ({ outline: index + 1, fault })),
  )
  if (faults.length > 0) return { ok: false, faults }
  const overlaps = outlines.flatMap((outline, index) =>
    outlines.slice(0, index).flatMap((other, otherIndex) => {
      const at = placeInBoth(outline, other)
      return at === null
        ? []
        : [{ outline: index + 1, fault: { kind: 'roofs-overlap', other: otherIndex + 1, at } satisfies RoofFault }]
    }),
  )
  if (overlaps.length > 0) return { ok: false, faults: overlaps }
  const placed = outlines.flatMap((outline, index): readonly PlacedRoof[] => {
    const result = results[index]
    return result?.ok === true ? [{ index, outline, roof: result.roof }] : []
  })
  const steps = placed.flatMap((lower) => placed.flatMap((higher) => wallSteps(lower, higher)))
  return { ok: true, roofs: placed.map(({ roof }) => roof), steps }
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
