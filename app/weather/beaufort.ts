/** Highest whole knots of each force but the last [published: NWS table]. Forces are told in knots: mph tables disagree at the top. */
const HIGHEST_KT = [0, 3, 6, 10, 16, 21, 27, 33, 40, 47, 55, 63] as const

/** Beaufort force, 0 to 12, of a mean wind in knots, rounded to whole knots first as the table is. */
export function beaufortForce(meanKt: number): number {
  const force = HIGHEST_KT.findIndex((highest) => Math.round(meanKt) <= highest)
  return force < 0 ? 12 : force
}
