import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { radians, wrapDegrees } from './angles.ts'

describe('angles', () => {
  it('are turned to radians', () => {
    expect(radians(180)).toBe(Math.PI)
  })

  it('come into 0 up to but not including 360', () => {
    expect(wrapDegrees(360)).toBe(0)
    expect(wrapDegrees(-90)).toBe(270)
    expect(wrapDegrees(725)).toBe(5)
    expect(wrapDegrees(-1e-20)).toBe(0)
  })

  it('come into range whatever they are, and stay the same direction', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (deg) => {
        const wrapped = wrapDegrees(deg)
        expect(wrapped).toBeGreaterThanOrEqual(0)
        expect(wrapped).toBeLessThan(360)
        expect(Math.cos(radians(wrapped))).toBeCloseTo(Math.cos(radians(deg)), 6)
        expect(Math.sin(radians(wrapped))).toBeCloseTo(Math.sin(radians(deg)), 6)
      }),
    )
  })
})
