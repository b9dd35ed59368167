import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'

const known = new WeakMap<readonly Photo[], ReadonlyMap<PhotoId, Photo>>()

/** The photos of a job by identity, made once for each list that the desk sends. */
export function photosById(photos: readonly Photo[]): ReadonlyMap<PhotoId, Photo> {
  const before = known.get(photos)
  if (before !== undefined) return before
  const made = new Map(photos.map((photo) => [photo.id, photo]))
  known.set(photos, made)
  return made
}
