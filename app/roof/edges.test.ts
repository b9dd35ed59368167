import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  at,
  DOWN,
  ellHip,
  facetsOf,
  gable,
  gableWing,
  hip,
  LEFT,
  RIGHT,
  UP,
  type Face,
} from '../../tests/builders/whole-roofs.ts'
import { edgeTotals, roofEdges } from './edges.ts'
import { roofTotals } from './facet-geometry.ts'
import type { EdgeKind } from './plan-drawing.ts'
import { lengthFt, sidesOf } from './polygon.ts'
import { hipFactorPerRunFoot, slopeFactor } from './slope.ts'

/** Lengths agree with the worked values to a thousandth of a foot. */
const DIGITS = 3

function totalsOf(faces: readonly Face[], upAzimuthDeg = 0): Readonly<Record<EdgeKind, number>> {
  return edgeTotals(roofEdges(facetsOf(faces, upAzimuthDeg), upAzimuthDeg))
}

/** Kinds that the roof has, with their lengths to a thousandth. */
function lengthsOf(faces: readonly Face[], upAzimuthDeg = 0): Record<string, number> {
  const found = Object.entries(totalsOf(faces, upAzimuthDeg)).filter(([, length]) => length > 0)
  return Object.fromEntries(found.map(([kind, length]) => [kind, Number(length.toFixed(DIGITS))]))
}

describe('edges of whole roofs (geometry; worked values to four decimals)', () => {
  it('gable 40 by 30, 6:12: ridge 40, eaves 80, four rakes of 16.7705', () => {
    const edges = roofEdges(facetsOf(gable(40, 30, 6)), 0)
    expect(lengthsOf(gable(40, 30, 6))).toEqual({ ridge: 40, eave: 80, rake: 67.082 })
    const rakes = edges.filter((edge) => edge.kind === 'rake')
    expect(rakes).toHaveLength(4)
    for (const rake of rakes) expect(rake.trueLengthFt).toBeCloseTo(16.7705, DIGITS)
  })

  it('hip 60 by 40, 5:12: ridge 20, four hips of 29.4863, 117.9454 together, eaves 200', () => {
    const edges = roofEdges(facetsOf(hip(60, 40, 5)), 0)
    const hips = edges.filter((edge) => edge.kind === 'hip')
    expect(hips).toHaveLength(4)
    for (const one of hips) expect(one.trueLengthFt).toBeCloseTo(29.4863, DIGITS)
    expect(totalsOf(hip(60, 40, 5)).hip).toBeCloseTo(117.9454, DIGITS)
    expect(lengthsOf(hip(60, 40, 5))).toEqual({ ridge: 20, hip: 117.945, eave: 200 })
  })

  it('pyramid 32 by 32, 4:12: four hips of 23.2475, no ridge', () => {
    const pyramid = hip(32, 32, 4).map((face) => ({
      ...face,
      corners: [...new Map(face.corners.map((c) => [c.join(), c])).values()],
    }))
    expect(roofEdges(facetsOf(pyramid), 0).filter((edge) => edge.kind === 'hip')).toHaveLength(4)
    expect(totalsOf(pyramid).hip).toBeCloseTo(92.9899, DIGITS)
    expect(totalsOf(pyramid).ridge).toBe(0)
  })

  it('L-shaped hip, 5:12: one valley of 8 ft run, hips of 56 ft run, ridges 20 and 16, eaves 168', () => {
    const totals = totalsOf(ellHip(5))
    // 1.47432 and 1.08333 are the handbook factors for 5:12, per foot of run and per foot of plan.
    expect(totals.valley).toBeCloseTo(8 * 1.47432, DIGITS)
    expect(totals.hip).toBeCloseTo(56 * 1.47432, DIGITS)
    expect(totals.ridge).toBeCloseTo(36, DIGITS)
    expect(totals.eave).toBeCloseTo(168, DIGITS)
    expect(Object.values(lengthsOf(ellHip(5)))).toHaveLength(4)
    expect(roofTotals(facetsOf(ellHip(5))).areaSqFt).toBeCloseTo(1386.6667, DIGITS)
  })

  it('gable wing 24 wide into a main roof of the same pitch, 6:12: each valley 18.0000', () => {
    const valleys = roofEdges(facetsOf(gableWing(6)), 0).filter((edge) => edge.kind === 'valley')
    expect(valleys.map((edge) => Number(edge.trueLengthFt.toFixed(4)))).toEqual([18, 18])
    const totals = totalsOf(gableWing(6))
    expect(totals.ridge).toBeCloseTo(60 + 22, DIGITS)
    expect(totals.eave).toBeCloseTo(60 + 36 + 20, DIGITS)
    expect(totals.rake).toBeCloseTo((4 * 30 + 2 * 12) * 1.11803, 2)
  })

  it('unequal hip at a square corner, 4:12 and 8:12, rise 6: offsets 18 and 9, plan 20.1246, true 21.0000', () => {
    const faces: Face[] = [
      { corners: at('0,0 50,0 50,18 9,18'), pitch: 4, down: DOWN },
      { corners: at('0,0 9,18 9,40 0,40'), pitch: 8, down: LEFT },
    ]
    const hips = roofEdges(facetsOf(faces), 0).filter((edge) => edge.kind === 'hip')
    expect(hips).toHaveLength(1)
    expect(hips[0]?.planLengthFt).toBeCloseTo(20.1246, DIGITS)
    expect(hips[0]?.trueLengthFt).toBeCloseTo(21, DIGITS)
  })

  it('eave corner of 135 degrees, 6:12, 10 ft in: plan 10.8239, true 11.9230', () => {
    const end: readonly [number, number] = [10 / Math.tan((67.5 * Math.PI) / 180), 10]
    const along = 40 * Math.SQRT1_2
    const faces: Face[] = [
      { corners: at(`0,0 50,0 50,10 ${end.join()}`), pitch: 6, down: DOWN },
      { corners: at(`0,0 ${end.join()} ${end[0] - along},${end[1] + along} ${-along},${along}`), pitch: 6, down: 225 },
    ]
    const hips = roofEdges(facetsOf(faces), 0).filter((edge) => edge.kind === 'hip')
    expect(hips[0]?.planLengthFt).toBeCloseTo(10.8239, DIGITS)
    expect(hips[0]?.trueLengthFt).toBeCloseTo(11.923, DIGITS)
  })

  it('any hip roof: ridge L - W, hips 4 (W/2) H, eaves 2 (L + W)', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 60 }),
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 1, max: 18 }),
        (w, more, pitch) => {
          const totals = totalsOf(hip(w + more, w, pitch))
          expect(totals.ridge).toBeCloseTo(more, 6)
          expect(totals.hip).toBeCloseTo(4 * (w / 2) * hipFactorPerRunFoot(pitch), 6)
          expect(totals.eave).toBeCloseTo(2 * (2 * w + more), 6)
        },
      ),
    )
  })
})

