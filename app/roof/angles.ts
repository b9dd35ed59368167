import type { Brand } from '../job/brand.ts'

/** Degrees clockwise from true north, 0 up to but not including 360. */
export type Degrees = number
/** Angle in radians, for trigonometry only. */
export type Radians = Brand<number, 'Radians'>

/** Degrees to radians. */
export function radians(deg: Degrees): Radians {
  return ((deg * Math.PI) / 180) as Radians
}

/** Any angle in degrees brought into 0 up to but not including 360. */
export function wrapDegrees(deg: number): Degrees {
  const wrapped = ((deg % 360) + 360) % 360
  return wrapped === 360 ? 0 : wrapped
}
