import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { PlanPoint } from '../../job/places.ts'
import type { EdgeKind } from '../plan-drawing.ts'
import { signedAreaSqFt } from '../polygon.ts'
import { slopeFactor } from '../slope.ts'
import { buildRoof } from './build-roof.ts'
import type { BuiltRoof } from './built-roof.ts'
import type { OutlineEdge, OutlineRing, RoofOutline } from './roof-outline.ts'

const p = (xFt: number, yFt: number): PlanPoint => ({ xFt, yFt })
const ring = (corners: readonly PlanPoint[], edge: (at: number) => OutlineEdge): OutlineRing => ({
  corners,
  edges: corners.map((_, at) => edge(at)),
})
const eaves = (pitchRise: number) => (): OutlineEdge => ({ kind: 'eave', pitchRise })
const roofOver = (outer: OutlineRing, courtyards: readonly OutlineRing[] = []): RoofOutline => ({ outer, courtyards })

function built(outline: RoofOutline): BuiltRoof {
  const result = buildRoof(outline)
  return result.ok ? result.roof : expect.fail(JSON.stringify(result.faults))
}

const lengths = (roof: BuiltRoof, kind: EdgeKind) =>
  roof.edges.filter((edge) => edge.kind === kind).map((edge) => edge.trueLengthFt)
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0)
const slopedArea = (roof: BuiltRoof) => sum(roof.facets.map((f) => f.planAreaSqFt * slopeFactor(f.pitchRise)))

const rectangle = (x: number, y: number) => [p(0, 0), p(x, 0), p(x, y), p(0, y)]

// Worked roofs G1 to G7 and G11 are from common roof geometry (slope, hip and valley factors of construction handbooks).
describe('worked roofs', () => {
  it('gable 40 x 30 at 6:12: ridge 40, four rakes of 16.7705, 1341.6408 square feet', () => {
    const roof = built(
      roofOver(ring(rectangle(40, 30), (at) => (at % 2 === 0 ? { kind: 'eave', pitchRise: 6 } : { kind: 'gable' }))),
    )
    expect(sum(lengths(roof, 'ridge'))).toBeCloseTo(40, 6)
    expect(lengths(roof, 'rake')).toHaveLength(4)
    for (const rake of lengths(roof, 'rake')) expect(rake).toBeCloseTo(16.7705, 4)
    expect(slopedArea(roof)).toBeCloseTo(1341.6408, 3)
  })

  it('hip 60 x 40 at 5:12: ridge 20, hips of 29.4863, eave 200, ridge 8.3333 above the eave, 2600 square feet', () => {
    const roof = built(roofOver(ring(rectangle(60, 40), eaves(5))))
    expect(sum(lengths(roof, 'ridge'))).toBeCloseTo(20, 6)
    expect(lengths(roof, 'hip')).toHaveLength(4)
    for (const hip of lengths(roof, 'hip')) expect(hip).toBeCloseTo(29.4863, 4)
    expect(sum(lengths(roof, 'eave'))).toBeCloseTo(200, 6)
    expect(Math.max(...roof.vertices.map((v) => v.heightFt))).toBeCloseTo(8.3333, 4)
    expect(slopedArea(roof)).toBeCloseTo(2600, 6)
    expect(roof.facets.map((f) => Math.round(f.planAreaSqFt)).toSorted((a, b) => a - b)).toEqual([400, 400, 800, 800])
  })

  it('pyramid 32 x 32 at 4:12: four hips of 23.2475 meet in one point, no ridge', () => {
    const roof = built(roofOver(ring(rectangle(32, 32), eaves(4))))
    expect(lengths(roof, 'ridge')).toEqual([])
    for (const hip of lengths(roof, 'hip')) expect(hip).toBeCloseTo(23.2475, 4)
    expect(slopedArea(roof)).toBeCloseTo(1079.3908, 3)
  })

  it('gable wing 24 wide at 6:12 into a main roof of the same pitch: valleys of 18 feet', () => {
    const corners = [p(0, 0), p(20, 0), p(20, -10), p(44, -10), p(44, 0), p(70, 0), p(70, 40), p(0, 40)]
    const roof = built(roofOver(ring(corners, (at) => (at === 2 ? { kind: 'gable' } : { kind: 'eave', pitchRise: 6 }))))
    expect(lengths(roof, 'valley')).toHaveLength(2)
    for (const valley of lengths(roof, 'valley')) expect(valley).toBeCloseTo(18, 6)
  })

  it('hip between 4:12 and 8:12: 21 feet long where it has risen 6', () => {
    const roof = built(roofOver(ring(rectangle(200, 100), (at) => ({ kind: 'eave', pitchRise: at % 2 === 0 ? 4 : 8 }))))
    for (const hip of roof.edges.filter((edge) => edge.kind === 'hip')) {
      const [from, to] = [roof.vertices[hip.from], roof.vertices[hip.to]]
      if (from === undefined || to === undefined) expect.fail('a hip without ends')
      expect((hip.trueLengthFt / Math.abs(to.heightFt - from.heightFt)) * 6).toBeCloseTo(21, 6)
    }
  })

  it('L of 1280 square feet in plan: 1386.6667 at 5:12, one valley', () => {
    const roof = built(roofOver(ring([p(0, 0), p(40, 0), p(40, 24), p(16, 24), p(16, 44), p(0, 44)], eaves(5))))
    expect(sum(roof.facets.map((f) => f.planAreaSqFt))).toBeCloseTo(1280, 6)
    expect(slopedArea(roof)).toBeCloseTo(1386.6667, 3)
    expect(lengths(roof, 'valley')).toHaveLength(1)
  })

  it('a courtyard in the middle drains to its own eaves', () => {
    const inside = [p(20, 20), p(40, 20), p(40, 40), p(20, 40)]
    const roof = built(roofOver(ring(rectangle(60, 60), eaves(6)), [ring(inside, eaves(6))]))
    expect(roof.facets).toHaveLength(8)
    expect(sum(roof.facets.map((f) => f.planAreaSqFt))).toBeCloseTo(3200, 6)
    expect(lengths(roof, 'valley')).toHaveLength(4)
  })
})

