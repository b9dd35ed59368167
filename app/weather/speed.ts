import { z } from 'zod'

export const speedUnitSchema = z.enum(['kt', 'mph', 'm/s', 'km/h'])
export type SpeedUnit = z.output<typeof speedUnitSchema>

/** Metres per second in one of each unit. Knot: exactly 1852 m an hour; mile: exactly 1609.344 m [NIST SP 811]. */
const metresPerSecond = {
  kt: 1852 / 3600,
  mph: 0.44704,
  'm/s': 1,
  'km/h': 1 / 3.6,
} as const satisfies Record<SpeedUnit, number>

/** A speed in knots, unrounded. */
export function toKnots(value: number, unit: SpeedUnit): number {
  return (value * metresPerSecond[unit]) / metresPerSecond.kt
}

/** A speed given in knots, in another unit, unrounded. */
export function fromKnots(kt: number, unit: SpeedUnit): number {
  return (kt * metresPerSecond.kt) / metresPerSecond[unit]
}
