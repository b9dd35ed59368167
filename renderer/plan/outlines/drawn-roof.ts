import type { PlanFrame } from '../../../app/job/places.ts'
import { edgeShapes, facetShape } from '../../../app/roof/draw-plan.ts'
import type { Facet } from '../../../app/roof/facet.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import type { FacetShape, PlanDrawing } from '../../../app/roof/plan-drawing.ts'
import { type HouseAround, previewRoof } from './roof-preview.ts'

/** The roof over an outline, ready to be drawn with the other facets of the house; or why there is none. */
export type DrawnRoof =
  | {
      readonly ok: true
      readonly shapes: Pick<PlanDrawing, 'facets' | 'edges'>
      /** Facets that would be removed. */
      readonly goes: readonly Facet[]
    }
  | { readonly ok: false; readonly sentence: string }

/** Draws roof after roof; facets that are as they were before are not looked over again for their letter's place. */
export function roofDrawer(): (outline: HouseOutline, around: HouseAround) => DrawnRoof {
  let known = new Map<string, Marked>()
  return (outline, around) => {
    const preview = previewRoof(outline, around)
    if (!preview.ok) return preview
    const others = around.facets.filter(({ from }) => from === null || from.outlineId !== outline.id)
    const facets = [...others, ...preview.facets]
    const marked = facets.map((facet) => markedShape(facet, around.frame, known))
    known = new Map(marked.map((one) => [one.shape.id, one]))
    return {
      ok: true,
      goes: preview.goes,
      shapes: { facets: marked.map(({ shape }) => shape), edges: edgeShapes(facets, around.frame.upAzimuthDeg) },
    }
  }
}

interface Marked {
  readonly mark: string
  readonly shape: FacetShape
}

function markedShape(facet: Facet, frame: PlanFrame, known: ReadonlyMap<string, Marked>): Marked {
  const { id, letter, outline, pitchRise, downslopeAzimuthDeg } = facet
  const mark = JSON.stringify([letter, outline, pitchRise, downslopeAzimuthDeg, frame.upAzimuthDeg])
  const before = known.get(id)
  return before?.mark === mark ? before : { mark, shape: facetShape(facet, frame) }
}