/** A house of boxes set against each other on a grid: whole feet, so that many events fall together. */
const boxHouse = fc
  .array(fc.record({ at: fc.integer({ min: 2, max: 8 }), depth: fc.integer({ min: 1, max: 9 }) }), {
    minLength: 1,
    maxLength: 10,
  })
  .map((steps) => {
    const top: PlanPoint[] = []
    let x = 0
    for (const { at, depth } of steps) {
      top.push(p(x, 12 + depth * 2), p(x + at * 2, 12 + depth * 2))
      x += at * 2
    }
    return withoutRepeats([p(0, 0), p(x, 0), ...top.toReversed()])
  })

/** A simple polygon round a point: a corner at every angle, near or far. */
const starHouse = fc.array(fc.double({ min: 12, max: 60, noNaN: true }), { minLength: 5, maxLength: 24 }).map((radii) =>
  radii.map((radius, at) => {
    const angle = (at / radii.length) * 2 * Math.PI
    return p(radius * Math.cos(angle), radius * Math.sin(angle))
  }),
)

function withoutRepeats(corners: readonly PlanPoint[]): readonly PlanPoint[] {
  return corners.filter((corner, at) => {
    const before = corners.at(at - 1)
    return before === undefined || before.xFt !== corner.xFt || before.yFt !== corner.yFt
  })
}

describe('any simple outline', () => {
  it.each([
    ['of boxes', boxHouse],
    ['round a point', starHouse],
  ])('%s has facets that tile it, each over its own eave, equal in height where they meet', (_name, house) => {
    fc.assert(
      fc.property(house, fc.integer({ min: 2, max: 14 }), (corners, pitchRise) => {
        const roof = built(roofOver(ring(corners, eaves(pitchRise))))
        const area = Math.abs(signedAreaSqFt(corners))
        expect(Math.abs(sum(roof.facets.map((f) => f.planAreaSqFt)) - area)).toBeLessThan(area * 1e-6)
        const eavesSeen = roof.facets.flatMap((facet) => facet.eaves.map((eave) => eave.edge))
        expect(eavesSeen.toSorted((a, b) => a - b)).toEqual(corners.map((_, at) => at + 1))
        for (const facet of roof.facets) {
          expect(signedAreaSqFt(facet.outline)).toBeGreaterThan(0)
          // A plane's height above its eave is its distance from the eave times the pitch: all corners must fit.
          const from = corners[(facet.eaves[0]?.edge ?? 0) - 1]
          if (from === undefined) expect.fail('a facet without an eave')
          for (const at of facet.corners) {
            const v = roof.vertices[at] ?? expect.fail('no vertex')
            const inFt = -((v.xFt - from.xFt) * facet.downhill.x + (v.yFt - from.yFt) * facet.downhill.y)
            expect(v.heightFt).toBeCloseTo((inFt * pitchRise) / 12, 5)
          }
        }
      }),
      { numRuns: 400 },
    )
  })

  it('has the same areas whichever way round and from whichever corner it is drawn', () => {
    fc.assert(
      fc.property(starHouse, fc.nat(30), (corners, shift) => {
        const areas = (drawn: readonly PlanPoint[]) =>
          built(roofOver(ring(drawn, eaves(5))))
            .facets.map((f) => f.planAreaSqFt)
            .toSorted((a, b) => a - b)
        const turned = [...corners.slice(shift % corners.length), ...corners.slice(0, shift % corners.length)]
        const expected = areas(corners)
        areas(turned.toReversed()).forEach((area, at) => expect(area).toBeCloseTo(expected[at] ?? -1, 4))
      }),
      { numRuns: 100 },
    )
  })
})

describe('an outline without a roof', () => {
  it.each([
    ['crosses itself', [p(0, 0), p(10, 10), p(10, 0), p(0, 10)], 'edges-touch'],
    ['has two corners', [p(0, 0), p(10, 0)], 'too-few-corners'],
    ['has a corner twice', [p(0, 0), p(10, 0), p(10, 0), p(0, 10)], 'short-edge'],
  ])('that %s is refused by name', (_name, corners, kind) => {
    expect(buildRoof(roofOver(ring(corners, eaves(5))))).toMatchObject({ ok: false, faults: [{ kind }] })
  })

  it('names the pitch that is none, and gables all round', () => {
    expect(buildRoof(roofOver(ring(rectangle(20, 10), eaves(0))))).toMatchObject({
      faults: [1, 2, 3, 4].map((edge) => ({ kind: 'bad-pitch', edge: { ring: 0, edge } })),
    })
    expect(buildRoof(roofOver(ring(rectangle(20, 10), () => ({ kind: 'gable' }))))).toMatchObject({
      faults: [{ kind: 'no-eave' }],
    })
  })
})
