import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react'
import type { LogEntry } from '../../app/evidence/log-entry.ts'
import type { FacetId, FindingId, JobId, PhotoId, ReadingId } from '../../app/job/ids.ts'
import { useDesk } from '../client/client-context.tsx'
import { useJob } from './job-state.tsx'
import { relatedFacetIds, relatedFindingIds, relatedPhotoIds, relatedReadingIds, type Selection } from './relations.ts'

export { type Selection } from './relations.ts'

interface SelectionState {
  readonly selection: Selection
  select(selection: Selection): void
  /** The selected log entry, once it has been read. */
  readonly entry: LogEntry | null
}

const SelectionContext = createContext<SelectionState | null>(null)

/** Holds what is selected in the open job, so that every view shows the same selection. */
export function SelectionProvider({ jobId, children }: { jobId: JobId; children: ReactNode }) {
  const desk = useDesk()
  const [selection, select] = useState<Selection>({ kind: 'none' })
  const [entry, setEntry] = useState<LogEntry | null>(null)
  const seq = selection.kind === 'entry' ? selection.seq : null
  useEffect(() => {
    setEntry(null)
    if (seq === null) return undefined
    let wanted = true
    void desk.call('log.page', { jobId, afterSeq: seq - 1, limit: 1 }).then((reply) => {
      if (wanted && reply.ok) setEntry(reply.value.entries[0] ?? null)
    })
    return () => {
      wanted = false
    }
  }, [desk, jobId, seq])
  const state = useMemo(() => ({ selection, select, entry }), [selection, entry])
  return <SelectionContext value={state}>{children}</SelectionContext>
}

/** What is selected in the open job, and the way to select something else. */
export function useSelection(): SelectionState {
  const state = useContext(SelectionContext)
  if (state === null) throw new Error('useSelection is used outside a SelectionProvider.')
  return state
}

/** The records that belong to the present selection, for views to highlight. */
export interface Related {
  readonly photoIds: ReadonlySet<PhotoId>
  readonly findingIds: ReadonlySet<FindingId>
  readonly facetIds: ReadonlySet<FacetId>
  readonly readingIds: ReadonlySet<ReadingId>
}

/** What every view highlights: the selected records and those they belong together with. */
export function useRelated(): Related {
  const job = useJob()
  const { selection, entry } = useSelection()
  return useMemo(
    () => ({
      photoIds: relatedPhotoIds(selection, job, entry),
      findingIds: relatedFindingIds(selection, job, entry),
      facetIds: relatedFacetIds(selection, job, entry),
      readingIds: relatedReadingIds(selection, job),
    }),
    [selection, job, entry],
  )
}
