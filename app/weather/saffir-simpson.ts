/** The scale's own definitions, for a wind sustained over one minute [published: SSHWS tables]. Least knots of each category. */
const LEAST_KT = [64, 83, 96, 113, 137] as const

/**
 * Category 0 (below hurricane strength) to 5 of a 1-minute sustained wind, knots. Meaningless for a gust or for a mean
 * over two or ten minutes: callers must have a 1-minute mean.
 */
export function saffirSimpsonCategory(oneMinuteKt: number): number {
  return LEAST_KT.filter((least) => Math.round(oneMinuteKt) >= least).length
}
