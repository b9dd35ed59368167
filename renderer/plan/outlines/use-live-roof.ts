import { useEffect, useMemo, useRef } from 'react'
import type { PlanFrame } from '../../../app/job/places.ts'
import { edgeShapes, facetShape } from '../../../app/roof/draw-plan.ts'
import type { Facet } from '../../../app/roof/facet.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import type { FacetShape, PlanDrawing } from '../../../app/roof/plan-drawing.ts'
import { useJob } from '../../state/job-state.tsx'
import { useSettled } from '../../state/use-settled.ts'
import type { PlanScene } from '../plan-canvas.tsx'
import { previewRoof, type RoofPreview } from './roof-preview.ts'

/** The plan with the roof over an outline that is being drawn or changed. */
export interface LiveRoof {
  readonly scene: PlanScene
  /** Why there is no roof over the outline as it stands; the last good roof stays in sight. Null when there is one. */
  readonly sentence: string | null
  /** Facets that would go. */
  readonly goes: readonly Facet[]
}

/** Builds the roof over an outline as it changes. Null shows the plan as it is. */
export function useLiveRoof(scene: PlanScene, outline: HouseOutline | null): LiveRoof {
  const { facets, outlines, job } = useJob()
  const { frame } = job
  const preview = useMemo(
    () => (outline === null ? null : previewRoof(outline, { facets, outlines, frame })),
    [outline, facets, outlines, frame],
  )
  const lastGood = useRef<Extract<RoofPreview, { ok: true }> | null>(null)
  useEffect(() => {
    if (preview === null) lastGood.current = null
    else if (preview.ok) lastGood.current = preview
  }, [preview])
  const outlineId = outline?.id
  const shown = preview?.ok === false ? lastGood.current : preview
  const others = useMemo(
    () => facets.filter((facet) => facet.from === null || facet.from.outlineId !== outlineId),
    [facets, outlineId],
  )
  const shapes = useShapes(others, shown?.facets ?? NONE, frame)
  const drawing = useMemo(() => ({ ...scene.drawing, ...shapes }), [scene.drawing, shapes])
  const lettersOf = useSettled(drawing, LETTERS_EVERY_MS)
  return useMemo(() => {
    const sentence = preview?.ok === false ? preview.sentence : null
    if (shown === null) return { scene, sentence, goes: [] }
    const goes = sentence === null ? shown.goes : []
    return { scene: { ...scene, drawing, lettersOf, showsLengths: false }, sentence, goes }
  }, [scene, preview, shown, drawing, lettersOf])
}

/** Finding room for all letters takes as long as the roof itself; while a hand moves they follow it at this pace. */
const LETTERS_EVERY_MS = 120

const NONE: readonly Facet[] = []

/** Facets and edges as things to draw. A facet that is as it was before keeps its shape, which need not be drawn again. */
function useShapes(
  others: readonly Facet[],
  own: readonly Facet[],
  frame: PlanFrame,
): Pick<PlanDrawing, 'facets' | 'edges'> {
  const known = useRef(new Map<string, { readonly mark: string; readonly shape: FacetShape }>())
  return useMemo(() => {
    const facets = [...others, ...own]
    const drawn = facets.map((facet) => {
      const { id, letter, outline, pitchRise, downslopeAzimuthDeg } = facet
      const mark = JSON.stringify([letter, outline, pitchRise, downslopeAzimuthDeg, frame])
      const before = known.current.get(id)
      return { id, mark, shape: before?.mark === mark ? before.shape : facetShape(facet, frame) }
    })
    known.current = new Map(drawn.map(({ id, mark, shape }) => [id, { mark, shape }]))
    return { facets: drawn.map(({ shape }) => shape), edges: edgeShapes(facets, frame.upAzimuthDeg) }
  }, [others, own, frame])
}
