import { findingLabel, type Finding } from '../../app/evidence/finding.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { FindingId, JobId } from '../../app/job/ids.ts'
import { draftFromPhotos, findingOfDraft } from '../findings/finding-draft.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useMessages } from '../ui/message.tsx'
import { countWords } from '../ui/quantity-words.ts'

/** The finding that photos went to last, in each job. */
const lastFindings = new Map<JobId, FindingId>()

export interface QuickFindings {
  /** The finding that photos went to last; null when there was none yet. */
  readonly last: Finding | null
  /** Makes a finding of what the photos are tagged with; false when they don't say enough. */
  make(photos: readonly Photo[]): boolean
  /** Shows photos with a finding, those that are there already left as they are. */
  add(finding: Finding, photos: readonly Photo[]): void
}

/** Findings made of photos, or given more photos, by one key. */
export function useQuickFindings(): QuickFindings {
  const { job, findings } = useJob()
  const edit = useEdit()
  const { say } = useMessages()
  const lastId = lastFindings.get(job.id)
  return {
    last: findings.find(({ id }) => id === lastId) ?? findings.at(-1) ?? null,
    make(photos) {
      const made = findingOfDraft(draftFromPhotos(photos))
      if (!('finding' in made)) return false
      void edit('findings.save', { id: null, finding: made.finding }).then((saved) => {
        if (saved === null) return
        lastFindings.set(job.id, saved.id)
        say({
          tone: 'done',
          text: `${findingLabel(saved.number)} is made of ${countWords(photos.length, 'photo')}. Extent and cause are still open.`,
        })
      })
      return true
    },
    add(finding, photos) {
      const { id, number, ...rest } = finding
      const shown = new Set(rest.photos.map(({ photoId }) => photoId))
      const more = photos
        .filter((photo) => !shown.has(photo.id))
        .map((photo) => ({ photoId: photo.id, role: photo.tags.role ?? ('other' as const) }))
      lastFindings.set(job.id, id)
      if (more.length === 0) return say({ tone: 'note', text: `${findingLabel(number)} shows these photos already.` })
      void edit('findings.save', { id, finding: { ...rest, photos: [...rest.photos, ...more] } }).then((saved) => {
        if (saved !== null)
          say({ tone: 'done', text: `${countWords(more.length, 'photo')} added to ${findingLabel(number)}.` })
      })
    },
  }
}