describe('edges do not depend on', () => {
  it.each([0, 37, 90, 180, 271.5])('the up direction of the sheet: %f degrees', (upAzimuthDeg) => {
    for (const faces of [gable(40, 30, 6), hip(60, 40, 5), ellHip(5), gableWing(6)])
      expect(lengthsOf(faces, upAzimuthDeg)).toEqual(lengthsOf(faces))
  })

  it('the angle at which the house stands on the sheet', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 3599 }), (tenths) => {
        const deg = tenths / 10
        const [cos, sin] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)]
        for (const faces of [ellHip(5), gableWing(6)]) {
          const turned = faces.map((face): Face => ({
            ...face,
            // Turned clockwise, as azimuths count.
            corners: face.corners.map(([x, y]) => [x * cos + y * sin, y * cos - x * sin]),
            down: (face.down + deg) % 360,
          }))
          expect(lengthsOf(turned)).toEqual(lengthsOf(faces))
        }
      }),
    )
  })

  it('which way round outlines are drawn, nor on the order of facets and corners', () => {
    for (const faces of [gable(40, 30, 6), hip(60, 40, 5), ellHip(5), gableWing(6)]) {
      const expected = lengthsOf(faces)
      expect(lengthsOf(faces.map((face) => ({ ...face, corners: face.corners.toReversed() })))).toEqual(expected)
      expect(
        lengthsOf(faces.map((face, i) => (i % 2 === 0 ? { ...face, corners: face.corners.toReversed() } : face))),
      ).toEqual(expected)
      expect(lengthsOf(faces.toReversed())).toEqual(expected)
      expect(
        lengthsOf(faces.map((face) => ({ ...face, corners: [...face.corners.slice(1), ...face.corners.slice(0, 1)] }))),
      ).toEqual(expected)
    }
  })
})

