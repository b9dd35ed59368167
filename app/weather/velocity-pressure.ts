import { z } from 'zod'
import type { WindEdition } from '../roof/zones/edition.ts'

export const exposureSchema = z.enum(['B', 'C', 'D'])
export type Exposure = z.output<typeof exposureSchema>

interface Terrain {
  readonly alpha: number
  readonly zgFt: number
}

/** Terrain constants up to 7-16 [ASCE 7-05/7-10 Table 26.9-1, second hand]. */
const upTo716 = {
  B: { alpha: 7, zgFt: 1200 },
  C: { alpha: 9.5, zgFt: 900 },
  D: { alpha: 11.5, zgFt: 700 },
} as const satisfies Record<Exposure, Terrain>

/** Constants of 7-22 [ASCE 7-22 Table 26.11-1, second hand; alpha of B from memory: sources differ]. */
const from722 = {
  B: { alpha: 7.5, zgFt: 3280 },
  C: { alpha: 9.8, zgFt: 2460 },
  D: { alpha: 11.5, zgFt: 1935 },
} as const satisfies Record<Exposure, Terrain>

/** Height below which the factor stays the same, feet. */
const LEAST_HEIGHT_FT = 15

/** Velocity pressure exposure coefficient Kz at a height above ground, feet, by the edition's formula; not rounded. */
export function exposureCoefficient(heightFt: number, exposure: Exposure, edition: WindEdition): number {
  const isNew = edition === '7-22'
  const { alpha, zgFt } = isNew ? from722[exposure] : upTo716[exposure]
  const zFt = Math.min(Math.max(heightFt, LEAST_HEIGHT_FT), zgFt)
  return (isNew ? 2.41 : 2.01) * (zFt / zgFt) ** (2 / alpha)
}

/** Ground elevation factor Ke at a height above sea level, feet [ASCE 7-22 Table 26.9-1 note]. 1.0 is always permitted. */
export function elevationFactor(elevationFt: number): number {
  return Math.exp(-0.0000362 * elevationFt)
}

export interface PressureInput {
  readonly edition: WindEdition
  /** 3-second gust at 33 ft in open terrain, mph. */
  readonly speedMph: number
  readonly exposure: Exposure
  readonly heightFt: number
  readonly kzt: number
  readonly kd: number
  /** Above sea level; null takes Ke as 1.0. The 7-10 edition has no Ke. */
  readonly elevationFt: number | null
}

export interface VelocityPressure {
  readonly kz: number
  /** Null where the edition has none. */
  readonly ke: number | null
  /** Velocity pressure as the edition defines it, psf: with Kd up to 7-16, without it in 7-22. */
  readonly qPsf: number
  /** Where the wind directionality factor belongs in this edition. */
  readonly kdIsIn: 'velocity-pressure' | 'load'
  /** The formula in words and figures. */
  readonly formula: string
  readonly working: string
}

/** Velocity pressure at mean roof height, psf, with its working. Context, not engineering. */
export function velocityPressure(input: PressureInput): VelocityPressure {
  const { edition, speedMph, exposure, heightFt, kzt, kd, elevationFt } = input
  const kz = exposureCoefficient(heightFt, exposure, edition)
  const ke = edition === '7-10' ? null : elevationFt === null ? 1 : elevationFactor(elevationFt)
  const kdIsIn = edition === '7-22' ? 'load' : 'velocity-pressure'
  const factors = [
    ['Kz', kz.toFixed(3), kz],
    ['Kzt', String(kzt), kzt],
    ...(kdIsIn === 'velocity-pressure' ? [['Kd', String(kd), kd] as const] : []),
    ...(ke === null ? [] : [['Ke', ke.toFixed(4), ke] as const]),
  ] as const
  const qPsf = factors.reduce((product, [, , value]) => product * value, 0.00256 * speedMph ** 2)
  return {
    kz,
    ke,
    qPsf,
    kdIsIn,
    formula: `q = 0.00256 × ${factors.map(([name]) => name).join(' × ')} × V²`,
    working: `q = 0.00256 × ${factors.map(([, figure]) => figure).join(' × ')} × ${speedMph.toFixed(1)}² = ${qPsf.toFixed(2)} psf`,
  }
}
