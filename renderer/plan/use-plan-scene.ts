import { useMemo } from 'react'
import { drawPlan } from '../../app/roof/draw-plan.ts'
import { useJob } from '../state/job-state.tsx'
import { useRelated, useSelection } from '../state/selection.tsx'
import type { ShapeState } from './facet-shapes.tsx'
import type { PlanScene } from './plan-canvas.tsx'
import type { PlanHighlights } from './plan-shapes.tsx'
import { usePlanStage } from './use-plan-stage.ts'

/** The open job's plan, what of it is selected, and the stage it is shown on. */
export function usePlanScene(showsCameras: boolean, showsLengths = true): PlanScene {
  const { facets, findings, photos, job } = useJob()
  const { frame } = job
  const { frontAzimuthDeg, doorAt } = job.sheet.property
  const drawing = useMemo(
    () => drawPlan({ facets, findings, photos: showsCameras ? photos : [], frame, frontAzimuthDeg, doorAt }),
    [facets, findings, photos, frame, frontAzimuthDeg, doorAt, showsCameras],
  )
  const highlights = usePlanHighlights()
  const stage = usePlanStage(drawing.bounds)
  return useMemo(() => ({ stage, drawing, highlights, showsLengths }), [stage, drawing, highlights, showsLengths])
}

function usePlanHighlights(): PlanHighlights {
  const { selection } = useSelection()
  const related = useRelated()
  return useMemo(() => {
    const state = (isSelected: boolean, isRelated: boolean): ShapeState =>
      isSelected ? 'selected' : isRelated ? 'related' : 'plain'
    const has = (ids: ReadonlySet<string>, id: string) => ids.has(id)
    const photoIds: ReadonlySet<string> = new Set(selection.kind === 'photos' ? selection.ids : [])
    return {
      facet: (id) => state(selection.kind === 'facet' && selection.id === id, has(related.facetIds, id)),
      finding: (id) => state(selection.kind === 'finding' && selection.id === id, has(related.findingIds, id)),
      photo: (id) => state(photoIds.has(id), has(related.photoIds, id)),
    }
  }, [selection, related])
}
