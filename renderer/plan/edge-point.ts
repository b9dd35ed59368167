import type { PlanPoint } from '../../app/job/places.ts'
import type { PlanBounds } from '../../app/roof/plan-drawing.ts'

/** Where a ray from the middle of the bounds leaves them. */
export function edgePoint(bounds: PlanBounds, towards: { readonly x: number; readonly y: number }): PlanPoint {
  const halfX = (bounds.maxXFt - bounds.minXFt) / 2
  const halfY = (bounds.maxYFt - bounds.minYFt) / 2
  const reach = Math.min(
    Math.abs(towards.x) < 1e-9 ? Infinity : halfX / Math.abs(towards.x),
    Math.abs(towards.y) < 1e-9 ? Infinity : halfY / Math.abs(towards.y),
  )
  return {
    xFt: (bounds.minXFt + bounds.maxXFt) / 2 + towards.x * reach,
    yFt: (bounds.minYFt + bounds.maxYFt) / 2 + towards.y * reach,
  }
}
