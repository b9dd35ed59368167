import type { PlanPoint } from '../../app/job/places.ts'
import type { CameraShape } from '../../app/roof/plan-drawing.ts'

/** What is drawn under the pointer. */
export interface PlanHit {
  readonly kind: 'facet' | 'finding' | 'photo' | 'reading'
  readonly id: string
}

/** The attribute by which a drawn shape says what it stands for. */
export function hitAttribute(hit: PlanHit): { readonly 'data-plan-hit': string } {
  return { 'data-plan-hit': `${hit.kind} ${hit.id}` }
}

/** What an element of the plan stands for; null for the empty sheet. */
export function readHit(target: EventTarget | null): PlanHit | null {
  if (!(target instanceof Element)) return null
  const text = target.closest('[data-plan-hit]')?.getAttribute('data-plan-hit') ?? ''
  const [kind, id = ''] = text.split(' ')
  if (kind !== 'facet' && kind !== 'finding' && kind !== 'photo' && kind !== 'reading') return null
  return { kind, id }
}

/** Marks the one shape that draws many cameras. */
export const camerasAttribute = { 'data-plan-cameras': '' } as const

/** The camera that is drawn nearest to a place, when an element draws cameras at all. */
export function readCameraHit(
  target: EventTarget | null,
  at: PlanPoint,
  cameras: readonly CameraShape[],
): PlanHit | null {
  if (!(target instanceof Element) || !target.hasAttribute('data-plan-cameras')) return null
  const away = (camera: CameraShape) => Math.hypot(camera.at.xFt - at.xFt, camera.at.yFt - at.yFt)
  const [first, ...rest] = cameras
  if (first === undefined) return null
  return {
    kind: 'photo',
    id: rest.reduce((best, camera) => (away(camera) < away(best) ? camera : best), first).photoId,
  }
}
