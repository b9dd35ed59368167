import type { PlanPoint } from '../../job/places.ts'
import { lengthFt, sidesOf, type Side } from '../polygon.ts'
import type { BuiltRoof } from './built-roof.ts'
import { ringsOf, type RoofOutline } from './roof-outline.ts'

/** Outlines drawn to the same wall agree within this: half an inch. */
const ON_WALL_FT = 1 / 24

/** Shared stretches shorter than this are two corners that touch, not a step. */
const LEAST_STEP_FT = 1 / 12

/** A stretch along which a lower roof ends at the wall of a higher one. Roofs are positions in the list of outlines. */
export interface WallStep {
  readonly lower: number
  readonly higher: number
  readonly from: PlanPoint
  readonly to: PlanPoint
  readonly planLengthFt: number
  /** Along the lower roof's surface. */
  readonly trueLengthFt: number
}

/** A roof, the outline that it stands on, and its place in the list. */
export interface PlacedRoof {
  readonly index: number
  readonly outline: RoofOutline
  readonly roof: BuiltRoof
}

/** Where the outer edges of one roof run along the sides of a higher outline. None when its eaves are not lower. */
export function wallSteps(lower: PlacedRoof, higher: PlacedRoof): readonly WallStep[] {
  if ((lower.outline.eaveHeightFt ?? 0) >= (higher.outline.eaveHeightFt ?? 0)) return []
  const walls = ringsOf(higher.outline).flatMap((ring) => sidesOf(ring.corners))
  const { vertices, edges } = lower.roof
  return edges.flatMap((edge) => {
    const [from, to] = [vertices[edge.from], vertices[edge.to]]
    if (from === undefined || to === undefined || edge.facets.length !== 1 || edge.kind === 'step') return []
    return walls.flatMap((wall): readonly WallStep[] => {
      const shared = sharedStretch({ index: 0, from, to }, wall)
      if (shared === null) return []
      const planLengthFt = lengthFt(shared.from, shared.to)
      const trueLengthFt = (planLengthFt * edge.trueLengthFt) / edge.planLengthFt
      return [{ lower: lower.index, higher: higher.index, ...shared, planLengthFt, trueLengthFt }]
    })
  })
}

/** The part of a line that runs along a wall; null when it does not. */
function sharedStretch(line: Side, wall: Side): { readonly from: PlanPoint; readonly to: PlanPoint } | null {
  const wholeFt = lengthFt(line.from, line.to)
  const [x, y] = [(line.to.xFt - line.from.xFt) / wholeFt, (line.to.yFt - line.from.yFt) / wholeFt]
  const placeOf = ({ xFt, yFt }: PlanPoint) => ({
    alongFt: (xFt - line.from.xFt) * x + (yFt - line.from.yFt) * y,
    offFt: (xFt - line.from.xFt) * y - (yFt - line.from.yFt) * x,
  })
  const [a, b] = [placeOf(wall.from), placeOf(wall.to)]
  const startFt = Math.max(0, Math.min(a.alongFt, b.alongFt))
  const endFt = Math.min(wholeFt, Math.max(a.alongFt, b.alongFt))
  if (endFt - startFt < LEAST_STEP_FT) return null
  // How far the wall is off at both ends of the stretch: a short line says too little of where it runs far away.
  const offAt = (alongFt: number) => a.offFt + ((b.offFt - a.offFt) * (alongFt - a.alongFt)) / (b.alongFt - a.alongFt)
  if (Math.max(Math.abs(offAt(startFt)), Math.abs(offAt(endFt))) > ON_WALL_FT) return null
  const at = (alongFt: number) => ({ xFt: line.from.xFt + alongFt * x, yFt: line.from.yFt + alongFt * y })
  return { from: at(startFt), to: at(endFt) }
}
