import type { PlanPoint } from '../../app/job/places.ts'
import type { Pin } from '../../app/evidence/finding.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { containsPoint } from '../../app/roof/polygon.ts'

/** The facet that a pin stands on: the one that holds its point, or the middle of a line or area; null off the roof. */
export function facetUnderPin(facets: readonly Facet[], pin: Pin): Facet | null {
  const at = pin.kind === 'point' ? pin.at : meanOf(pin.points)
  return facets.find((facet) => containsPoint(facet.outline, at)) ?? null
}

function meanOf(points: readonly PlanPoint[]): PlanPoint {
  const sum = points.reduce((total, point) => ({ xFt: total.xFt + point.xFt, yFt: total.yFt + point.yFt }), {
    xFt: 0,
    yFt: 0,
  })
  return { xFt: sum.xFt / points.length, yFt: sum.yFt / points.length }
}
