import { describe, expect, it } from 'vitest'
import { labelPlace } from './label-place.ts'

const outline = [
  { xFt: 0, yFt: 0 },
  { xFt: 40, yFt: 0 },
  { xFt: 40, yFt: 20 },
  { xFt: 0, yFt: 20 },
]
const middle = { xFt: 20, yFt: 10 }

describe('the place of a facet letter', () => {
  it('is the middle of the facet while no pin is near', () => {
    expect(labelPlace(outline, middle, [{ xFt: 35, yFt: 4 }])).toEqual({ at: middle, roomFt: 10 })
  })

  it('moves aside for a pin, along the length of the facet', () => {
    const { at } = labelPlace(outline, middle, [{ xFt: 21, yFt: 10 }])
    expect(at.xFt).toBeCloseTo(20 - 6.2, 6)
    expect(at.yFt).toBeCloseTo(10, 6)
  })

  it('stays on the facet', () => {
    const crowd = [15, 18, 20, 22, 25].map((xFt) => ({ xFt, yFt: 10 }))
    const { at } = labelPlace(outline, middle, crowd)
    expect(at.yFt).toBeGreaterThan(0)
    expect(at.yFt).toBeLessThan(20)
  })
})
