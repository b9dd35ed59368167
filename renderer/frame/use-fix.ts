import { useCallback } from 'react'
import type { ProblemFix } from '../../app/packet/problem.ts'
import { useEdit, useJob } from '../state/job-state.tsx'

/** Does what a problem's one-step mend says; an ordinary edit, which can be undone. */
export function useFix(): (fix: ProblemFix) => Promise<void> {
  const edit = useEdit()
  const { findings } = useJob()
  return useCallback(
    async (fix) => {
      switch (fix.kind) {
        case 'tag-photo':
          await edit('photos.tag', { photoIds: [fix.photoId], set: fix.set })
          return
        case 'set-clock':
          await edit('cameras.set-clock', { id: fix.cameraId, clock: fix.clock })
          return
        case 'show-photo': {
          const found = findings.find(({ id }) => id === fix.findingId)
          if (found === undefined) return
          const { id, number: _number, ...finding } = found
          const photos = [
            ...finding.photos.filter(({ photoId }) => photoId !== fix.photoId),
            { photoId: fix.photoId, role: fix.role },
          ]
          await edit('findings.save', { id, finding: { ...finding, photos } })
        }
      }
    },
    [edit, findings],
  )
}
