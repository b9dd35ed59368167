import type { Photo } from '../../app/evidence/photo.ts'
import { inWalkOrder } from '../../app/evidence/walk-order.ts'

export type PhotoSort = 'time' | 'number'

/** Photos in the order to look at them: of the walk, or of their numbers. */
export function sortedPhotos(photos: readonly Photo[], sort: PhotoSort): readonly Photo[] {
  return sort === 'number' ? [...photos].sort((a, b) => a.number - b.number) : inWalkOrder(photos)
}
