import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { holdsPoint, overlapOf, regionAreaSqFt, stopsAlong, unite, without } from './region.ts'

const p = (xFt: number, yFt: number) => ({ xFt, yFt })
const box = (x: number, y: number, size: number) => [p(x, y), p(x + size, y), p(x + size, y + size), p(x, y + size)]

describe('figures', () => {
  it('join, overlap and leave what areas say by hand', () => {
    const a = unite([box(0, 0, 10)])
    const b = unite([box(5, 5, 10)])
    expect(regionAreaSqFt(unite([box(0, 0, 10), box(5, 5, 10)]))).toBe(175)
    expect(regionAreaSqFt(overlapOf(a, b))).toBe(25)
    expect(regionAreaSqFt(without(a, b))).toBe(75)
  })

  it('can have holes: a point in the hole is outside, and a line through it crosses the rim four times', () => {
    const ring = without(unite([box(0, 0, 10)]), unite([box(3, 3, 4)]))
    expect(ring[0]?.holes).toHaveLength(1)
    expect(regionAreaSqFt(ring)).toBe(84)
    expect(holdsPoint(ring, p(5, 5), 0)).toBe(false)
    expect(holdsPoint(ring, p(1, 5), 0)).toBe(true)
    // From -5 to 15: in at 0, into the hole at 3, out of it at 7, off at 10.
    const stops = stopsAlong(ring, p(-5, 5), p(15, 5)).map((share) => Number((share * 20 - 5).toFixed(9)))
    expect(stops).toEqual([-5, 0, 3, 7, 10, 15])
  })

  it('a point within reach of the border counts as inside', () => {
    const square = unite([box(0, 0, 10)])
    expect(holdsPoint(square, p(10.05, 5), 0.1)).toBe(true)
    expect(holdsPoint(square, p(10.2, 5), 0.1)).toBe(false)
  })

  it('nothing joined is nothing, and nothing taken away leaves everything', () => {
    expect(unite([])).toEqual([])
    const square = unite([box(0, 0, 10)])
    expect(without(square, [])).toEqual(square)
    expect(overlapOf(square, [])).toEqual([])
  })

  it('what overlaps and what is left make up the whole, for any two triangles', () => {
    const feet = fc.integer({ min: -50_000, max: 50_000 }).map((thousandths) => thousandths / 1000)
    const triangle = fc.array(fc.record({ xFt: feet, yFt: feet }), { minLength: 3, maxLength: 3 })
    fc.assert(
      fc.property(triangle, triangle, (one, other) => {
        const [a, b] = [unite([one]), unite([other])]
        expect(regionAreaSqFt(overlapOf(a, b)) + regionAreaSqFt(without(a, b))).toBeCloseTo(regionAreaSqFt(a), 2)
      }),
    )
  })
})
