const FOOT_M = 0.3048

/**
 * Standard deviation per axis, feet, of a position whose stated horizontal error is a radius in metres.
 *
 * Exif's GPSHPositioningError is "horizontal positioning error in meters" without a confidence. Phones write the radius
 * that about 68 % of positions keep within, and it is taken as that. For a circular Gaussian the radius of 68 % is
 * sigma * sqrt(-2 ln 0.32) = 1.5096 sigma.
 */
export function sigmaFtOf(errorM: number): number {
  return errorM / Math.sqrt(-2 * Math.log(1 - 0.68)) / FOOT_M
}

/** Metres as feet. */
export function feet(metres: number): number {
  return metres / FOOT_M
}
