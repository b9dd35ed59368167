import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '../job/places.ts'
import { checkOutline, outlineFaultSentence, type OutlineFault } from './outline.ts'

const outlineOf = (...corners: readonly (readonly [number, number])[]): PlanPoint[] =>
  corners.map(([xFt, yFt]) => ({ xFt, yFt }))
const turned = (outline: readonly PlanPoint[], deg: number): PlanPoint[] => {
  const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
  return outline.map(({ xFt, yFt }) => ({ xFt: xFt * cos - yFt * sin, yFt: xFt * sin + yFt * cos }))
}
const startingAt = <T>(list: readonly T[], n: number): T[] => [
  ...list.slice(n % list.length),
  ...list.slice(0, n % list.length),
]
const kindsOf = (faults: readonly OutlineFault[]) => faults.map((fault) => fault.kind).toSorted()

const square = outlineOf([0, 0], [10, 0], [10, 10], [0, 10])
const ell = outlineOf([0, 0], [40, 0], [40, 24], [16, 24], [16, 44], [0, 44])
const bowTie = outlineOf([0, 0], [10, 10], [10, 0], [0, 10])
const spike = outlineOf([0, 0], [10, 0], [10, 10], [10, 30], [10, 10], [0, 10])
const twice = outlineOf([0, 0], [10, 0], [10, 0.005], [10, 10], [0, 10])
const onOneLine = outlineOf([0, 0], [5, 5], [10, 10])
/** Two triangles that share one corner: the outline passes through it twice. */
const touching = outlineOf([0, 0], [10, 0], [5, 5], [10, 10], [0, 10], [5, 5])
/** A corner that lies on the far side without crossing it. */
const leaning = outlineOf([0, 0], [20, 0], [20, 10], [10, 0], [0, 10])

describe('an outline that can be a facet', () => {
  it.each([
    ['a square', square],
    ['an L', ell],
    ['a square with a corner in the middle of a side', outlineOf([0, 0], [5, 0], [10, 0], [10, 10], [0, 10])],
    ['a triangle', outlineOf([0, 0], [20, 0], [10, 10])],
  ])('%s has no fault, at any angle on the sheet', (_what, outline) => {
    for (const deg of [0, 17, 45, 90, 133.7]) expect(checkOutline(turned(outline, deg))).toEqual([])
  })
})

describe('faults of an outline', () => {
  it('are too few corners', () => {
    expect(checkOutline([])).toEqual([{ kind: 'too-few-corners' }])
    expect(checkOutline(outlineOf([0, 0], [1, 1]))).toEqual([{ kind: 'too-few-corners' }])
  })

  it('are sides that cross: the bow-tie names both', () => {
    expect(checkOutline(bowTie)).toEqual([{ kind: 'crossing', side: 1, other: 3 }])
  })

  it('are a spike that folds back on itself', () => {
    expect(checkOutline(spike)).toContainEqual({ kind: 'crossing', side: 3, other: 4 })
  })

  it('are two corners at one place, also the last and the first', () => {
    expect(checkOutline(twice)).toEqual([{ kind: 'same-corner', corner: 2, other: 3 }])
    expect(checkOutline(outlineOf([0, 0], [10, 0], [10, 10], [0, 0.001]))).toEqual([
      { kind: 'same-corner', corner: 4, other: 1 },
    ])
  })

  it('are corners that all lie on one line: there is no area, and nothing else is said', () => {
    expect(checkOutline(onOneLine)).toEqual([{ kind: 'no-area' }])
    expect(checkOutline(outlineOf([0, 0], [10, 0], [4, 0], [7, 0]))).toEqual([{ kind: 'no-area' }])
  })

  it('are an area too small to be a facet', () => {
    expect(checkOutline(outlineOf([0, 0], [0.3, 0], [0.3, 0.3], [0, 0.3]))).toEqual([{ kind: 'no-area' }])
  })

  it('are a corner that touches another corner or a side', () => {
    expect(kindsOf(checkOutline(touching))).toContain('crossing')
    expect(kindsOf(checkOutline(leaning))).toContain('crossing')
  })

  it('are found at any angle on the sheet, where rounding moves a touching corner by a hair', () => {
    for (let deg = 0; deg < 360; deg += 1) {
      for (const outline of [bowTie, spike, touching, leaning])
        expect(kindsOf(checkOutline(turned(outline, deg))), `turned by ${deg} degrees`).toContain('crossing')
      expect(checkOutline(turned(onOneLine, deg))).toEqual([{ kind: 'no-area' }])
    }
  })

  it('are the same faults whichever corner comes first and whichever way round the list runs', () => {
    for (const outline of [square, ell, bowTie, spike, twice, onOneLine, touching, leaning]) {
      const expected = kindsOf(checkOutline(outline))
      for (let n = 0; n < outline.length; n++) {
        expect(kindsOf(checkOutline(startingAt(outline, n)))).toEqual(expected)
        expect(kindsOf(checkOutline(startingAt(outline.toReversed(), n)))).toEqual(expected)
      }
    }
  })

  it('are said with the place and what to do', () => {
    const sentences = [bowTie, twice, onOneLine, []].flatMap((outline) =>
      checkOutline(outline).map(outlineFaultSentence),
    )
    expect(sentences).toEqual([
      'Side 1 (from corner 1) crosses side 3 (from corner 3). Move one of their corners.',
      'Corners 2 and 3 are at the same place. Remove one of them.',
      'The corners lie on one line, so the outline has no area. Move a corner off the line.',
      'A facet needs at least three corners. Add corners before closing it.',
    ])
  })
})

