import type { Photo } from '../../app/evidence/photo.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { isUntagged } from './photo-filter.ts'
import { groupedPhotos } from './photo-groups.ts'
import { sortedPhotos } from './photo-order.ts'

/** The photos taken around one without a pause longer than the gap, in order of time; itself among them. */
export function gapGroupOf(photos: readonly Photo[], id: PhotoId, gapMs: number): readonly PhotoId[] {
  const group = gapGroups(photos, gapMs).find((one) => one.some((photo) => photo.id === id))
  return group?.map((photo) => photo.id) ?? []
}

/** The next photo of the sheet that is untagged, from the top again after the last; null when none is left. */
export function nextUntagged(order: readonly Photo[], from: PhotoId | null): PhotoId | null {
  const start = order.findIndex(({ id }) => id === from) + 1
  return [...order.slice(start), ...order.slice(0, start)].find(isUntagged)?.id ?? null
}

/** The untagged photos of the next group between two pauses that has some; empty when none is left. */
export function nextUntaggedGroup(photos: readonly Photo[], from: PhotoId | null, gapMs: number): readonly PhotoId[] {
  const groups = gapGroups(photos, gapMs)
  const at = groups.findIndex((group) => group.some(({ id }) => id === from))
  const inTurn = [...groups.slice(at + 1), ...groups.slice(0, at + 1)]
  return inTurn.find((group) => group.some(isUntagged))?.flatMap((photo) => (isUntagged(photo) ? photo.id : [])) ?? []
}

function gapGroups(photos: readonly Photo[], gapMs: number): readonly (readonly Photo[])[] {
  return groupedPhotos(sortedPhotos(photos, 'time'), { grouping: 'gap', gapMs }, []).map((group) => group.photos)
}
