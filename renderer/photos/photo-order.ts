import type { Photo } from '../../app/evidence/photo.ts'

export type PhotoSort = 'time' | 'number'

/** Photos in the order to look at them. By time, those whose time is not known come last, by number. */
export function sortedPhotos(photos: readonly Photo[], sort: PhotoSort): readonly Photo[] {
  return [...photos].sort(sort === 'number' ? byNumber : byTime)
}

function byNumber(a: Photo, b: Photo): number {
  return a.number - b.number
}

function byTime(a: Photo, b: Photo): number {
  const aMs = a.time.instantMs
  const bMs = b.time.instantMs
  if (aMs === null || bMs === null) return Number(aMs === null) - Number(bMs === null) || byNumber(a, b)
  return aMs - bMs || byNumber(a, b)
}
