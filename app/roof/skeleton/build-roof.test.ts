import { describe, expect, it } from 'vitest'
import { corners, outlineOf, ringOf, turned } from '../../../tests/builders/outlines.ts'
import { edgeTotals, roofEdges } from '../edges.ts'
import { facetSchema } from '../facet.ts'
import type { EdgeKind } from '../plan-drawing.ts'
import { hipFactorPerRunFoot, slopeFactor } from '../slope.ts'
import { buildRoof } from './build-roof.ts'
import type { BuiltFacet, BuiltRoof } from './built-roof.ts'
import type { RoofOutline } from './roof-outline.ts'

function roofOver(outline: RoofOutline): BuiltRoof {
  const result = buildRoof(outline)
  if (!result.ok) throw new Error(JSON.stringify(result.faults))
  return result.roof
}

/** Total true length by kind, to a thousandth of a foot. */
function lengthsOf(roof: BuiltRoof): Partial<Record<EdgeKind, number>> {
  const totals: Partial<Record<EdgeKind, number>> = {}
  for (const { kind, trueLengthFt } of roof.edges) totals[kind] = (totals[kind] ?? 0) + trueLengthFt
  return Object.fromEntries(Object.entries(totals).map(([kind, ft]) => [kind, Number(ft.toFixed(3))]))
}

function facetOn(roof: BuiltRoof, edge: number, ring = 0): BuiltFacet {
  const facet = roof.facets.find((one) => one.eaves.some((eave) => eave.edge === edge && eave.ring === ring))
  if (facet === undefined) throw new Error(`no facet on edge ${edge}`)
  return facet
}

const slopedSqFt = (roof: BuiltRoof) =>
  roof.facets.reduce((sum, facet) => sum + facet.planAreaSqFt * slopeFactor(facet.pitchRise), 0)
const highestFt = (roof: BuiltRoof) => Math.max(...roof.vertices.map((vertex) => vertex.heightFt))

const ell = '0,0 40,0 40,24 16,24 16,44 0,44'

