import { describe, expect, it } from 'vitest'
import { aFacet } from '../../../tests/builders/records.ts'
import { PLACEMENT_CALIBRATION } from './calibration.ts'
import { likelihoods, type PhotoEvidence } from './evidence-of-photo.ts'
import { planCells } from './plan-cells.ts'

const rectangle = (wideFt: number, deepFt: number) => [
  { xFt: 0, yFt: 0 },
  { xFt: wideFt, yFt: 0 },
  { xFt: wideFt, yFt: deepFt },
  { xFt: 0, yFt: deepFt },
]

describe('the plan as a lattice', () => {
  it('is nothing without a facet', () => {
    expect(planCells([])).toBeNull()
  })

  it('gives even the smallest facet a point', () => {
    const cells = planCells([aFacet({ outline: rectangle(60, 40) }), aFacet({ outline: rectangle(0.3, 0.3) })])
    expect((cells?.starts[2] ?? 0) - (cells?.starts[1] ?? 0)).toBeGreaterThan(0)
  })

  /*
   * A Gaussian over a rectangle is a product of differences of the normal distribution function, whose values are those of
   * Abramowitz and Stegun, Handbook of Mathematical Functions, table 26.1: P(0.5) = 0.69146, P(1) = 0.84134,
   * P(1.25) = 0.89435, P(2.5) = 0.99379.
   */
  it.each([
    { at: { xFt: 20, yFt: 16 }, sigmaFt: 16, probability: (2 * 0.89435 - 1) * (2 * 0.84134 - 1) },
    { at: { xFt: 20, yFt: 16 }, sigmaFt: 8, probability: (2 * 0.99379 - 1) * (2 * 0.97725 - 1) },
    { at: { xFt: 0, yFt: 16 }, sigmaFt: 16, probability: (0.99379 - 0.5) * (2 * 0.84134 - 1) },
  ])('integrates a Gaussian of $sigmaFt ft over a facet to within 2 points of the closed form', (given) => {
    const cells = planCells([aFacet({ outline: rectangle(40, 32) })])
    if (cells === null) throw new Error('There is a facet.')
    const ones = new Float64Array(cells.placeOf.length).fill(1)
    const evidence: PhotoEvidence = {
      position: { at: given.at, sigmaFt: given.sigmaFt },
      sight: { own: ones, usual: 1, hits: new Int16Array(0), factors: [] },
      shares: [new Float64Array(1)],
      said: Float64Array.of(1, 1),
      pin: null,
    }
    const { own } = likelihoods(evidence, cells, Float64Array.of(0))
    const { grossPosition } = PLACEMENT_CALIBRATION
    const anywhere = grossPosition / (cells.xFt.length * cells.yFt.length * cells.stepFt ** 2)
    const density = ((own[0] ?? 0) - anywhere) / (1 - grossPosition)
    const pointsSqFt = ((cells.starts[1] ?? 0) - (cells.starts[0] ?? 0)) * cells.stepFt ** 2
    expect(Math.abs(density * pointsSqFt - given.probability)).toBeLessThan(0.02)
  })
})
