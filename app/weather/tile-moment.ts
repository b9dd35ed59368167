import type { VelocityPressure } from './velocity-pressure.ts'

export interface TileMomentInput {
  readonly pressure: VelocityPressure
  readonly kd: number
  /** Lift coefficient; 0.2 for concrete and clay tile unless tested [FBC-B 2023 1609.6.3, second hand]. */
  readonly liftCoefficient: number
  readonly exposedWidthFt: number
  readonly tileLengthFt: number
  /** From the axis of rotation to the point of uplift, feet; null takes 0.76 of the length, for tile laid on the deck. */
  readonly armFt: number | null
  /** Roof pressure coefficient of the zone, negative upward, without internal pressure. */
  readonly gcp: number
}

export interface TileMoment {
  readonly momentFtLbf: number
  readonly armFt: number
  readonly formula: string
  readonly working: string
  /** Limits of use that the tile lies outside of, as sentences; with any, the formula is not meant for it. */
  readonly outside: readonly string[]
}

/**
 * Aerodynamic uplift moment on one rigid tile, ft-lbf, at strength level [form: IBC 2018 1609.5.3, from memory; lift
 * coefficient and arm: FBC-B 2023 1609.6.3, second hand]. Where the edition keeps Kd out of q it is applied here, or
 * the moment would be 1/Kd too large. Context, not engineering.
 */
export function tileMoment(input: TileMomentInput): TileMoment {
  const { pressure, kd, liftCoefficient, exposedWidthFt, tileLengthFt, gcp } = input
  const armFt = input.armFt ?? 0.76 * tileLengthFt
  const isKdHere = pressure.kdIsIn === 'load'
  const momentFtLbf =
    pressure.qPsf * (isKdHere ? kd : 1) * liftCoefficient * exposedWidthFt * tileLengthFt * armFt * (1 - gcp)
  const figures = [
    pressure.qPsf.toFixed(2),
    ...(isKdHere ? [String(kd)] : []),
    String(liftCoefficient),
    exposedWidthFt.toFixed(3),
    tileLengthFt.toFixed(3),
    armFt.toFixed(3),
    `(1 − ${gcp < 0 ? `(${gcp})` : gcp})`,
  ]
  return {
    momentFtLbf,
    armFt,
    formula: `Ma = q × ${isKdHere ? 'Kd × ' : ''}CL × b × L × La × (1 − GCp)`,
    working: `Ma = ${figures.join(' × ')} = ${momentFtLbf.toFixed(2)} ft-lbf`,
    outside: [
      ...outsideOf('Tile length', tileLengthFt, [1, 1.75]),
      ...outsideOf('Exposed width', exposedWidthFt, [0.67, 1.25]),
    ],
  }
}

function outsideOf(what: string, valueFt: number, [least, most]: readonly [number, number]): readonly string[] {
  if (valueFt >= least && valueFt <= most) return []
  return [`${what} ${valueFt.toFixed(3)} ft is outside ${least} to ${most} ft: the formula is not for this tile.`]
}