describe('worked roofs (geometry; values of common-rafter and hip tables, computed to four decimals)', () => {
  it('gable 40 by 30, 6:12: 1341.6408 sq ft, ridge 40, four rakes of 16.7705', () => {
    const roof = roofOver(outlineOf('0,0 40,0 40,30 0,30', [6, 0, 6, 0]))
    expect(slopedSqFt(roof)).toBeCloseTo(1341.6408, 4)
    expect(lengthsOf(roof)).toEqual({ eave: 80, ridge: 40, rake: 67.082 })
    for (const rake of roof.edges.filter((edge) => edge.kind === 'rake'))
      expect(rake.trueLengthFt).toBeCloseTo(16.7705, 4)
  })

  it('hip 60 by 40, 5:12: 2600 sq ft, ridge 20 at 8.3333 ft, hips 29.4863 each; ends 400, sides 800 in plan', () => {
    const roof = roofOver(outlineOf('0,0 60,0 60,40 0,40', 5))
    expect(slopedSqFt(roof)).toBeCloseTo(2600, 9)
    expect(lengthsOf(roof)).toEqual({ eave: 200, ridge: 20, hip: 117.945 })
    expect(highestFt(roof)).toBeCloseTo(8.3333, 4)
    expect(roof.facets.map((facet) => facet.planAreaSqFt)).toEqual([800, 400, 800, 400])
    expect(facetOn(roof, 2).planAreaSqFt * slopeFactor(5)).toBeCloseTo(433.3333, 4)
    expect(facetOn(roof, 1).planAreaSqFt * slopeFactor(5)).toBeCloseTo(866.6667, 4)
    for (const hip of roof.edges.filter((edge) => edge.kind === 'hip')) {
      expect(hip.trueLengthFt).toBeCloseTo(29.4863, 4)
      expect(hip.trueLengthFt).toBeCloseTo(20 * hipFactorPerRunFoot(5), 9)
    }
  })

  it('pyramid 32 by 32, 4:12: 1079.3908 sq ft, four hips of 23.2475 to one point, no ridge', () => {
    const roof = roofOver(outlineOf('0,0 32,0 32,32 0,32', 4))
    expect(slopedSqFt(roof)).toBeCloseTo(1079.3908, 4)
    expect(lengthsOf(roof)).toEqual({ eave: 128, hip: 92.99 })
    expect(roof.vertices).toHaveLength(5)
  })

  it('gable wing 24 wide into a main roof, 6:12: each valley 18.0000', () => {
    const wing = '-30,0 -12,0 -12,-10 12,-10 12,0 30,0 30,60 -30,60'
    const roof = roofOver(outlineOf(wing, [6, 6, 0, 6, 6, 0, 6, 0]))
    const valleys = roof.edges.filter((edge) => edge.kind === 'valley')
    expect(valleys.map((valley) => Number(valley.trueLengthFt.toFixed(9)))).toEqual([18, 18])
  })

  it('unequal hip at a square corner, 4:12 and 8:12: at rise 6 it has run 18 and 9, plan 20.1246, true 21.0000', () => {
    const roof = roofOver(outlineOf('0,0 90,0 90,36 0,36', [4, 8, 4, 8]))
    const hips = roof.edges.filter((edge) => edge.kind === 'hip')
    expect(hips).toHaveLength(4)
    expect(highestFt(roof)).toBeCloseTo(6, 9)
    for (const hip of hips) {
      expect(hip.planLengthFt).toBeCloseTo(20.1246, 4)
      expect(hip.trueLengthFt).toBeCloseTo(21, 9)
    }
  })

  it('eave corners of 135 degrees, 6:12, offset 10: hip plan 10.8239, rise 5, true 11.9230', () => {
    // A regular octagon 20 across: all hips run from its corners to the middle, 10 ft in from every eave.
    const radius = 10 / Math.cos(Math.PI / 8)
    const octagon = Array.from({ length: 8 }, (_, i) => ({
      xFt: radius * Math.cos(((2 * i + 1) * Math.PI) / 8),
      yFt: radius * Math.sin(((2 * i + 1) * Math.PI) / 8),
    }))
    const roof = roofOver({ outer: ringOf(octagon, 6), courtyards: [] })
    const hips = roof.edges.filter((edge) => edge.kind === 'hip')
    expect(hips).toHaveLength(8)
    expect(highestFt(roof)).toBeCloseTo(5, 9)
    for (const hip of hips) {
      expect(hip.planLengthFt).toBeCloseTo(10.8239, 4)
      expect(hip.trueLengthFt).toBeCloseTo(11.923, 4)
    }
  })

  it('an L of 1280 sq ft at 5:12: 1386.6667 sq ft, facets as worked by hand from equal offsets of the eaves', () => {
    const roof = roofOver(outlineOf(ell, 5))
    expect(slopedSqFt(roof)).toBeCloseTo(1386.6667, 4)
    const areas = [1, 2, 3, 4, 5, 6].map((edge) => Number(facetOn(roof, edge).planAreaSqFt.toFixed(9)))
    expect(areas).toEqual([336, 144, 272, 160, 64, 304])
    // 56 ft of hip run and 8 ft of valley run, each times sqrt(2 + (5/12)^2) = 1.47432.
    expect(lengthsOf(roof)).toEqual({ eave: 168, ridge: 36, hip: 82.562, valley: 11.795 })
  })
})

