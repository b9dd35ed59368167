import type { Photo } from '../evidence/photo.ts'
import type { PlanBounds, PlanDrawing } from '../roof/plan-drawing.ts'
import type { PacketContext } from './packet-context.ts'

/** A camera farther off the plan than this is not drawn: the plan would shrink to a speck. */
const FARTHEST_FT = 60
/** Room round a camera that stands beside the roof, feet. */
const MARGIN_FT = 4

/** The small plan beside a photo, and how far off the plan the camera says it was when it is too far to draw. */
export interface PhotoInset {
  readonly drawing: PlanDrawing | null
  readonly offPlanFt: number | null
}

/** The plan with the photo's facet picked out, its findings' pins and its camera; no drawing when none of these is known. */
export function photoInset(photo: Photo, context: PacketContext): PhotoInset {
  const { plan } = context
  const camera = plan.cameras.find(({ photoId }) => photoId === photo.id)
  const offFt = camera === undefined ? 0 : distanceOff(plan.bounds, camera.at)
  const drawn = camera !== undefined && offFt <= FARTHEST_FT ? [camera] : []
  const shown = new Set((context.findingsByPhoto.get(photo.id) ?? []).map(({ finding }) => String(finding.id)))
  const pins = plan.pins.filter(({ findingId }) => shown.has(findingId))
  const picked = plan.facets.some(({ id }) => id === photo.tags.facetId)
  const offPlanFt = camera !== undefined && drawn.length === 0 ? offFt : null
  if (plan.facets.length === 0 || (drawn.length === 0 && pins.length === 0 && !picked)) {
    return { drawing: null, offPlanFt }
  }
  return {
    drawing: {
      ...plan,
      bounds: drawn.reduce((bounds, { at }) => reaching(bounds, at), plan.bounds),
      facets: plan.facets.map((facet) => (facet.id === photo.tags.facetId ? { ...facet, picked: true } : facet)),
      pins,
      cameras: drawn,
    },
    offPlanFt,
  }
}

function distanceOff(bounds: PlanBounds, { xFt, yFt }: { readonly xFt: number; readonly yFt: number }): number {
  const dx = Math.max(bounds.minXFt - xFt, 0, xFt - bounds.maxXFt)
  const dy = Math.max(bounds.minYFt - yFt, 0, yFt - bounds.maxYFt)
  return Math.hypot(dx, dy)
}

function reaching(bounds: PlanBounds, { xFt, yFt }: { readonly xFt: number; readonly yFt: number }): PlanBounds {
  return {
    minXFt: Math.min(bounds.minXFt, xFt - MARGIN_FT),
    minYFt: Math.min(bounds.minYFt, yFt - MARGIN_FT),
    maxXFt: Math.max(bounds.maxXFt, xFt + MARGIN_FT),
    maxYFt: Math.max(bounds.maxYFt, yFt + MARGIN_FT),
  }
}