describe('sides that lie on one line', () => {
  const low = (pitch: number): Face => ({ corners: at('0,0 40,0 40,15 0,15'), pitch, down: DOWN })

  it('are matched where one long side meets two facets', () => {
    const faces: Face[] = [
      low(6),
      { corners: at('0,15 25,15 25,30 0,30'), pitch: 6, down: UP },
      { corners: at('25,15 40,15 40,30 25,30'), pitch: 6, down: UP },
    ]
    const ridges = roofEdges(facetsOf(faces), 0).filter((edge) => edge.kind === 'ridge')
    expect(ridges.map((edge) => edge.planLengthFt)).toEqual([25, 15])
    expect(ridges.map((edge) => edge.facetIds)).toEqual([
      ['facet-0', 'facet-1'],
      ['facet-0', 'facet-2'],
    ])
    expect(lengthsOf(faces)['eave']).toBe(80)
  })

  it('are matched where they overlap in part; the rest is the outside of the roof', () => {
    const faces: Face[] = [low(6), { corners: at('10,15 60,15 60,30 10,30'), pitch: 6, down: UP }]
    expect(lengthsOf(faces)).toMatchObject({ ridge: 30, 'top-edge': 30 })
  })

  it('are matched although drawn a quarter of an inch apart', () => {
    const faces: Face[] = [low(6), { corners: at('0,15.02 40,15.02 40,30 0,30'), pitch: 6, down: UP }]
    expect(lengthsOf(faces)['ridge']).toBe(40)
    expect(lengthsOf(faces)['top-edge']).toBeUndefined()
  })

  it('are matched alike from both sides where a short side is drawn a little askew', () => {
    const faces: Face[] = [
      low(6),
      { corners: at('0,15 37,15 37,30 0,30'), pitch: 6, down: UP },
      { corners: at('37,15 40,15.03 40,30 37,30'), pitch: 6, down: UP },
    ]
    for (const order of [faces, faces.toReversed()]) {
      expect(lengthsOf(order)['ridge']).toBeCloseTo(40, 2)
      expect(lengthsOf(order)['top-edge']).toBeUndefined()
    }
  })

  it('are two edges, not one, where one roof lies over the other: both facets are on the same side of the line', () => {
    const porch: Face = { corners: at('10,0 20,0 20,8 10,8'), pitch: 3, down: DOWN }
    expect(lengthsOf([low(6), porch])).toMatchObject({ eave: 50 })
    expect(lengthsOf([low(6), porch])['valley']).toBeUndefined()
  })

  it('are used up whole: every foot of every outline belongs to exactly one edge on its side', () => {
    for (const faces of [gable(40, 30, 6), hip(60, 40, 5), ellHip(5), gableWing(6)]) {
      const facets = facetsOf(faces)
      const outlines = facets.flatMap((facet) => sidesOf(facet.outline).map(({ from, to }) => lengthFt(from, to)))
      const edges = roofEdges(facets, 0).map((edge) => edge.planLengthFt * edge.facetIds.length)
      expect(sum(edges)).toBeCloseTo(sum(outlines), 6)
    }
  })
})

describe('edges that are neither ridge, hip, valley, eave nor rake', () => {
  it('are a change of pitch where one slope drains onto a flatter one', () => {
    const faces: Face[] = [
      { corners: at('0,0 40,0 40,8 0,8'), pitch: 2, down: DOWN },
      { corners: at('0,8 40,8 40,20 0,20'), pitch: 6, down: DOWN },
    ]
    expect(lengthsOf(faces)).toMatchObject({ 'pitch-break': 40, eave: 40, 'top-edge': 40 })
  })

  it('are a step where a slope runs past another; its length follows the steeper one', () => {
    const faces: Face[] = [
      { corners: at('0,0 20,0 20,12 0,12'), pitch: 6, down: DOWN },
      { corners: at('20,0 40,0 40,12 20,12'), pitch: 3, down: DOWN },
    ]
    expect(totalsOf(faces).step).toBeCloseTo(12 * slopeFactor(6), 6)
  })

  it('do not turn on the direction that a flat facet was given, since its water runs nowhere', () => {
    for (const down of [UP, RIGHT, DOWN, LEFT, 45]) {
      const flatBelow: Face[] = [
        { corners: at('0,0 40,0 40,8 0,8'), pitch: 0, down },
        { corners: at('0,8 40,8 40,20 0,20'), pitch: 6, down: DOWN },
      ]
      expect(lengthsOf(flatBelow)).toMatchObject({ 'pitch-break': 40, eave: 56 })
      const flatBeside: Face[] = [
        { corners: at('0,0 20,0 20,12 0,12'), pitch: 0, down },
        { corners: at('20,0 40,0 40,12 20,12'), pitch: 6, down: DOWN },
      ]
      expect(totalsOf(flatBeside).step).toBeCloseTo(12 * slopeFactor(6), 6)
      const bothFlat = flatBeside.map((face) => ({ ...face, pitch: 0 }))
      expect(lengthsOf(bothFlat)).toEqual({ step: 12, eave: 104 })
    }
  })

  it('are none on an empty plan', () => {
    expect(roofEdges([], 0)).toEqual([])
  })
})

function sum(numbers: readonly number[]): number {
  return numbers.reduce((total, n) => total + n, 0)
}
