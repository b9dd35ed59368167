import { fromKnots, type SpeedUnit } from './speed.ts'

/** A unit that the figures themselves speak for. */
export interface UnitProof {
  readonly unit: SpeedUnit
  readonly sentence: string
}

const known = ['kt', 'mph', 'm/s', 'km/h'] as const satisfies readonly SpeedUnit[]

/**
 * The unit of a column, by the speeds in knots that the same rows give elsewhere: the median ratio of the two.
 * Null with fewer than three pairs, or when no unit is within 3 % of the ratio.
 */
export function unitByRatio(pairs: readonly { readonly value: number; readonly kt: number }[]): UnitProof | null {
  const ratios = pairs
    .filter(({ kt }) => kt > 0)
    .map(({ value, kt }) => value / kt)
    .sort((a, b) => a - b)
  const median = ratios[Math.floor(ratios.length / 2)]
  if (ratios.length < 3 || median === undefined) return null
  const unit = known.find((one) => Math.abs(median / fromKnots(1, one) - 1) < 0.03)
  if (unit === undefined) return null
  return {
    unit,
    sentence: `The column is in ${unit}: over ${ratios.length} rows it is ${median.toFixed(3)} times the knots of the report in the same row.`,
  }
}

/**
 * The unit by the steps between figures. Instruments that count whole knots leave gaps when converted: one decimal m/s
 * comes out as 0.5, 1.0, 1.5, 2.1, 2.6, and km/h as 2, 4, 6, 7, 9. Null when the figures don't fit or fewer than 12
 * different ones are there. Knots and mph can't be told apart this way. Common practice, no source; the steps follow
 * from the units.
 */
export function unitBySteps(values: readonly number[]): UnitProof | null {
  const different = [...new Set(values.filter((value) => value > 0))]
  if (different.length < 12) return null
  const unit = (['m/s', 'km/h'] as const).find((one) => different.every((value) => isStep(value, one)))
  if (unit === undefined) return null
  return {
    unit,
    sentence: `The ${different.length} different speeds in the file are all whole knots turned into ${unit}.`,
  }
}

/** True when the figure is a whole number of knots turned into the unit and rounded as archives do. */
function isStep(value: number, unit: SpeedUnit): boolean {
  const decimals = unit === 'm/s' ? 1 : 0
  const inUnit = (kt: number) => Number(fromKnots(kt, unit).toFixed(decimals))
  const nearest = Math.round(value / fromKnots(1, unit))
  return [nearest - 1, nearest, nearest + 1].some((kt) => Math.abs(inUnit(kt) - value) < 0.001)
}
