import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { anyPitch, eave, oneInFourGable, outlineFamilies, outlines } from '../../../tests/builders/outline-families.ts'
import { corners, outlineOf, turned } from '../../../tests/builders/outlines.ts'
import { brokenLaws } from '../../../tests/builders/roof-laws.ts'
import { buildRoof } from './build-roof.ts'
import type { BuiltRoof } from './built-roof.ts'
import type { OutlineRing, RoofOutline } from './roof-outline.ts'

const RUNS = 250

describe.each(outlineFamilies)('%s', (_name, family) => {
  it('have a roof at one pitch that obeys every law', () => {
    fc.assert(
      fc.property(outlines(family, fc.constant(eave(6))), (outline) => {
        const result = buildRoof(outline)
        expect(result.ok ? brokenLaws(outline, result.roof) : result.faults).toEqual([])
      }),
      { numRuns: RUNS },
    )
  })

  it('have a roof at any mix of pitches that obeys every law', () => {
    fc.assert(
      fc.property(outlines(family, anyPitch), (outline) => {
        const result = buildRoof(outline)
        expect(result.ok ? brokenLaws(outline, result.roof) : result.faults).toEqual([])
      }),
      { numRuns: RUNS },
    )
  })

  it('with gables have a roof that obeys every law, or a part that only gables surround', () => {
    fc.assert(
      fc.property(outlines(family, oneInFourGable), (outline) => {
        const result = buildRoof(outline)
        if (result.ok) expect(brokenLaws(outline, result.roof)).toEqual([])
        else expect(result.faults.map(({ kind }) => kind)).toEqual(['no-slope'])
      }),
      { numRuns: RUNS },
    )
  })
})

describe('the laws notice a roof that is wrong', () => {
  const outline = outlineOf('0,0 40,0 40,30 0,30', 6)
  const built = buildRoof(outline)
  const right = built.ok ? built.roof : { vertices: [], facets: [], edges: [] }
  const [first, ...others] = right.facets
  const top = right.vertices.findIndex(({ heightFt }) => heightFt > 0)

  it.each([
    ['a facet left out', { ...right, facets: others }, 'facets sum to'],
    [
      'a ridge end moved',
      { ...right, vertices: right.vertices.map((v, i) => (i === top ? { ...v, xFt: v.xFt + 0.1 } : v)) },
      "is off its facet's plane",
    ],
    [
      'a corner raised',
      { ...right, vertices: right.vertices.map((v, i) => (i === top ? { ...v, heightFt: v.heightFt + 0.1 } : v)) },
      "is off its facet's plane",
    ],
    ['an eave forgotten', { ...right, facets: [{ ...first, eaves: [] }, ...others] }, 'eaves'],
    [
      'corners out of order',
      {
        ...right,
        facets: [{ ...first, corners: first?.corners.toSorted((a, b) => (a % 2) - (b % 2)) ?? [] }, ...others],
      },
      'crosses itself',
    ],
    ['a line missing', { ...right, edges: right.edges.slice(1) }, 'ends of edges'],
  ])('%s', (_what, wrong, law) => {
    expect(brokenLaws(outline, right)).toEqual([])
    expect(brokenLaws(outline, wrong as BuiltRoof).join('; ')).toContain(law)
  })

  it('a slope that dips down in the middle', () => {
    const dipping = corners('0,0 10,0 10,10 20,4 30,10 30,15 0,15')
    const facet = {
      eaves: [{ ring: 0, edge: 1 }],
      corners: dipping.map((_, i) => i),
      outline: dipping,
      holes: [],
      pitchRise: 6,
      downhill: { x: 0, y: -1 },
      planAreaSqFt: 0,
    }
    const vertices = dipping.map((corner) => ({ ...corner, heightFt: corner.yFt / 2 }))
    expect(brokenLaws(outline, { vertices, facets: [facet], edges: [] }).join('; ')).toContain(
      'a lowest place at 20, 4',
    )
  })
})

/** Facet areas by the outline's edges. */
function areas(outline: RoofOutline, rename: (ring: number, edge: number) => string): Map<string, number> {
  const result = buildRoof(outline)
  expect(result.ok ? [] : result.faults).toEqual([])
  const facets = result.ok ? result.roof.facets : []
  return new Map(
    facets.map(({ eaves, planAreaSqFt }) => [
      eaves
        .map(({ ring, edge }) => rename(ring, edge))
        .toSorted()
        .join('+'),
      planAreaSqFt,
    ]),
  )
}

describe.each(outlineFamilies)('%s keep their facets', (_name, family) => {
  it('when turned, moved, wound the other way or begun at another corner', () => {
    const move = fc.record({
      deg: fc.double({ min: 0, max: 360, noNaN: true }),
      ft: fc.double({ min: -500, max: 500, noNaN: true }),
      start: fc.nat(40),
    })
    fc.assert(
      fc.property(outlines(family, fc.constant(eave(6))), move, (outline, { deg, ft, start }) => {
        const asDrawn = areas(outline, (ring, edge) => `${ring}.${edge}`)
        const turnedRing = ({ corners, edges }: OutlineRing): OutlineRing => ({
          corners: turned(corners, deg, ft),
          edges,
        })
        const whenTurned = areas(
          { outer: turnedRing(outline.outer), courtyards: outline.courtyards.map(turnedRing) },
          (ring, edge) => `${ring}.${edge}`,
        )
        const count = (ring: number) => (ring === 0 ? outline.outer : outline.courtyards[ring - 1])?.corners.length ?? 1
        const shift = (ring: number) => start % count(ring)
        // Corners from `shift` on, backwards: new edge k runs from old corner shift - k + 1 back to the one before it.
        const backRing = ({ corners: line, edges }: OutlineRing, ring: number): OutlineRing => ({
          corners: line.map((_, k) => line.at((shift(ring) - k) % line.length) ?? { xFt: NaN, yFt: NaN }),
          edges,
        })
        const whenBack = areas(
          { outer: backRing(outline.outer, 0), courtyards: outline.courtyards.map((ring, i) => backRing(ring, i + 1)) },
          (ring, edge) => `${ring}.${((((shift(ring) - edge) % count(ring)) + count(ring)) % count(ring)) + 1}`,
        )
        for (const other of [whenTurned, whenBack]) {
          expect([...other.keys()].toSorted()).toEqual([...asDrawn.keys()].toSorted())
          for (const [name, area] of asDrawn)
            expect(Math.abs((other.get(name) ?? NaN) - area)).toBeLessThan(1e-4 + 1e-6 * area)
        }
      }),
      { numRuns: RUNS / 2 },
    )
  })
})
