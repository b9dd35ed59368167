import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useRef, useState } from 'react'
import type { AppError } from '../../app/contract/app-error.ts'
import type { CallInput, CallOutput } from '../../app/contract/contract.ts'
import type { editProcedures } from '../../app/contract/edits.ts'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { JobId } from '../../app/job/ids.ts'
import { useDesk } from '../client/client-context.tsx'
import { useMessages } from '../ui/message.tsx'
import { coalesced } from './coalesced.ts'

type EditName = keyof typeof editProcedures
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
  const { snapshot, error, refresh } = useSnapshot(jobId)
  const edit = useEditor(jobId, refresh)
  if (snapshot === null) return error === null ? waiting : failed(error)
  return (
    <EditContext value={edit}>
      <SnapshotContext value={snapshot}>{children}</SnapshotContext>
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

function useSnapshot(jobId: JobId) {
  const desk = useDesk()
  const { say } = useMessages()
  const [snapshot, setSnapshot] = useState<JobSnapshot | null>(null)
  const [error, setError] = useState<AppError | null>(null)
  const held = useRef(false)
  const refresh = useMemo(
    () =>
      coalesced(async () => {
        const reply = await desk.call('jobs.open', { jobId })
        if (reply.ok) {
          held.current = true
          setSnapshot(reply.value)
          setError(null)
          return
        }
        setError(reply.error)
        if (held.current) say({ tone: 'error', text: reply.error.message, help: reply.error.help })
      }),
    [desk, jobId, say],
  )
  useEffect(() => {
    void refresh()
    return desk.listen((event) => {
      if (event.type === 'job-changed' && event.jobId === jobId) void refresh()
    })
  }, [desk, jobId, refresh])
  return { snapshot, error, refresh }
}

function useEditor(jobId: JobId, refresh: () => Promise<void>): Edit {
  const desk = useDesk()
  const { say } = useMessages()
  return useCallback<Edit>(
    async (name, input) => {
      // Putting `jobId` back makes the whole input again; the compiler can't follow that through the name.
      const whole = { ...input, jobId } as unknown as CallInput<typeof name>
      const reply = await desk.call(name, whole)
      if (!reply.ok) {
        say({ tone: 'error', text: reply.error.message, help: reply.error.help })
        return null
      }
      await refresh()
      return reply.value
    },
    [desk, jobId, refresh, say],
  )
}