describe('shapes of houses', () => {
  it('a U has two valleys, a cross four, and all its ridges meet in the middle', () => {
    const u = roofOver(outlineOf('0,0 60,0 60,40 40,40 40,20 20,20 20,40 0,40', 5))
    expect(u.edges.filter((edge) => edge.kind === 'valley')).toHaveLength(2)
    const cross = roofOver(outlineOf('10,0 20,0 20,10 30,10 30,20 20,20 20,30 10,30 10,20 0,20 0,10 10,10', 6))
    expect(cross.edges.filter((edge) => edge.kind === 'valley')).toHaveLength(4)
    const middle = cross.vertices.findIndex(({ xFt, yFt }) => xFt === 15 && yFt === 15)
    const toMiddle = cross.edges.filter(({ from, to }) => from === middle || to === middle)
    expect(toMiddle.map(({ kind }) => kind).toSorted()).toEqual([...Array(4).fill('ridge'), ...Array(4).fill('valley')])
  })

  it('a courtyard has valleys at its corners and a ridge all round', () => {
    const roof = roofOver({
      outer: ringOf(corners('0,0 60,0 60,60 0,60'), 6),
      courtyards: [ringOf(corners('20,20 40,20 40,40 20,40'), 6)],
    })
    expect(lengthsOf(roof)).toEqual({ eave: 320, hip: 60, ridge: 160, valley: 60 })
    expect(facetOn(roof, 1, 1).planAreaSqFt).toBeCloseTo(300, 9)
  })

  it('an H, where everything happens at one height: two ridges, four valleys', () => {
    const roof = roofOver(outlineOf('0,0 20,0 20,20 40,20 40,0 60,0 60,60 40,60 40,40 20,40 20,60 0,60', 6))
    expect(lengthsOf(roof)).toEqual({ eave: 320, hip: 120, valley: 60, ridge: 120 })
  })

  it('eaves of one line and pitch share a facet where their slopes join, whether a corner or a bay lies between them', () => {
    const corner = roofOver(outlineOf('0,0 20,0 40,0 40,24 0,24', 6))
    expect(corner.facets).toHaveLength(4)
    expect(facetOn(corner, 1).eaves).toEqual([
      { ring: 0, edge: 1 },
      { ring: 0, edge: 2 },
    ])
    const bay = roofOver(outlineOf('0,0 18,0 18,-2 22,-2 22,0 40,0 40,24 0,24', 6))
    expect(facetOn(bay, 1)).toBe(facetOn(bay, 5))
    expect(facetOn(bay, 3).planAreaSqFt).toBeCloseTo(4, 9)
  })

  it('stands on its eave height, in either winding, numbered as drawn', () => {
    const drawn = { ...outlineOf(ell, [5, 4, 5, 6, 5, 7]), eaveHeightFt: 9 }
    const back = {
      ...drawn,
      outer: {
        corners: drawn.outer.corners.toReversed(),
        edges: [...drawn.outer.edges.slice(0, -1).toReversed(), ...drawn.outer.edges.slice(-1)],
      },
    }
    const [roof, reversed] = [roofOver(drawn), roofOver(back)]
    expect(Math.min(...roof.vertices.map(({ heightFt }) => heightFt))).toBe(9)
    for (let edge = 1; edge <= 5; edge++)
      expect(facetOn(reversed, 6 - edge).planAreaSqFt).toBeCloseTo(facetOn(roof, edge).planAreaSqFt, 9)
    expect(facetOn(reversed, 6).planAreaSqFt).toBeCloseTo(facetOn(roof, 6).planAreaSqFt, 9)
    expect(facetOn(roof, 2).downhill.x).toBeCloseTo(1, 12)
  })
})

describe('gables', () => {
  it('an L with gables at both ends: ridges run to the walls, one valley, one hip over the outer corner', () => {
    const roof = roofOver(outlineOf(ell, [5, 0, 5, 5, 0, 5]))
    expect(roof.facets).toHaveLength(4)
    expect(lengthsOf(roof)).toEqual({ eave: 128, ridge: 56, rake: 43.333, valley: 11.795, hip: 23.589 })
  })

  it('two gables side by side, and three: a shed runs up to its top edge', () => {
    expect(lengthsOf(roofOver(outlineOf('0,0 40,0 40,30 0,30', [3, 0, 0, 0])))).toEqual({
      eave: 40,
      rake: 61.847,
      'top-edge': 40,
    })
    const two = roofOver(outlineOf('0,0 40,0 40,30 0,30', [6, 0, 0, 6]))
    expect(lengthsOf(two)).toEqual({ eave: 70, hip: 45, 'top-edge': 10, rake: 67.082 })
  })

  it('a gable beside an inner corner goes on into the roof as a wall: a step for the lower slope, a rake for the higher', () => {
    const roof = roofOver(outlineOf(ell, [5, 0, 5, 0, 5, 5]))
    const steps = roof.edges.filter((edge) => edge.kind === 'step')
    expect(steps).toHaveLength(1)
    expect(steps[0]?.trueLengthFt).toBeCloseTo(12 * slopeFactor(5), 9)
    expect(steps[0]?.facets.map((facet) => roof.facets[facet]?.eaves[0]?.edge)).toEqual([3])
  })

  it('a slope that runs round a courtyard with gables on all sides has it as a hole', () => {
    const roof = roofOver({
      outer: ringOf(corners('0,0 40,0 40,60 0,60'), [4, 0, 0, 0]),
      courtyards: [ringOf(corners('15,20 25,20 25,30 15,30'), 0)],
    })
    expect(roof.facets).toHaveLength(1)
    expect(roof.facets[0]?.holes.map((hole) => hole.length)).toEqual([4])
    expect(roof.facets[0]?.planAreaSqFt).toBeCloseTo(2300, 9)
  })

  it('an edge that no slope can reach is a fault that names the gables around it', () => {
    const hook = outlineOf('0,0 10,0 10,20 20,20 20,0 30,0 30,30 0,30', [6, 0, 0, 0, 0, 0, 0, 0])
    const result = buildRoof(hook)
    expect(result.ok ? [] : result.faults).toMatchObject([
      { kind: 'no-slope', edges: [3, 4, 5, 6, 7, 8].map((edge) => ({ ring: 0, edge })) },
    ])
  })
})

