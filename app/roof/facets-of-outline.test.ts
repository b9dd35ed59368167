import { describe, expect, it } from 'vitest'
import { facetIdSchema } from '../job/ids.ts'
import { planFrameSchema } from '../job/places.ts'
import { facetGeometry, roofTotals } from './facet-geometry.ts'
import { facetsOfOutline, type OutlineFacets } from './facets-of-outline.ts'
import type { Facet } from './facet.ts'
import { houseOutlineSchema, type HouseOutline } from './house-outline.ts'

/** A rectangle with the front (south) edge first, all eaves of one pitch. */
function aRectangle({ widthFt = 60, depthFt = 40, pitchRise = 5 } = {}): HouseOutline {
  return houseOutlineSchema.parse({
    id: 'main',
    name: 'Main roof',
    outer: {
      corners: [
        { xFt: 0, yFt: 0 },
        { xFt: widthFt, yFt: 0 },
        { xFt: widthFt, yFt: depthFt },
        { xFt: 0, yFt: depthFt },
      ],
      edges: ['s', 'e', 'n', 'w'].map((id) => ({ id, kind: 'eave', pitchRise })),
    },
  })
}

function planOf(existing: readonly Facet[] = [], upAzimuthDeg = 0) {
  let next = existing.length
  return {
    existing,
    former: [],
    neighbours: [],
    frame: planFrameSchema.parse({ upAzimuthDeg }),
    frontAzimuthDeg: 180,
    newId: () => facetIdSchema.parse(`facet-${++next}`),
  }
}

function need(result: OutlineFacets) {
  return result.ok ? result : expect.fail(result.sentence)
}

describe('facets that follow from an outline', () => {
  it('are the four slopes of a hip roof, lettered from the front', () => {
    const { facets, removed } = need(facetsOfOutline(aRectangle(), planOf()))
    // Worked roof of the geometry reference, G2 and G3: 60 x 40, 5:12, sloped area 2,600 square feet.
    expect(roofTotals(facets).areaSqFt).toBeCloseTo(2600, 6)
    const bySide = Object.fromEntries(facets.map((facet) => [facet.from?.edgeId, facet]))
    expect(bySide['s']).toMatchObject({ letter: 'A', downslopeAzimuthDeg: 180 })
    expect(facets.map((facet) => facet.letter).toSorted()).toEqual(['A', 'B', 'C', 'D'])
    expect(bySide['e']?.downslopeAzimuthDeg).toBeCloseTo(90, 9)
    expect(removed).toEqual([])
  })

  it('face the way the sheet lies', () => {
    const { facets } = need(facetsOfOutline(aRectangle(), planOf([], 25)))
    expect(facets.find((facet) => facet.from?.edgeId === 's')?.downslopeAzimuthDeg).toBeCloseTo(205, 9)
  })

  it('keep identity, letter, name and inspected share when the outline grows', () => {
    const before = need(facetsOfOutline(aRectangle(), planOf())).facets.map((facet) => ({
      ...facet,
      name: `slope ${facet.letter}`,
      inspected: { percent: 80, note: '' },
    }))
    const after = need(facetsOfOutline(aRectangle({ widthFt: 72 }), planOf(before))).facets
    expect(after.map(({ id, letter, name, inspected }) => ({ id, letter, name, inspected }))).toEqual(
      before.map(({ id, letter, name, inspected }) => ({ id, letter, name, inspected })),
    )
    expect(roofTotals(after).planAreaSqFt).toBeCloseTo(72 * 40, 6)
  })

  it('go when their edge becomes a gable, and the others fill the place', () => {
    const before = need(facetsOfOutline(aRectangle(), planOf())).facets
    const gabled = aRectangle()
    gabled.outer.edges = gabled.outer.edges.map((edge) => (edge.id === 'e' ? { id: edge.id, kind: 'gable' } : edge))
    const after = need(facetsOfOutline(gabled, planOf(before)))
    expect(after.removed).toEqual(before.filter((facet) => facet.from?.edgeId === 'e').map((facet) => facet.id))
    expect(after.facets).toHaveLength(3)
    expect(roofTotals(after.facets).planAreaSqFt).toBeCloseTo(2400, 6)
  })

  it('keep what was set by hand', () => {
    const before = need(facetsOfOutline(aRectangle(), planOf())).facets.map((facet): Facet =>
      facet.letter === 'A' ? { ...facet, pitchRise: 6, setByHand: ['pitchRise'] } : facet,
    )
    const after = need(facetsOfOutline(aRectangle({ depthFt: 50 }), planOf(before))).facets
    const front = after.find((facet) => facet.letter === 'A') ?? expect.fail('facet A is gone')
    expect(front).toMatchObject({ pitchRise: 6, setByHand: ['pitchRise'] })
    expect(facetGeometry(front).pitchLabel).toBe('6:12')
  })

  it('leave other outlines and their letters alone', () => {
    const main = need(facetsOfOutline(aRectangle(), planOf())).facets
    const garage = houseOutlineSchema.parse({
      ...aRectangle({ widthFt: 20, depthFt: 20 }),
      id: 'garage',
      name: 'Garage',
    })
    const added = need(facetsOfOutline(garage, planOf(main)))
    expect(added.removed).toEqual([])
    expect(added.facets.map((facet) => facet.letter).toSorted()).toEqual(['E', 'F', 'G', 'H'])
  })

  it('are refused in words when the outline crosses itself', () => {
    const bowTie = aRectangle()
    const [a, b, c, d] = bowTie.outer.corners
    if (a === undefined || b === undefined || c === undefined || d === undefined) expect.fail('no corners')
    bowTie.outer.corners = [a, c, b, d]
    const result = facetsOfOutline(bowTie, planOf())
    expect(result).toMatchObject({ ok: false, sentence: expect.stringMatching(/^Edge \d meets edge \d/) })
  })
})
