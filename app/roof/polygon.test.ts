import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '../job/places.ts'
import { containsPoint, lengthFt, sidesOf, signedAreaSqFt } from './polygon.ts'

const at = (xFt: number, yFt: number): PlanPoint => ({ xFt, yFt })
const outlineOf = (corners: readonly (readonly [number, number])[]) => corners.map(([x, y]) => at(x, y))

/** The textbook pentagon of the shoelace formula. */
const pentagon = outlineOf([
  [3, 4],
  [5, 11],
  [12, 8],
  [9, 5],
  [5, 6],
])
const ell = outlineOf([
  [0, 0],
  [40, 0],
  [40, 24],
  [16, 24],
  [16, 44],
  [0, 44],
])
const feet = fc.integer({ min: -500_000, max: 500_000 }).map((thousandths) => thousandths / 1000)
const corner = fc.record({ xFt: feet, yFt: feet })

describe('area of an outline', () => {
  it("is 30 for the shoelace formula's textbook pentagon, negative because its corners run clockwise", () => {
    expect(signedAreaSqFt(pentagon)).toBe(-30)
    expect(signedAreaSqFt(pentagon.toReversed())).toBe(30)
  })

  it('is 1280 for an L of 40 by 24 with a leg of 16 by 20 (shoelace formula; 960 + 320 by hand)', () => {
    expect(signedAreaSqFt(ell)).toBe(1280)
  })

  it('does not depend on where the list begins, and changes sign when it runs the other way', () => {
    fc.assert(
      fc.property(fc.array(corner, { minLength: 3, maxLength: 12 }), fc.nat(11), (outline, turn) => {
        const start = turn % outline.length
        const moved = [...outline.slice(start), ...outline.slice(0, start)]
        expect(signedAreaSqFt(moved)).toBeCloseTo(signedAreaSqFt(outline), 6)
        expect(signedAreaSqFt(outline.toReversed())).toBeCloseTo(-signedAreaSqFt(outline), 6)
      }),
    )
  })

  it('does not depend on where the outline lies', () => {
    const far = ell.map((p) => at(p.xFt + 9000, p.yFt - 9000))
    expect(signedAreaSqFt(far)).toBeCloseTo(1280, 6)
  })
})

describe('sides of an outline', () => {
  it('close it: the last one runs back to the first corner', () => {
    const sides = sidesOf(pentagon)
    expect(sides).toHaveLength(5)
    expect(sides[4]).toEqual({ index: 4, from: at(5, 6), to: at(3, 4) })
  })

  it('have a plan length', () => {
    expect(lengthFt(at(1, 2), at(4, 6))).toBe(5)
  })
})

describe('a point in an outline', () => {
  it('is inside an L or in the notch beside it', () => {
    expect(containsPoint(ell, at(8, 40))).toBe(true)
    expect(containsPoint(ell, at(30, 12))).toBe(true)
    expect(containsPoint(ell, at(30, 34))).toBe(false)
    expect(containsPoint(ell, at(-1, 12))).toBe(false)
  })

  it('counts a corner at its own height once, not twice', () => {
    const diamond = outlineOf([
      [0, -5],
      [5, 0],
      [0, 5],
      [-5, 0],
    ])
    expect(containsPoint(diamond, at(0, 0))).toBe(true)
    expect(containsPoint(diamond, at(-6, 0))).toBe(false)
    expect(containsPoint(diamond, at(6, 0))).toBe(false)
  })

  it('agrees with the winding of triangles round it, for any triangle and any point off its sides', () => {
    fc.assert(
      fc.property(fc.tuple(corner, corner, corner), corner, ([a, b, c], p) => {
        const turns = [signedAreaSqFt([a, b, p]), signedAreaSqFt([b, c, p]), signedAreaSqFt([c, a, p])]
        fc.pre(turns.every((t) => Math.abs(t) > 1e-3))
        const allOneWay = turns.every((t) => t > 0) || turns.every((t) => t < 0)
        expect(containsPoint([a, b, c], p)).toBe(allOneWay)
      }),
    )
  })
})
