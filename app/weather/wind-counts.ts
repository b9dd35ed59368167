import { SECTORS, sectorOf } from './direction-words.ts'
import type { Observation } from './observation.ts'

/** Lower limits of the speed classes, knots; the last is open upward. */
export const CLASS_FROM_KT = [0, 10, 20, 34, 48] as const

/** Reports counted by direction and mean speed. */
export interface WindCounts {
  /** [sector][class] */
  readonly bySector: readonly (readonly number[])[]
  readonly calm: number
  readonly variable: number
  /** Without a speed, or with one but no direction. */
  readonly notGiven: number
  readonly total: number
}

/** Counts reports by where the mean wind came from. Calm, variable and missing are counted apart, never spread over sectors. */
export function countWinds(observations: readonly Observation[]): WindCounts {
  const bySector = Array.from({ length: SECTORS }, () => CLASS_FROM_KT.map(() => 0))
  const counts = { calm: 0, variable: 0, notGiven: 0 }
  for (const { meanKt, fromDeg, isVariable } of observations) {
    if (meanKt === 0) counts.calm += 1
    else if (isVariable) counts.variable += 1
    else if (meanKt === null || fromDeg === null) counts.notGiven += 1
    else {
      const classes = bySector[sectorOf(fromDeg)]
      const at = CLASS_FROM_KT.findLastIndex((from) => meanKt >= from)
      if (classes !== undefined) classes[at] = (classes[at] ?? 0) + 1
    }
  }
  return { bySector, ...counts, total: observations.length }
}
