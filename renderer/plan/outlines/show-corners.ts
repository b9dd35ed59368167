import type { PlanPoint } from '../../../app/job/places.ts'
import { fittedView } from '../plan-view.ts'
import type { PlanStage } from '../use-plan-stage.ts'

/** Room round what is shown, feet: dimensions stand there. */
const MARGIN_FT = 6
/** Room at the foot of the sheet for the scale bar and the legend, pixels. */
const FOOT_PX = 44

/** Moves and zooms the sheet so that all of these corners are in sight. */
export function showCorners(stage: PlanStage, corners: readonly PlanPoint[]): void {
  const { view, size } = stage
  if (corners.length === 0 || size.width === 0) return
  const across = corners.map(({ xFt }) => xFt)
  const up = corners.map(({ yFt }) => yFt)
  const bounds = {
    minXFt: Math.min(...across) - MARGIN_FT,
    maxXFt: Math.max(...across) + MARGIN_FT,
    minYFt: Math.min(...up) - MARGIN_FT,
    maxYFt: Math.max(...up) + MARGIN_FT,
  }
  const wanted = fittedView(bounds, size, FOOT_PX)
  const factor = wanted.scale / view.scale
  stage.zoom(factor, { x: 0, y: 0 })
  stage.pan({ x: wanted.originX - view.originX * factor, y: wanted.originY - view.originY * factor })
}
