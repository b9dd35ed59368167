import fc from 'fast-check'
import { beforeAll, describe, expect, it } from 'vitest'
import type { PlanPoint } from '../../app/job/places.ts'
import { buildRoof } from '../../app/roof/skeleton/build-roof.ts'
import { checkRoofOutline } from '../../app/roof/skeleton/check-outline.ts'
import type { RoofOutline } from '../../app/roof/skeleton/roof-outline.ts'
import { blockHouses, evenlySpread, ringOf, starHouses, tangledHouses, turned } from '../builders/outlines.ts'
import { inSinglePrecision, loadOutsideSkeleton, outsideSkeleton } from '../builders/outside-skeleton.ts'

/**
 * Facet areas against CGAL's straight skeleton (see `outside-skeleton.ts` for what that is, its licence and when its
 * answer is passed over). The bar is a thousandth of the facet and what single precision does to the library's corners.
 */
const families: readonly (readonly [string, fc.Arbitrary<PlanPoint[][]>])[] = [
  ['houses of square cells', blockHouses({ unitCells: true })],
  ['houses of blocks in whole feet', blockHouses({ unitCells: false })],
  [
    'houses of blocks, turned, their corners read to a sixteenth of a foot',
    fc
      .tuple(blockHouses({ unitCells: false }), fc.double({ min: 0, max: 360, noNaN: true }))
      .map(([rings, deg]) =>
        rings.map((ring) =>
          turned(ring, deg).map(({ xFt, yFt }) => ({ xFt: Math.round(xFt * 16) / 16, yFt: Math.round(yFt * 16) / 16 })),
        ),
      ),
  ],
  ['stars', starHouses.map((ring) => [ring])],
  ['any simple outline', tangledHouses(evenlySpread).map((ring) => [ring])],
]

describe('facets of one pitch have the areas that CGAL finds', () => {
  beforeAll(loadOutsideSkeleton)

  it.each(families)('%s', async (_name, family) => {
    const counts = { agree: 0, passedOver: 0 }
    await fc.assert(
      fc.asyncProperty(family, async (drawn) => {
        const rings = inSinglePrecision(drawn)
        const [outer = [], ...courtyards] = rings
        const outline: RoofOutline = {
          outer: ringOf(outer, 12),
          courtyards: courtyards.map((line) => ringOf(line, 12)),
        }
        fc.pre(checkRoofOutline(outline).length === 0)
        const result = buildRoof(outline)
        expect(result.ok ? [] : result.faults).toEqual([])
        const theirs = await outsideSkeleton(rings)
        if (!theirs.ok || !result.ok) return void counts.passedOver++
        for (const facet of result.roof.facets) {
          const faces = facet.eaves.map(({ ring, edge }) => theirs.faceAt(ring, edge))
          const areaSqFt = faces.reduce((sum, face) => sum + (face?.areaSqFt ?? NaN), 0)
          const roundingSqFt = faces.reduce((sum, face) => sum + (face?.roundingSqFt ?? NaN), 0)
          expect(Math.abs(facet.planAreaSqFt - areaSqFt)).toBeLessThan(1e-3 * areaSqFt + roundingSqFt)
        }
        counts.agree++
      }),
      { numRuns: 60, seed: 1996 },
    )
    expect(counts.agree).toBeGreaterThan(55)
    expect(counts.passedOver).toBeLessThan(3)
  })
})