/** Corners at rising angles round a middle: such an outline never crosses itself, whatever its spokes. */
const star = fc
  .tuple(
    fc.array(fc.tuple(fc.integer({ min: 1, max: 100 }), fc.integer({ min: 20, max: 1000 })), {
      minLength: 3,
      maxLength: 24,
    }),
    fc.integer({ min: 0, max: 359 }),
  )
  .map(([spokes, from]) => {
    const whole = spokes.reduce((sum, [step]) => sum + step, 0)
    let passed = 0
    return spokes.map(([step, tenths]): PlanPoint => {
      passed += step
      const angle = ((from + (360 * passed) / whole) * Math.PI) / 180
      return { xFt: (tenths / 10) * Math.cos(angle), yFt: (tenths / 10) * Math.sin(angle) }
    })
  })
  // Half a turn between two spokes would leave the middle outside.
  .filter((outline) => outline.every((p, i) => turnsLeft(p, outline[(i + 1) % outline.length] ?? p)))

function turnsLeft(p: PlanPoint, q: PlanPoint): boolean {
  return p.xFt * q.yFt - p.yFt * q.xFt > 0.05
}

describe('outlines at random', () => {
  it('have no fault when they run round a middle, from any corner and either way', () => {
    fc.assert(
      fc.property(star, fc.nat(30), (outline, n) => {
        expect(checkOutline(outline)).toEqual([])
        expect(checkOutline(startingAt(outline, n).toReversed())).toEqual([])
      }),
      { numRuns: 4000 },
    )
  })

  it('have a crossing when two corners of a four-cornered one on a circle change places', () => {
    const step = fc.integer({ min: 10, max: 100 })
    fc.assert(
      fc.property(fc.tuple(step, step, step, step), (steps) => {
        const whole = steps.reduce((sum, one) => sum + one, 0)
        const [a, b, c, d] = [0, 1, 2, 3].map((i): PlanPoint => {
          const angle = (steps.slice(0, i).reduce((sum, one) => sum + one, 0) / whole) * 2 * Math.PI
          return { xFt: 30 * Math.cos(angle), yFt: 30 * Math.sin(angle) }
        })
        const inOrder = [a, b, c, d].filter((p) => p !== undefined)
        const changed = [a, c, b, d].filter((p) => p !== undefined)
        expect(checkOutline(inOrder)).toEqual([])
        expect(kindsOf(checkOutline(changed))).toEqual(['crossing'])
      }),
    )
  })
})
