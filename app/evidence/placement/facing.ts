import type { Facet } from '../../roof/facet.ts'
import { radians, wrapDegrees } from '../../roof/angles.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import type { PlacementPhoto } from './placement-input.ts'

/**
 * Which way an inspector faces on a slope, from uphill clockwise, as twelve values with mean 1 at every 30 degrees, between
 * which they run straight.
 */
export type FacingHabit = Float64Array

const PARTS = 12
const PART_DEG = 360 / PARTS

/** What is expected of an inspector of whom nothing is known. */
export function usualFacing(): FacingHabit {
  return Float64Array.from(
    { length: PARTS },
    (_, part) => 1 + PLACEMENT_CALIBRATION.uphill * Math.cos(radians(part * PART_DEG)),
  )
}

/** The habit after photos were seen, each with the chance that it was taken so. */
export function learnedFacing(
  seen: readonly { readonly fromUphillDeg: number; readonly chance: number }[],
): FacingHabit {
  const worth = PLACEMENT_CALIBRATION.uphillWorthPhotos
  const habit = usualFacing().map((usual) => (usual * worth) / PARTS)
  let total: number = worth
  for (const { fromUphillDeg, chance } of seen) {
    const { part, next, share } = between(fromUphillDeg)
    habit[part] = (habit[part] ?? 0) + chance * (1 - share)
    habit[next] = (habit[next] ?? 0) + chance * share
    total += chance
  }
  const smooth = habit.map((count, part) => {
    return count / 2 + ((habit[(part + 1) % PARTS] ?? 0) + (habit[(part + PARTS - 1) % PARTS] ?? 0)) / 4
  })
  return smooth.map((count) => (count * PARTS) / total)
}

/** How much likelier than by chance it is to face so. */
export function facingChance(habit: FacingHabit, fromUphillDeg: number): number {
  const { part, next, share } = between(fromUphillDeg)
  return (habit[part] ?? 1) * (1 - share) + (habit[next] ?? 1) * share
}

/** Which way a photo faces from each facet's uphill, degrees clockwise. Empty without a direction. */
export function fromUphillDeg(photo: PlacementPhoto, facets: readonly Facet[]): readonly number[] {
  const azimuthDeg = photo.direction?.azimuthDeg
  if (azimuthDeg === undefined) return []
  return facets.map(({ downslopeAzimuthDeg }) => wrapDegrees(azimuthDeg - downslopeAzimuthDeg - 180))
}

function between(deg: number): { readonly part: number; readonly next: number; readonly share: number } {
  const at = wrapDegrees(deg) / PART_DEG
  const part = Math.floor(at) % PARTS
  return { part, next: (part + 1) % PARTS, share: at - Math.floor(at) }
}
