import { useDeferredValue, useEffect, useMemo, useRef } from 'react'
import { drawPlan } from '../../../app/roof/draw-plan.ts'
import type { Facet } from '../../../app/roof/facet.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import { useJob } from '../../state/job-state.tsx'
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
  // Handles follow the hand at once; the roof may follow them a frame later.
  const calm = useDeferredValue(outline)
  const preview = useMemo(
    () => (calm === null ? null : previewRoof(calm, { facets, outlines, frame })),
    [calm, facets, outlines, frame],
  )
  const lastGood = useRef<Extract<RoofPreview, { ok: true }> | null>(null)
  useEffect(() => {
    if (preview === null) lastGood.current = null
    else if (preview.ok) lastGood.current = preview
  }, [preview])
  const outlineId = outline?.id
  const shown = preview?.ok === false ? lastGood.current : preview
  const drawing = useMemo(() => {
    if (shown === null) return null
    const others = facets.filter((facet) => facet.from === null || facet.from.outlineId !== outlineId)
    return drawPlan({ facets: [...others, ...shown.facets], findings: [], photos: [], frame, frontAzimuthDeg: null })
  }, [shown, facets, outlineId, frame])
  return useMemo(() => {
    const sentence = preview?.ok === false ? preview.sentence : null
    if (shown === null || drawing === null) return { scene, sentence, goes: [] }
    const { facets: shapes, edges } = drawing
    const goes = sentence === null ? shown.goes : []
    return { scene: { ...scene, drawing: { ...scene.drawing, facets: shapes, edges } }, sentence, goes }
  }, [scene, preview, shown, drawing])
}
