import type { Facet } from '../../../app/roof/facet.ts'
import { roofOutlineOf, type HouseOutline } from '../../../app/roof/house-outline.ts'
import type { PlanDrawing } from '../../../app/roof/plan-drawing.ts'
import type { PlanPoint } from '../../../app/job/places.ts'
import { buildRoof } from '../../../app/roof/skeleton/build-roof.ts'
import type { BuiltFacet, BuiltRoof } from '../../../app/roof/skeleton/built-roof.ts'
import { roofFaultSentence } from '../../../app/roof/skeleton/roof-faults.ts'
import { pitchLabel } from '../../../app/roof/slope.ts'
import { houseRings } from './outline-draft.ts'

type Shapes = Pick<PlanDrawing, 'facets' | 'edges'>

/** The roof that an outline would give, as things to draw, or the sentence that says why there is none. */
export type RoofPreview =
  | { readonly ok: true; readonly shapes: Shapes; readonly goes: readonly Facet[] }
  | { readonly ok: false; readonly sentence: string }

/**
 * Builds the roof over an outline for the screen, quickly enough to follow a hand that drags: facets that are there
 * already show their letters, new ones none until they are saved. `goes` are the facets that would be removed.
 */
export function previewRoof(outline: HouseOutline, facets: readonly Facet[]): RoofPreview {
  const built = buildRoof(roofOutlineOf(outline))
  if (!built.ok) {
    const [fault] = built.faults
    return { ok: false, sentence: fault === undefined ? 'This outline has no roof.' : roofFaultSentence(fault) }
  }
  const mine = facets.filter((facet) => facet.from?.outlineId === outline.id)
  const known = built.roof.facets.map((facet) => knownFacet(outline, facet, mine))
  return {
    ok: true,
    shapes: shapesOf(built.roof, known),
    goes: mine.filter((facet) => !known.includes(facet)),
  }
}

function knownFacet(outline: HouseOutline, facet: BuiltFacet, mine: readonly Facet[]): Facet | undefined {
  const rings = houseRings(outline)
  const edges = facet.eaves.map(({ ring, edge }) => rings[ring]?.edges[edge - 1]?.id)
  return mine.find(({ from }) => from !== null && edges.includes(from.edgeId))
}

function shapesOf({ facets, edges, vertices }: BuiltRoof, known: readonly (Facet | undefined)[]): Shapes {
  return {
    facets: facets.map((facet, i) => ({
      id: known[i]?.id ?? `new ${i}`,
      letter: known[i]?.letter ?? '',
      outline: facet.outline,
      labelAt: centreOf(facet.outline),
      pitchLabel: pitchLabel(facet.pitchRise),
      downhill: facet.downhill,
    })),
    edges: edges.flatMap(({ kind, from, to }) => {
      const [start, end] = [vertices[from], vertices[to]]
      return start === undefined || end === undefined ? [] : [{ kind, from: start, to: end }]
    }),
  }
}

/** Near enough for a letter that moves: the mean of the corners. */
function centreOf(corners: readonly PlanPoint[]): PlanPoint {
  const sum = corners.reduce((a, b) => ({ xFt: a.xFt + b.xFt, yFt: a.yFt + b.yFt }), { xFt: 0, yFt: 0 })
  return { xFt: sum.xFt / corners.length, yFt: sum.yFt / corners.length }
}
