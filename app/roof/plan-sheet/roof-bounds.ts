import type { PlanPoint } from '../../job/places.ts'
import type { PlanBounds, PlanDrawing } from '../plan-drawing.ts'

/** What the roof, its edges and its pins cover, a foot at least; the drawing's own bounds when there is nothing. */
export function roofBounds(drawing: PlanDrawing): PlanBounds {
  const points = [
    ...drawing.facets.flatMap((facet) => facet.outline),
    ...drawing.edges.flatMap((edge) => [edge.from, edge.to]),
    ...drawing.pins.flatMap((pin) => [...pin.points, pin.markerAt]),
    ...(drawing.doorAt == null ? [] : [drawing.doorAt]),
  ]
  return points.length === 0 ? atLeastAFoot(drawing.bounds) : atLeastAFoot(boundsOf(points))
}

/** The box around points. */
export function boundsOf(points: readonly PlanPoint[]): PlanBounds {
  const start = { minXFt: Infinity, minYFt: Infinity, maxXFt: -Infinity, maxYFt: -Infinity }
  return points.reduce(
    (b, p) => ({
      minXFt: Math.min(b.minXFt, p.xFt),
      minYFt: Math.min(b.minYFt, p.yFt),
      maxXFt: Math.max(b.maxXFt, p.xFt),
      maxYFt: Math.max(b.maxYFt, p.yFt),
    }),
    start,
  )
}

function atLeastAFoot(bounds: PlanBounds): PlanBounds {
  return {
    ...bounds,
    maxXFt: Math.max(bounds.maxXFt, bounds.minXFt + 1),
    maxYFt: Math.max(bounds.maxYFt, bounds.minYFt + 1),
  }
}
