import type { PhotoId } from '../job/ids.ts'
import { photoLabel, type Photo, type PlacedBetween } from './photo.ts'

/**
 * Photos in the order of the walk: by time, then by number; those without a time where a person placed them; those that
 * nobody placed last, by number. A place beside a photo that has no place itself, or that is gone, counts as none.
 */
export function inWalkOrder(photos: readonly Photo[]): readonly Photo[] {
  const timed = photos
    .filter(({ time }) => time.instantMs !== null)
    .sort((a, b) => (a.time.instantMs ?? 0) - (b.time.instantMs ?? 0) || a.number - b.number)
  const untimed = photos.filter(({ time }) => time.instantMs === null).sort((a, b) => a.number - b.number)
  if (untimed.length === 0) return timed
  const order = [...timed]
  let waiting: readonly Photo[] = untimed
  for (let before = -1; before !== waiting.length;) {
    before = waiting.length
    waiting = waiting.filter((photo) => !put(order, photo))
  }
  return [...order, ...waiting]
}

/** True when the photo stands where a person put it and not where its time puts it. */
export function isPlacedByHand({ time, tags }: Photo): boolean {
  return time.instantMs === null && tags.placedBetween !== undefined
}

/** The place that comes right after a photo in the order of the walk, for one or more others; null as `after` is the beginning. */
export function placeAfter(
  photos: readonly Photo[],
  { afterId, moving }: { afterId: PhotoId | null; moving: readonly PhotoId[] },
): PlacedBetween | null {
  const moved = new Set<PhotoId>(moving)
  const order = inWalkOrder(photos).filter((photo) => !moved.has(photo.id) && hasPlace(photo))
  const at = afterId === null ? -1 : order.findIndex(({ id }) => id === afterId)
  if (afterId !== null && at < 0) return null
  const beforeId = order[at + 1]?.id ?? null
  return afterId === null && beforeId === null ? null : { afterId, beforeId }
}

/** "placed by hand between P-012 and P-013; time not known"; null for photos with a time or without a place. */
export function placedWords(photo: Photo, photoById: ReadonlyMap<PhotoId, Photo>): string | null {
  const { placedBetween } = photo.tags
  if (placedBetween === undefined || photo.time.instantMs !== null) return null
  const label = (id: PhotoId | null) => {
    const other = id === null ? undefined : photoById.get(id)
    return other === undefined ? null : photoLabel(other.number)
  }
  const after = label(placedBetween.afterId)
  const before = label(placedBetween.beforeId)
  if (after === null && before === null) return null
  const where =
    after === null ? `before ${before}` : before === null ? `after ${after}` : `between ${after} and ${before}`
  return `placed by hand ${where}; time not known`
}

function hasPlace(photo: Photo): boolean {
  return photo.time.instantMs !== null || photo.tags.placedBetween !== undefined
}

/** Puts a photo into the order where its place says; false while its neighbours are not there. */
function put(order: Photo[], photo: Photo): boolean {
  const { placedBetween } = photo.tags
  if (placedBetween === undefined) return false
  const at = (id: PhotoId | null) => (id === null ? -1 : order.findIndex((one) => one.id === id))
  const after = at(placedBetween.afterId)
  const before = at(placedBetween.beforeId)
  if (after < 0 && before < 0) return false
  let to = before > after ? before : after + 1
  // Several that were put in the same place stand in the order of their numbers.
  for (
    let next = order[to];
    before <= after && next !== undefined && isSamePlace(next, placedBetween);
    next = order[to]
  ) {
    to += 1
  }
  order.splice(to, 0, photo)
  return true
}

function isSamePlace({ time, tags: { placedBetween } }: Photo, { afterId, beforeId }: PlacedBetween): boolean {
  return time.instantMs === null && placedBetween?.afterId === afterId && placedBetween.beforeId === beforeId
}
