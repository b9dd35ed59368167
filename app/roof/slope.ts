/** Inches of run in the trade's way of writing pitch, x in 12. */
const RUN_IN = 12

/**
 * Slope factor S: sloped area per plan area, and rafter length per foot of run.
 * S = sqrt(1 + (rise/12)^2), from construction-handbook slope tables (6:12 gives 1.118).
 *
 * @param pitchRise inches of rise in 12 inches of run, zero or more
 */
export function slopeFactor(pitchRise: number): number {
  return Math.hypot(1, pitchRise / RUN_IN)
}

/**
 * Hip or valley true length per foot of common run, for equal pitches meeting at a square eave corner: sqrt(2 + p^2).
 * It multiplies the run, not the hip's own plan length; for that see `hipFactorPerPlanFoot`.
 */
export function hipFactorPerRunFoot(pitchRise: number): number {
  return Math.sqrt(2 + (pitchRise / RUN_IN) ** 2)
}

/** Hip or valley true length per foot of its own (diagonal) plan length: sqrt(1 + p^2 / 2). */
export function hipFactorPerPlanFoot(pitchRise: number): number {
  return hipFactorPerRunFoot(pitchRise) / Math.SQRT2
}

/** "5:12"; halves and other fractions are kept to two decimals. */
export function pitchLabel(pitchRise: number): string {
  return `${Number(pitchRise.toFixed(2))}:12`
}
