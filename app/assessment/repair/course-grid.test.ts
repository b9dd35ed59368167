import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { aFacet } from '../../../tests/builders/records.ts'
import { type Cell, cellAt, fewestLifted, type Laying, liftedFor, mostLifted } from './course-grid.ts'

const straight: Laying = { bond: 'straight', lockFrom: 'left' }
const staggered: Laying = { bond: 'staggered', lockFrom: 'right' }

// The rule of neighbours is common practice, no source; the counts are worked by hand from it.
describe('tiles that are lifted to reach others', () => {
  it('are the one above and the one at the lock for a single tile, two above where joints are staggered', () => {
    expect(liftedFor([{ course: 3, place: 5 }], straight)).toBe(2)
    expect(liftedFor([{ course: 3, place: 5 }], staggered)).toBe(3)
  })

  it('are counted once where repairs adjoin', () => {
    const row = [4, 5, 6].map((place) => ({ course: 2, place }))
    // Three above, and one beside the end of the row.
    expect(liftedFor(row, straight)).toBe(4)
    const column = [2, 3, 4].map((course) => ({ course, place: 5 }))
    // One above the top, and one beside each.
    expect(liftedFor(column, straight)).toBe(4)
    // Three in a staggered course have four over them, and one beside.
    expect(liftedFor(row, staggered)).toBe(5)
  })

  it('are as few as no way of laying out a few tiles undercuts', () => {
    for (const laying of [straight, staggered, { ...straight, lockFrom: 'right' } as const]) {
      for (const count of [1, 2, 3, 4, 5]) {
        expect(fewestLifted(count, laying)).toBe(Math.min(...everyWay(count).map((cells) => liftedFor(cells, laying))))
      }
    }
  })

  it('are between the fewest and the most, wherever they lie', () => {
    const cell = fc.record({ course: fc.integer({ min: 0, max: 9 }), place: fc.integer({ min: 0, max: 9 }) })
    const cells = fc.uniqueArray(cell, {
      minLength: 1,
      maxLength: 40,
      selector: ({ course, place }) => course * 10 + place,
    })
    fc.assert(
      fc.property(cells, fc.constantFrom(straight, staggered), (drawn, laying) => {
        const lifted = liftedFor(drawn, laying)
        expect(lifted).toBeLessThanOrEqual(mostLifted(drawn.length, laying))
        expect(lifted).toBeGreaterThanOrEqual(fewestLifted(drawn.length, laying))
      }),
    )
  })
})

/** Every way to choose so many tiles of four courses of four. */
function everyWay(count: number): readonly (readonly Cell[])[] {
  const all = Array.from({ length: 16 }, (_, at) => ({ course: Math.floor(at / 4), place: at % 4 }))
  const choose = (from: number, left: number): readonly (readonly Cell[])[] =>
    left === 0
      ? [[]]
      : all.slice(from).flatMap((cell, i) => choose(from + i + 1, left - 1).map((rest) => [cell, ...rest]))
  return choose(0, count)
}

describe('the course grid of a facet', () => {
  const corner = (xFt: number, yFt: number) => ({ xFt, yFt })
  // Faces south on a sheet with north up; 12:12, so that 10 ft of plan are 14.14 ft of slope.
  const facet = aFacet({
    downslopeAzimuthDeg: 180,
    pitchRise: 12,
    outline: [corner(0, 0), corner(30, 0), corner(30, 10), corner(0, 10)],
  })
  const against = { piece: { exposureIn: 13, coverWidthIn: 12 }, upAzimuthDeg: 0 }

  it('begins at the eave on the left', () => {
    expect(cellAt(corner(0.5, 0.1), facet, against)).toEqual({ course: 0, place: 0 })
  })

  it('goes up by the exposure along the slope and to the right by the cover width', () => {
    // 5 ft of plan are 84.85 in of slope: in the seventh course of 13 in. 12.3 ft across: the 13th tile of 12 in.
    expect(cellAt(corner(12.3, 5), facet, against)).toEqual({ course: 6, place: 12 })
  })

  it('is seen from the eave whatever way the slope faces', () => {
    const north = { ...facet, downslopeAzimuthDeg: 0 }
    expect(cellAt(corner(29.5, 9.9), north, against)).toEqual({ course: 0, place: 0 })
  })
})
