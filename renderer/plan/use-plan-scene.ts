import { useMemo } from 'react'
import { corrected } from '../../app/evidence/placement/learn-frame.ts'
import type { CameraId } from '../../app/job/ids.ts'
import { cameraShapes, drawPlan } from '../../app/roof/draw-plan.ts'
import { useJob } from '../state/job-state.tsx'
import { usePlacement } from '../state/placement.tsx'
import { useRelated, useSelection } from '../state/selection.tsx'
import type { ShapeState } from './facet-shapes.tsx'
import type { PlanScene } from './plan-canvas.tsx'
import type { PlanHighlights } from './plan-shapes.tsx'
import { usePlanStage } from './use-plan-stage.ts'

/** Which cameras the plan shows, and whether where they wrote they were or where they were by what was learned. */
export type CamerasShown = 'none' | 'as-written' | 'corrected'

/** The open job's plan, what of it is selected, and the stage it is shown on. */
export function usePlanScene(camerasShown: CamerasShown, showsLengths = true): PlanScene {
  const { facets, findings, job } = useJob()
  const { frame } = job
  const { frontAzimuthDeg, doorAt } = job.sheet.property
  const roof = useMemo(
    () => drawPlan({ facets, findings, photos: [], frame, frontAzimuthDeg, doorAt }),
    [facets, findings, frame, frontAzimuthDeg, doorAt],
  )
  const cameras = useCameraShapes(camerasShown)
  const drawing = useMemo(() => ({ ...roof, cameras }), [roof, cameras])
  const highlights = usePlanHighlights()
  const stage = usePlanStage(drawing.bounds)
  return useMemo(() => ({ stage, drawing, highlights, showsLengths }), [stage, drawing, highlights, showsLengths])
}

function useCameraShapes(shown: CamerasShown): PlanScene['drawing']['cameras'] {
  const { photos, job } = useJob()
  const { placement } = usePlacement(shown !== 'none')
  const frames = placement?.frames
  return useMemo(() => {
    if (shown === 'none') return []
    const shapes = cameraShapes(photos, job.frame)
    if (shown === 'as-written' || frames === undefined || frames.length === 0) return shapes
    const cameraOf = new Map<string, CameraId | null>(photos.map(({ id, cameraId }) => [id, cameraId]))
    const frameOf = new Map(frames.map((frame) => [frame.cameraId, frame]))
    return shapes.map((shape) => {
      const frame = frameOf.get(cameraOf.get(shape.photoId) ?? null)
      return frame === undefined ? shape : { ...shape, at: corrected(shape.at, frame) }
    })
  }, [photos, job.frame, shown, frames])
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
      reading: (id) => state(selection.kind === 'reading' && selection.id === id, has(related.readingIds, id)),
    }
  }, [selection, related])
}
