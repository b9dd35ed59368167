import type { CallInput } from '../../app/contract/contract.ts'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { patchedTags, photoTagsPatchSchema } from '../../app/contract/edits.ts'
import type { Photo } from '../../app/evidence/photo.ts'

/**
 * A job as it will be once the desk has taken the tags: shown at once, since people tag faster than a large job is
 * fetched. What the desk then answers replaces it.
 */
export function withTagsAtOnce(
  snapshot: JobSnapshot,
  { photoIds, set }: Omit<CallInput<'photos.tag'>, 'jobId'>,
): JobSnapshot {
  const patch = photoTagsPatchSchema.safeParse(set)
  if (!patch.success) return snapshot
  const tagged = new Set<string>(photoIds)
  const retag = (photo: Photo): Photo => ({ ...photo, tags: patchedTags(photo.tags, patch.data) })
  return { ...snapshot, photos: snapshot.photos.map((photo) => (tagged.has(photo.id) ? retag(photo) : photo)) }
}

/**
 * A job with an edit under way, which can be undone from the moment it was made: an undo pressed before the desk has
 * answered would otherwise find nothing to undo.
 */
export function withUndoAtOnce(snapshot: JobSnapshot): JobSnapshot {
  return { ...snapshot, history: { undo: 'being saved', redo: null } }
}
