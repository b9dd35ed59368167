import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react'
import type { AppError } from '../../app/contract/app-error.ts'
import type { CallInput, CallOutput } from '../../app/contract/contract.ts'
import type { editProcedures } from '../../app/contract/edits.ts'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { JobId } from '../../app/job/ids.ts'
import type { Reply } from '../../app/contract/procedure.ts'
import { useDesk } from '../client/client-context.tsx'
import type { DeskClient } from '../client/desk-client.ts'
import { useMessages } from '../ui/message.tsx'
import { coalesced } from './coalesced.ts'
import { type AheadChange, runningAhead } from './running-ahead.ts'
import { withChanges } from './with-changes.ts'
import { withTagsAtOnce, withUndoAtOnce } from './shown-at-once.ts'

type EditName = keyof typeof editProcedures | 'placement.accept'
/** Makes one edit of the open job. Tells the person when it is refused and answers null. */
export type Edit = <N extends EditName>(name: N, input: Omit<CallInput<N>, 'jobId'>) => Promise<CallOutput<N> | null>

const SnapshotContext = createContext<JobSnapshot | null>(null)
const EditContext = createContext<Edit | null>(null)

interface JobProviderProps {
  readonly jobId: JobId
  /** Shown until the job is there. */
  readonly waiting: ReactNode
  /** Shown when the job can't be opened. */
  readonly failed: (error: AppError) => ReactNode
  readonly children: ReactNode
}

/** Holds one open job for the screens below and keeps it fresh; the last good one stays when fetching fails. */
export function JobProvider({ jobId, waiting, failed, children }: JobProviderProps) {
  const held = useSnapshot(jobId)
  const edit = useEditor(jobId, held)
  if (held.snapshot === null) return held.error === null ? waiting : failed(held.error)
  return (
    <EditContext value={edit}>
      <SnapshotContext value={held.snapshot}>{children}</SnapshotContext>
    </EditContext>
  )
}

/** The open job as it is known now. */
export function useJob(): JobSnapshot {
  const snapshot = useContext(SnapshotContext)
  if (snapshot === null) throw new Error('useJob is used outside a JobProvider.')
  return snapshot
}

/** The one way for a screen to change the open job. */
export function useEdit(): Edit {
  const edit = useContext(EditContext)
  if (edit === null) throw new Error('useEdit is used outside a JobProvider.')
  return edit
}

interface HeldSnapshot {
  readonly snapshot: JobSnapshot | null
  readonly error: AppError | null
  /** Fetches the job again. */
  readonly refresh: () => Promise<void>
  /** Shows what an edit will do before the desk has answered; a fetch that holds it replaces it. */
  readonly showAtOnce: (change: (snapshot: JobSnapshot) => JobSnapshot) => AheadChange
}

function useSnapshot(jobId: JobId): HeldSnapshot {
  const desk = useDesk()
  const { say } = useMessages()
  const [snapshot, setSnapshot] = useState<JobSnapshot | null>(null)
  const [error, setError] = useState<AppError | null>(null)
  /** The job as the desk told it last; what is shown may run ahead of it. */
  const told = useRef<JobSnapshot | null>(null)
  const isAhead = useRef(false)
  const ahead = useMemo(() => runningAhead<JobSnapshot>(), [])
  const refresh = useMemo(
    () =>
      coalesced(async () => {
        const held = told.current
        const back = ahead.beginFetch()
        const reply = await fetchJob(desk, jobId, held)
        setError(reply.ok ? null : reply.error)
        if (!reply.ok && held !== null) say({ tone: 'error', text: reply.error.message, help: reply.error.help })
        if (!reply.ok || (reply.value === held && !isAhead.current)) return
        told.current = reply.value
        back()
        isAhead.current = !ahead.isEmpty()
        setSnapshot(ahead.over(reply.value))
      }),
    [ahead, desk, jobId, say],
  )
  const showAtOnce = useCallback<HeldSnapshot['showAtOnce']>(
    (change) => {
      isAhead.current = true
      setSnapshot((before) => (before === null ? null : change(before)))
      return ahead.add(change)
    },
    [ahead],
  )
  useEffect(() => {
    void refresh()
    return desk.listen(
      (event) => {
        if (event.type !== 'job-changed' || event.jobId !== jobId) return
        if (told.current === null || event.revision > told.current.revision) void refresh()
      },
      () => void refresh(),
    )
  }, [desk, jobId, refresh])
  return { snapshot, error, refresh, showAtOnce }
}

/** The whole job at first, then what changed since; the very same job where nothing did. */
async function fetchJob(desk: DeskClient, jobId: JobId, held: JobSnapshot | null): Promise<Reply<JobSnapshot>> {
  if (held === null) return desk.call('jobs.open', { jobId })
  const reply = await desk.call('jobs.changes', { jobId, since: held.revision })
  if (!reply.ok) return reply
  return { ok: true, value: reply.value.revision === held.revision ? held : withChanges(held, reply.value) }
}

function useEditor(jobId: JobId, { refresh, showAtOnce }: Pick<HeldSnapshot, 'refresh' | 'showAtOnce'>): Edit {
  const desk = useDesk()
  const { say } = useMessages()
  const underWay = useRef(new Set<Promise<unknown>>())
  return useCallback<Edit>(
    async (name, input) => {
      // Putting `jobId` back makes the whole input again; the compiler can't follow that through the name.
      const whole = { ...input, jobId } as unknown as CallInput<typeof name>
      const isStep = name === 'history.undo' || name === 'history.redo'
      const shown = isStep ? null : showAtOnce((before) => editedAtOnce(before, name, whole))
      // A step back is about the edit made last, which may still be on its way to the desk.
      if (isStep) await Promise.all(underWay.current)
      const answer = desk.call(name, whole)
      underWay.current.add(answer)
      const reply = await answer
      underWay.current.delete(answer)
      if (reply.ok) shown?.answered()
      else shown?.refused()
      if (!reply.ok) say({ tone: 'error', text: reply.error.message, help: reply.error.help })
      await refresh()
      return reply.ok ? reply.value : null
    },
    [desk, jobId, refresh, showAtOnce, say],
  )
}

function editedAtOnce(before: JobSnapshot, name: EditName, input: unknown): JobSnapshot {
  return withUndoAtOnce(isTagging(name, input) ? withTagsAtOnce(before, input) : before)
}

function isTagging(name: EditName, _input: unknown): _input is CallInput<'photos.tag'> {
  return name === 'photos.tag'
}
