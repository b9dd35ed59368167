import fc from 'fast-check'
import { expect, it } from 'vitest'
import { starHouses, tangledHouses } from '../../../tests/builders/outlines.ts'
import { checkRoofOutline } from './check-outline.ts'
import { directedRings, type DirectedEdge } from './directed-rings.ts'
import { growSkeleton } from './grow-skeleton.ts'
import type { RoofOutline } from './roof-outline.ts'
import { planeOver } from './slope-plane.ts'
import { facetAreaSqFt, walkFacets } from './walk-facets.ts'

/** An eave that rises a million feet in one: as good as a wall, but a slope to the wavefront. */
const STEEP = 12e6

function steepened(rings: readonly (readonly DirectedEdge[])[]): DirectedEdge[][] {
  return rings.map((ring) =>
    ring.map((edge) =>
      edge.plane.pitchRise === null ? { ...edge, plane: planeOver(edge.from, edge.to, STEEP) } : edge,
    ),
  )
}

/** Facet areas by edge; null when the wavefront leaves a part of the roof without a slope. */
function areas(rings: readonly (readonly DirectedEdge[])[]): Map<string, number> | null {
  const skeleton = growSkeleton(rings)
  if (skeleton.leftOver.length > 0) return null
  const facets = walkFacets(rings, skeleton) ?? []
  return new Map(
    facets.map((facet) => [
      facet.steps.flatMap(({ line }) => (line.kind === 'eave' ? [line.edge.place.edge] : [])).join('+'),
      facetAreaSqFt(facet),
    ]),
  )
}

/**
 * Upright walls are the limit of steep slopes, which never stand still and never shut anything off. A wall in line with
 * another edge has no such limit; corners at random places have none in line.
 */
it.each([
  ['stars', fc.noBias(starHouses)],
  ['any simple outline', fc.noBias(tangledHouses(fc.double({ min: 0, max: 100, noNaN: true })))],
])('gables of %s leave the slopes beside them what the steepest slopes would', (_name, family) => {
  const drawn = fc
    .tuple(family, fc.array(fc.nat(3), { minLength: 40, maxLength: 40 }))
    .map(([corners, kinds]): RoofOutline => {
      const edges = corners.map((_, i) =>
        kinds[i] === 0 ? ({ kind: 'gable' } as const) : ({ kind: 'eave', pitchRise: 6 } as const),
      )
      return { outer: { corners, edges }, courtyards: [] }
    })
    .filter((outline) => checkRoofOutline(outline).length === 0)
  const counts = { agree: 0, shutOff: 0 }
  fc.assert(
    fc.property(drawn, (outline) => {
      const rings = directedRings(outline)
      const steep = areas(steepened(rings)) ?? new Map<string, number>()
      const found = areas(rings)
      if (found !== null) {
        counts.agree++
        for (const [edges, area] of found) expect(Math.abs((steep.get(edges) ?? NaN) - area)).toBeLessThan(0.05)
        return
      }
      // What no slope reaches is what the steep slopes cover.
      counts.shutOff++
      const gables = outline.outer.edges.flatMap(({ kind }, i) => (kind === 'gable' ? [`${i + 1}`] : []))
      expect(gables.reduce((sum, edge) => sum + (steep.get(edge) ?? 0), 0)).toBeGreaterThan(0.001)
    }),
    { numRuns: 250 },
  )
  expect(counts.agree).toBeGreaterThan(100)
})
