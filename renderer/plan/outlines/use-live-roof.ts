import { useEffect, useMemo, useRef } from 'react'
import type { Facet } from '../../../app/roof/facet.ts'
import type { HouseOutline } from '../../../app/roof/house-outline.ts'
import type { FacetShape, PlanDrawing } from '../../../app/roof/plan-drawing.ts'
import { useJob } from '../../state/job-state.tsx'
import { useSettled } from '../../state/use-settled.ts'
import type { PlanScene } from '../plan-canvas.tsx'
import type { DrawnRoof } from './drawn-roof.ts'
import { useRoofThread } from './use-roof-thread.ts'

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
  const around = useMemo(() => ({ facets, outlines, frame }), [facets, outlines, frame])
  const roof = useRoofThread(outline, around)
  const lastGood = useRef<Extract<DrawnRoof, { ok: true }> | null>(null)
  useEffect(() => {
    if (roof === null) lastGood.current = null
    else if (roof.ok) lastGood.current = roof
  }, [roof])
  const shown = roof?.ok === false ? lastGood.current : roof
  const shapes = useKeptShapes(shown?.shapes ?? null)
  const drawing = useMemo(() => ({ ...scene.drawing, ...shapes }), [scene.drawing, shapes])
  const lettersOf = useSettled(drawing, LETTERS_EVERY_MS)
  return useMemo(() => {
    const sentence = roof?.ok === false ? roof.sentence : null
    if (shown === null) return { scene, sentence, goes: [] }
    const goes = sentence === null ? shown.goes : []
    return { scene: { ...scene, drawing, lettersOf, showsLengths: false }, sentence, goes }
  }, [scene, roof, shown, drawing, lettersOf])
}

/** Finding room for all letters takes as long as the roof itself; while a hand moves they follow it at this pace. */
const LETTERS_EVERY_MS = 120

/** A facet that comes from the thread as it was before keeps its shape, which need not be drawn again. */
function useKeptShapes(
  shapes: Pick<PlanDrawing, 'facets' | 'edges'> | null,
): Pick<PlanDrawing, 'facets' | 'edges'> | null {
  const known = useRef(new Map<string, { readonly mark: string; readonly shape: FacetShape }>())
  return useMemo(() => {
    if (shapes === null) return null
    const drawn = shapes.facets.map((shape) => {
      const mark = JSON.stringify(shape)
      const before = known.current.get(shape.id)
      return before?.mark === mark ? before : { mark, shape }
    })
    known.current = new Map(drawn.map((one) => [one.shape.id, one]))
    return { facets: drawn.map(({ shape }) => shape), edges: shapes.edges }
  }, [shapes])
}
