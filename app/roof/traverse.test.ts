import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { lengthFt, signedAreaSqFt } from './polygon.ts'
import { closeTraverse, closingLabel, spreadClosingError, type Traverse, type TraverseSide } from './traverse.ts'

const turn = (length: number, turnDeg: number): TraverseSide => ({ kind: 'turn', lengthFt: length, turnDeg })
const bearing = (length: number, azimuthDeg: number): TraverseSide => ({
  kind: 'azimuth',
  lengthFt: length,
  azimuthDeg,
})

function laidOut(sides: readonly TraverseSide[], upAzimuthDeg = 0): Traverse {
  const traverse = closeTraverse(sides, upAzimuthDeg)
  if (traverse.kind === 'fault') throw new Error(traverse.sentence)
  return traverse
}

/** Up-the-sheet and rightward part of each side of a closed outline. */
function partsOf(corners: readonly { readonly xFt: number; readonly yFt: number }[]) {
  return corners.map((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? from
    return { north: to.yFt - from.yFt, east: to.xFt - from.xFt }
  })
}

describe('sides and turns', () => {
  it('an L typed with right and left turns has the corners it was drawn from, and closes', () => {
    const traverse = laidOut([turn(40, 90), turn(24, -90), turn(24, -90), turn(20, 90), turn(16, -90), turn(44, -90)])
    const corners = [0, 0, 40, 0, 40, 24, 16, 24, 16, 44, 0, 44]
    traverse.corners.forEach(({ xFt, yFt }, i) => {
      expect(xFt).toBeCloseTo(corners[2 * i] ?? NaN, 9)
      expect(yFt).toBeCloseTo(corners[2 * i + 1] ?? NaN, 9)
    })
    expect(traverse.perimeterFt).toBe(168)
    expect(closingLabel(traverse.closing)).toBe('closes')
    expect(signedAreaSqFt(traverse.corners)).toBeCloseTo(1280, 9)
  })

  it('a side that is 6 in too long misses the start by 6 in, in its own direction: 1 in 241', () => {
    const { closing } = laidOut([turn(40, 90), turn(20, -90), turn(40, -90), turn(20.5, -90)])
    expect(closing.lengthFt).toBeCloseTo(0.5, 9)
    expect(closing.azimuthDeg).toBeCloseTo(180, 6)
    expect(closingLabel(closing)).toBe('1 in 241')
  })

  it('turns and azimuths can be mixed, on a sheet that is turned', () => {
    const square = laidOut([bearing(10, 115), turn(10, -90), turn(10, -90), bearing(10, 205)], 25)
    expect(square.closing.oneIn).toBeNull()
    expect(square.corners[1]?.xFt).toBeCloseTo(10, 9)
    expect(square.corners[1]?.yFt).toBeCloseTo(0, 9)
    const short = laidOut([bearing(10, 115), turn(10, -90), turn(10, -90), bearing(9, 205)], 25)
    expect(short.closing.azimuthDeg).toBeCloseTo(25, 6)
  })
})

describe('compass rule', () => {
  // Teaching slides "Compass rule: adjustment of bearing and distance of a closed traverse" (document-sharing site,
  // no. 493615208): closing error 0.285 in latitude and -0.311 in departure over 267.5; the adjusted figures are theirs.
  const slides = laidOut([bearing(80.4, 76), bearing(46.3, 144), bearing(72.8, 241), bearing(68, 322)])

  it('agrees with a published example of four sides to its rounding', () => {
    expect(slides.perimeterFt).toBeCloseTo(267.5, 9)
    expect(slides.end.yFt).toBeCloseTo(0.285, 2)
    expect(slides.end.xFt).toBeCloseTo(-0.311, 3)
    const parts = partsOf(spreadClosingError(slides))
    const published = [
      { north: 19.3653, east: 78.1055 },
      { north: -37.5063, east: 27.2678 },
      { north: -35.3716, east: -63.5874 },
    ]
    published.forEach(({ north, east }, i) => {
      expect(Math.abs((parts[i]?.north ?? NaN) - north)).toBeLessThan(0.001)
      expect(Math.abs((parts[i]?.east ?? NaN) - east)).toBeLessThan(0.001)
    })
  })

  it('agrees with the five-sided example of a surveying textbook (from memory: Ghilani and Wolf, Elementary Surveying, believed)', () => {
    const dms = (deg: number, min: number, sec: number) => deg + min / 60 + sec / 3600
    const traverse = laidOut([
      bearing(647.25, dms(126, 55, 17)),
      bearing(203.03, dms(178, 18, 58)),
      bearing(720.35, dms(15, 31, 54)),
      bearing(610.24, dms(284, 35, 20)),
      bearing(285.13, dms(206, 9, 41)),
    ])
    expect(traverse.perimeterFt).toBeCloseTo(2466, 9)
    expect(traverse.closing.lengthFt).toBeCloseTo(0.08, 2)
    const balanced = [
      { north: -388.835, east: 517.444 },
      { north: -202.948, east: 5.964 },
      { north: 694.022, east: 192.881 },
      { north: 153.689, east: -590.571 },
      { north: -255.928, east: -125.718 },
    ]
    const parts = partsOf(spreadClosingError(traverse))
    balanced.forEach(({ north, east }, i) => {
      expect(Math.abs((parts[i]?.north ?? NaN) - north)).toBeLessThan(0.002)
      expect(Math.abs((parts[i]?.east ?? NaN) - east)).toBeLessThan(0.002)
    })
  })

  it('takes from every side, the last one included, its share of the error and no more', () => {
    const side = fc.record({
      kind: fc.constant('turn' as const),
      lengthFt: fc.integer({ min: 10, max: 1000 }).map((n) => n / 10),
      turnDeg: fc.integer({ min: -170, max: 170 }),
    })
    fc.assert(
      fc.property(fc.array(side, { minLength: 3, maxLength: 12 }), (sides) => {
        const { corners, end, perimeterFt } = laidOut(sides)
        const adjusted = partsOf(spreadClosingError(laidOut(sides)))
        corners.forEach((from, i) => {
          const to = corners[i + 1] ?? end
          const share = (sides[i]?.lengthFt ?? NaN) / perimeterFt
          expect(adjusted[i]?.east).toBeCloseTo(to.xFt - from.xFt - share * end.xFt, 6)
          expect(adjusted[i]?.north).toBeCloseTo(to.yFt - from.yFt - share * end.yFt, 6)
        })
      }),
    )
  })

  it('leaves sides that close where they are', () => {
    const square = laidOut([turn(10, 90), turn(10, -90), turn(10, -90), turn(10, -90)])
    spreadClosingError(square).forEach((corner, i) => {
      expect(lengthFt(corner, square.corners[i] ?? { xFt: NaN, yFt: NaN })).toBeLessThan(1e-9)
    })
  })
})

describe('sides that cannot be laid out', () => {
  it.each([
    {
      sides: [turn(10, 0), turn(10, 90)],
      sentence: 'An outline needs at least three sides. Add the sides that are missing.',
    },
    {
      sides: [turn(10, 0), turn(0, 90), turn(10, 90)],
      sentence: 'Side 2 has no length. Enter a length above zero or take the side out.',
    },
    {
      sides: [turn(10, 0), turn(10, 90), bearing(10, NaN)],
      sentence: 'Side 3 has no direction. Enter its turn or its azimuth in degrees.',
    },
  ])('$sentence', ({ sides, sentence }) => {
    expect(closeTraverse(sides, 0)).toEqual({ kind: 'fault', sentence })
  })
})
