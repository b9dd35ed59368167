import type { PlanPoint } from '../job/places.ts'
import { signedAreaSqFt } from './polygon.ts'
import { pitchLabel, slopeFactor } from './slope.ts'

/** One roof square, by trade definition, is 100 square feet of sloped surface. */
const SQUARE_SQFT = 100

/** What a facet's outline and pitch amount to, with the inputs that a reader needs to check it. */
export interface FacetGeometry {
  readonly planAreaSqFt: number
  readonly slopeFactor: number
  /** Sloped area: plan area times slope factor. */
  readonly areaSqFt: number
  readonly squares: number
  readonly pitchLabel: string
}

/** Areas of a facet from its plan outline (feet) and pitch (inches in 12). */
export function facetGeometry(facet: {
  readonly outline: readonly PlanPoint[]
  readonly pitchRise: number
}): FacetGeometry {
  const planAreaSqFt = Math.abs(signedAreaSqFt(facet.outline))
  const factor = slopeFactor(facet.pitchRise)
  const areaSqFt = planAreaSqFt * factor
  return {
    planAreaSqFt,
    slopeFactor: factor,
    areaSqFt,
    squares: areaSqFt / SQUARE_SQFT,
    pitchLabel: pitchLabel(facet.pitchRise),
  }
}

/** Sums over facets; waste is never in here. */
export function roofTotals(facets: readonly { readonly outline: readonly PlanPoint[]; readonly pitchRise: number }[]): {
  readonly planAreaSqFt: number
  readonly areaSqFt: number
  readonly squares: number
} {
  const each = facets.map(facetGeometry)
  const sum = (pick: (g: FacetGeometry) => number) => each.reduce((total, g) => total + pick(g), 0)
  return { planAreaSqFt: sum((g) => g.planAreaSqFt), areaSqFt: sum((g) => g.areaSqFt), squares: sum((g) => g.squares) }
}

/**
 * Tiles or shingles that cover an area: area / (exposure x cover width), not rounded.
 * Tiles per square = 14400 / (exposure x cover width), both in inches (general tile-coverage guides).
 */
export function pieceCount(
  areaSqFt: number,
  piece: { readonly exposureIn: number; readonly coverWidthIn: number },
): number {
  return (areaSqFt * 144) / (piece.exposureIn * piece.coverWidthIn)
}
