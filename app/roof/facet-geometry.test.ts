import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '../job/places.ts'
import { facetGeometry, pieceCount, roofTotals } from './facet-geometry.ts'

/** Areas agree with the worked values to a thousandth of a square foot. */
const DIGITS = 3

const outlineOf = (...corners: readonly (readonly [number, number])[]): PlanPoint[] =>
  corners.map(([xFt, yFt]) => ({ xFt, yFt }))
const rectangle = (w: number, h: number) => outlineOf([0, 0], [w, 0], [w, h], [0, h])

describe('area of one facet: plan area times slope factor (construction-handbook rule)', () => {
  it('is 313.0655 sq ft or 3.1307 squares for 22 by 13.5 ft of plan at 4:12', () => {
    const facet = facetGeometry({ outline: rectangle(22, 13.5), pitchRise: 4 })
    expect(facet.planAreaSqFt).toBe(297)
    expect(facet.areaSqFt).toBeCloseTo(313.0655, DIGITS)
    expect(facet.squares).toBeCloseTo(3.1307, 4)
    expect(facet.pitchLabel).toBe('4:12')
  })

  it('is its plan area when it is flat', () => {
    expect(facetGeometry({ outline: rectangle(10, 10), pitchRise: 0 }).areaSqFt).toBe(100)
  })

  it('takes a pitch of 22.62 degrees for 5:12 (trigonometry)', () => {
    const byAngle = facetGeometry({ outline: rectangle(40, 30), pitchRise: 12 * Math.tan((22.62 * Math.PI) / 180) })
    expect(byAngle.areaSqFt).toBeCloseTo(1300, 2)
    expect(byAngle.pitchLabel).toBe('5:12')
  })

  it('does not depend on which way round the outline was drawn', () => {
    const outline = rectangle(22, 13.5)
    expect(facetGeometry({ outline: outline.toReversed(), pitchRise: 4 })).toEqual(
      facetGeometry({ outline, pitchRise: 4 }),
    )
  })
})

describe('area of whole roofs (geometry; worked values to four decimals)', () => {
  it('gable 40 by 30, ridge along 40, 6:12: 1341.6408 sq ft, 13.416 squares', () => {
    const half = { outline: rectangle(40, 15), pitchRise: 6 }
    const roof = roofTotals([half, half])
    expect(roof.areaSqFt).toBeCloseTo(1341.6408, DIGITS)
    expect(roof.squares).toBeCloseTo(13.416, DIGITS)
  })

  it('hip 60 by 40, 5:12: 2600 sq ft exactly; ends 400 of plan and 433.3333, sides 800 and 866.6667', () => {
    const end = { outline: outlineOf([0, 0], [20, 20], [0, 40]), pitchRise: 5 }
    const side = { outline: outlineOf([0, 0], [60, 0], [40, 20], [20, 20]), pitchRise: 5 }
    expect(facetGeometry(end)).toMatchObject({ planAreaSqFt: 400 })
    expect(facetGeometry(end).areaSqFt).toBeCloseTo(433.3333, DIGITS)
    expect(facetGeometry(side)).toMatchObject({ planAreaSqFt: 800 })
    expect(facetGeometry(side).areaSqFt).toBeCloseTo(866.6667, DIGITS)
    expect(roofTotals([end, side, end, side]).areaSqFt).toBeCloseTo(2600, 9)
  })

  it('pyramid 32 by 32, 4:12: 1079.3908 sq ft', () => {
    const face = { outline: outlineOf([0, 0], [32, 0], [16, 16]), pitchRise: 4 }
    expect(roofTotals([face, face, face, face]).areaSqFt).toBeCloseTo(1079.3908, DIGITS)
  })

  it('L of 1280 sq ft of plan at 5:12: 1386.6667 sq ft, whatever the hips and valleys do', () => {
    const ell = outlineOf([0, 0], [40, 0], [40, 24], [16, 24], [16, 44], [0, 44])
    const roof = roofTotals([{ outline: ell, pitchRise: 5 }])
    expect(roof.planAreaSqFt).toBe(1280)
    expect(roof.areaSqFt).toBeCloseTo(1386.6667, DIGITS)
  })

  it('cut in two anywhere, a facet keeps its area', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 39, noNaN: true }),
        fc.double({ min: 0, max: 36, noNaN: true }),
        (x, pitchRise) => {
          const whole = roofTotals([{ outline: rectangle(40, 15), pitchRise }])
          const parts = roofTotals([
            { outline: rectangle(x, 15), pitchRise },
            { outline: outlineOf([x, 0], [40, 0], [40, 15], [x, 15]), pitchRise },
          ])
          expect(parts.areaSqFt).toBeCloseTo(whole.areaSqFt, 6)
        },
      ),
    )
  })

  it('is nothing where there are no facets', () => {
    expect(roofTotals([])).toEqual({ planAreaSqFt: 0, areaSqFt: 0, squares: 0 })
  })
})

describe('tiles for an area: 144 square inches a square foot over exposure times cover width', () => {
  it.each([
    [13.5, 12, 88.89],
    [13.5, 12.25, 87.07],
    [13.5, 11.875, 89.82],
    [13.5, 12.375, 86.2],
    [13, 12, 92.31],
    [14, 12, 85.71],
    [15, 8.25, 116.36],
  ])(
    'at %f in exposure and %f in cover a square takes %f (general tile-coverage guides)',
    (exposureIn, coverWidthIn, each) => {
      expect(pieceCount(100, { exposureIn, coverWidthIn })).toBeCloseTo(each, 2)
    },
  )

  it('is 2311.11 for 2600 sq ft, 2,312 in whole tiles, and 2,543 with a tenth more area', () => {
    const piece = { exposureIn: 13.5, coverWidthIn: 12 }
    expect(pieceCount(2600, piece)).toBeCloseTo(2311.11, 2)
    expect(Math.ceil(pieceCount(2600, piece))).toBe(2312)
    expect(Math.ceil(pieceCount(2600 * 1.1, piece))).toBe(2543)
  })
})
