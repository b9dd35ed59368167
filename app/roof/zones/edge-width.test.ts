import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { edgeWidth, leastDimension } from './edge-width.ts'

const points = (...corners: readonly (readonly [number, number])[]) => corners.map(([xFt, yFt]) => ({ xFt, yFt }))

/** The corners turned by an angle about a point off the origin. */
function turned(corners: readonly { xFt: number; yFt: number }[], deg: number) {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
  return corners.map(({ xFt, yFt }) => ({ xFt: c * xFt - s * yFt + 70, yFt: s * xFt + c * yFt - 30 }))
}

describe('width of edge zones (ASCE 7-02 figure notes, as restated in a structural handbook)', () => {
  // Worked by hand from the rule: B, h, then a.
  it.each([
    { b: 40, h: 15, a: 4, because: 'a tenth of the least dimension' },
    { b: 28, h: 12, a: 3, because: 'a tenth would be 2.8 ft, less than 3 ft' },
    { b: 24, h: 9, a: 3, because: 'never under 3 ft' },
    { b: 120, h: 20, a: 8, because: 'four tenths of the height' },
    { b: 300, h: 25, a: 12, because: 'four hundredths of the least dimension' },
  ])('is $a ft for a building $b ft across and $h ft high: $because', ({ b, h, a }) => {
    expect(edgeWidth(b, h).widthFt).toBeCloseTo(a, 9)
  })

  it('comes with the figures it was taken from and who says so', () => {
    expect(edgeWidth(120, 20).source).toContain('ASCE 7-02 figure notes as restated')
    expect(edgeWidth(120, 20)).toMatchObject({
      widthFt: 8,
      leastDimensionFt: 120,
      meanRoofHeightFt: 20,
      tenthFt: 12,
      heightShareFt: 8,
      floorFt: 4.8,
    })
  })

  it('is never less than 3 ft or 4 %, and more than a tenth or four tenths only where that floor asks for it', () => {
    const size = fc.double({ min: 1, max: 1000, noNaN: true })
    fc.assert(
      fc.property(size, size, (b, h) => {
        const { widthFt, floorFt } = edgeWidth(b, h)
        expect(widthFt).toBeGreaterThanOrEqual(3)
        expect(widthFt).toBeGreaterThanOrEqual(0.04 * b - 1e-9)
        if (widthFt > floorFt) expect(widthFt).toBeLessThanOrEqual(Math.min(0.1 * b, 0.4 * h) + 1e-9)
      }),
    )
  })
})

describe('least horizontal dimension', () => {
  it('is the shorter side of a rectangle, however it is turned', () => {
    const rectangle = points([0, 0], [60, 0], [60, 34], [0, 34])
    for (const deg of [0, 17, 45, 90, 133.3]) expect(leastDimension(turned(rectangle, deg))).toBeCloseTo(34, 9)
  })

  it('is the height over the longest side of a triangle: 4.8 for sides 6, 8 and 10', () => {
    expect(leastDimension(points([0, 0], [8, 0], [0, 6]))).toBeCloseTo(4.8, 9)
  })

  it('takes the whole of an L, not one of its wings', () => {
    expect(leastDimension(points([0, 0], [40, 0], [40, 24], [16, 24], [16, 44], [0, 44]))).toBeCloseTo(40, 9)
  })

  it('is 0 for points on one line', () => {
    expect(leastDimension(points([0, 0], [10, 10], [30, 30]))).toBe(0)
    expect(leastDimension([])).toBe(0)
  })

  it('is no more than the extent of the points in any direction', () => {
    const feet = fc.integer({ min: -1000, max: 1000 })
    const corner = fc.record({ xFt: feet, yFt: feet })
    fc.assert(
      fc.property(
        fc.array(corner, { minLength: 3, maxLength: 20 }),
        fc.integer({ min: 0, max: 179 }),
        (corners, deg) => {
          const along = corners.map(({ xFt, yFt }) => {
            const angle = (deg * Math.PI) / 180
            return xFt * Math.cos(angle) + yFt * Math.sin(angle)
          })
          expect(leastDimension(corners)).toBeLessThanOrEqual(Math.max(...along) - Math.min(...along) + 1e-9)
        },
      ),
    )
  })
})
