import fc from 'fast-check'
import type { PlanPoint } from '../../app/job/places.ts'
import { checkRoofOutline } from '../../app/roof/skeleton/check-outline.ts'
import type { OutlineEdge, OutlineRing, RoofOutline } from '../../app/roof/skeleton/roof-outline.ts'
import { blockHouses, evenlySpread, starHouses, tangledHouses, turned } from './outlines.ts'

/** Kinds of random outlines, each with its rings, the outside first. */
export const outlineFamilies: readonly (readonly [string, fc.Arbitrary<PlanPoint[][]>])[] = [
  ['houses of square cells', blockHouses({ unitCells: true })],
  ['houses of blocks in whole feet', blockHouses({ unitCells: false })],
  [
    'houses of blocks, turned and far from the origin',
    fc
      .tuple(blockHouses({ unitCells: true }), fc.double({ min: 0, max: 360, noNaN: true }))
      .map(([rings, deg]) => rings.map((ring) => turned(ring, deg, 3000))),
  ],
  ['stars', starHouses.map((ring) => [ring])],
  ['any simple outline', tangledHouses(fc.double({ min: 0, max: 100, noNaN: true })).map((ring) => [ring])],
  ['any simple outline, its corners spread evenly', tangledHouses(evenlySpread).map((ring) => [ring])],
  ['any simple outline in whole feet', tangledHouses(fc.nat(20)).map((ring) => [ring])],
]

export function eave(pitchRise: number): OutlineEdge {
  return { kind: 'eave', pitchRise }
}

/** Eaves of 1:12 to 12:12. */
export const anyPitch: fc.Arbitrary<OutlineEdge> = fc.integer({ min: 2, max: 24 }).map((half) => eave(half / 2))

export const oneInFourGable: fc.Arbitrary<OutlineEdge> = fc.oneof(
  { weight: 3, arbitrary: anyPitch },
  { weight: 1, arbitrary: fc.constant({ kind: 'gable' } as const) },
)

/** An outline of a family whose edges are drawn from a stock; those that no roof is sought over are left out. */
export function outlines(
  family: fc.Arbitrary<PlanPoint[][]>,
  edge: fc.Arbitrary<OutlineEdge>,
): fc.Arbitrary<RoofOutline> {
  return fc
    .tuple(family, fc.array(edge, { minLength: 30, maxLength: 30 }))
    .map(([rings, edges]) => {
      let used = 0
      const [outer, ...courtyards] = rings.map((line): OutlineRing => {
        used += line.length
        return { corners: line, edges: line.map((_, i) => edges[(used + i) % edges.length] ?? eave(6)) }
      })
      return { outer: outer ?? { corners: [], edges: [] }, courtyards }
    })
    .filter((outline) => checkRoofOutline(outline).length === 0)
}