describe('where weights leave the roof open', () => {
  it('a main roof of its own pitch goes on behind a bump-out, whose flatter slope ends at a pitch break', () => {
    const roof = roofOver(outlineOf('0,-6 10,-6 10,0 60,0 60,40 0,40', [4, 0, 8, 8, 8, 8]))
    // Flatter slope: 18 ft of run per 6 ft of rise. It meets the line of the main slope, 12 / 8 per foot, at height 4.
    const breaks = roof.edges.filter((edge) => edge.kind === 'pitch-break')
    expect(breaks).toHaveLength(1)
    const [{ from = -1, to = -1 } = {}] = breaks
    for (const at of [from, to]) {
      expect(roof.vertices[at]?.heightFt).toBeCloseTo(4, 9)
      expect(roof.vertices[at]?.yFt).toBeCloseTo(6, 9)
    }
  })

  it('a main gable goes on behind the flat roof of a bump-out, which ends in a step at the wall', () => {
    const roof = roofOver(outlineOf('0,-6 16,-6 16,0 40,0 40,24 0,24', [4, 4, 0, 8, 0, 8]))
    const heads = roof.edges.filter((edge) => edge.kind === 'step')
    expect(heads.every(({ from, to }) => roof.vertices[from]?.yFt === 0 && roof.vertices[to]?.yFt === 0)).toBe(true)
    expect(lengthsOf(roof).ridge).toBeCloseTo(24, 9)
    expect(highestFt(roof)).toBeCloseTo((20 * 8) / 12, 9)
  })

  it('a wide slope closes over a narrow niche of steeper pitch, and over one with a gable', () => {
    for (const niche of [9, 0]) {
      const roof = roofOver(outlineOf('0,0 40,0 40,2 44,2 44,0 90,0 90,60 0,60', [4, 0, niche, 0, 4, 4, 4, 4]))
      expect(facetOn(roof, 1)).toBe(facetOn(roof, 5))
    }
  })

  it('edges of one line and two pitches, or an eave and a gable, part at a wall that goes up from their corner', () => {
    for (const pitch of [8, 0]) {
      const roof = roofOver(outlineOf('0,0 20,0 40,0 40,24 0,24', [4, pitch, 6, 6, 6]))
      const steps = roof.edges.filter((edge) => edge.kind === 'step')
      expect(steps.map(({ from, to }) => [roof.vertices[from]?.xFt, roof.vertices[to]?.xFt])).toEqual([[20, 20]])
    }
  })
})

describe('near misses', () => {
  it.each([0, 12.3, 45, 77.7])('tiny edges and walls that are nearly parallel, at %d degrees', (deg) => {
    const nearly = corners('0,0 60,0.0004 60,40 30,40.003 30,40.02 0,40')
    const roof = roofOver({ outer: ringOf(turned(nearly, deg), 6), courtyards: [] })
    expect(roof.facets).toHaveLength(6)
    expect(highestFt(roof)).toBeCloseTo(10, 2)
  })

  it.each([1e-5, 1e-6, 1e-7, 1e-8])('walls out of parallel by %d ft, between what is one and what is two', (offFt) => {
    const comb = '0,0 70,0 70,30 60,30 60,10 50,10 50,30 40,30 40,10 30,10 30,30 20,30 20,10 10,10 10,30 0,30'
    const bent = corners(comb).map(({ xFt, yFt }, i) => ({
      xFt: xFt + offFt * Math.sin(7 * i),
      yFt: yFt + offFt * Math.cos(5 * i),
    }))
    const roof = roofOver({ outer: ringOf(bent, 6), courtyards: [] })
    expect(slopedSqFt(roof)).toBeCloseTo((2100 - 600) * slopeFactor(6), 2)
    expect(highestFt(roof)).toBeCloseTo(2.5, 3)
  })
})

it('agrees with the edges that the plan finds from facets alone', () => {
  const roof = roofOver(outlineOf(ell, [5, 0, 5, 5, 0, 5]))
  const facets = roof.facets.map((facet, i) =>
    facetSchema.parse({
      id: `facet-${i}`,
      letter: `F${i}`,
      outline: facet.outline,
      pitchRise: facet.pitchRise,
      downslopeAzimuthDeg: ((Math.atan2(facet.downhill.x, facet.downhill.y) * 180) / Math.PI + 360) % 360,
    }),
  )
  const found = Object.entries(edgeTotals(roofEdges(facets, 0))).filter(([, ft]) => ft > 0)
  expect(Object.fromEntries(found.map(([kind, ft]) => [kind, Number(ft.toFixed(3))]))).toEqual(lengthsOf(roof))
})
