import { useCallback, useLayoutEffect, useMemo, useRef } from 'react'
import type { PhotoTagsPatch } from '../../app/contract/edits.ts'
import type { Photo, PhotoTags } from '../../app/evidence/photo.ts'
import type { JobId } from '../../app/job/ids.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { photosById } from './photo-index.ts'
import { useSelection } from '../state/selection.tsx'

type LastTags = Pick<PhotoTags, 'facetId' | 'component' | 'condition' | 'role'>

/** What was tagged last in each job, so that it can be said again. */
const lastTags = new Map<JobId, LastTags>()

export interface Tagging {
  /** The selected photos, in the order they were picked. */
  readonly photos: readonly Photo[]
  /** True when something was tagged before in this job. */
  readonly hasLast: boolean
  /** Changes the given tags of all selected photos as one edit. */
  tag(patch: PhotoTagsPatch): Promise<void>
  /** Gives the selected photos what was tagged last. */
  tagAsLast(): Promise<void>
}

/** Tags the selected photos, all of them as one step of undo. */
export function useTagging(): Tagging {
  const { photos, job } = useJob()
  const edit = useEdit()
  const { selection } = useSelection()
  const ids = selection.kind === 'photos' ? selection.ids : null
  const selected = useMemo(() => {
    if (ids === null) return []
    const byId = photosById(photos)
    return ids.flatMap((id) => byId.get(id) ?? [])
  }, [photos, ids])
  // One function for good: fields that use it need not be drawn again with every selection.
  const latest = useRef(selected)
  useLayoutEffect(() => {
    latest.current = selected
  })
  const tag = useCallback(
    async (patch: PhotoTagsPatch) => {
      const tagged = latest.current
      const lead = tagged.at(-1)
      if (lead === undefined) return
      // Known at once: the next photo may be told the same before the desk has answered.
      const before = lastTags.get(job.id)
      const now = afterPatch(lead.tags, patch)
      lastTags.set(job.id, now)
      const saved = await edit('photos.tag', { photoIds: tagged.map(({ id }) => id), set: patch })
      if (saved !== null || lastTags.get(job.id) !== now) return
      if (before === undefined) lastTags.delete(job.id)
      else lastTags.set(job.id, before)
    },
    [edit, job.id],
  )
  return {
    photos: selected,
    hasLast: lastTags.has(job.id),
    tag,
    tagAsLast: () => {
      const last = lastTags.get(job.id)
      return last === undefined ? Promise.resolve() : tag({ ...last })
    },
  }
}

/** Null takes a tag back; only a tag that is left out of the patch stays. */
function afterPatch(tags: PhotoTags, patch: PhotoTagsPatch): LastTags {
  const { facetId = tags.facetId, component = tags.component, condition = tags.condition, role = tags.role } = patch
  return { facetId, component, condition, role }
}
