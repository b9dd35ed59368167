import { useEffect, useMemo, useRef, useState } from 'react'
import type { CallOutput } from '../../app/contract/contract.ts'
import type { LogEntry } from '../../app/evidence/log-entry.ts'
import { useDesk } from '../client/client-context.tsx'
import { coalesced } from '../state/coalesced.ts'
import { useJob } from '../state/job-state.tsx'
import { useMessages } from '../ui/message.tsx'

const PAGE = 1000

/** Whether the chain of the log holds. */
export type ChainState = { readonly kind: 'checking' } | ({ readonly kind: 'checked' } & CallOutput<'log.verify'>)

/** All entries of the open job's log so far; new ones are added as the job changes. */
export function useLogEntries(): readonly LogEntry[] {
  const desk = useDesk()
  const { say } = useMessages()
  const { job, log } = useJob()
  const [entries, setEntries] = useState<readonly LogEntry[]>([])
  const read = useRef<readonly LogEntry[]>([])
  const jobId = job.id
  const readOn = useMemo(
    () =>
      coalesced(async () => {
        for (;;) {
          const reply = await desk.call('log.page', { jobId, afterSeq: read.current.at(-1)?.seq ?? 0, limit: PAGE })
          if (!reply.ok) {
            say({ tone: 'error', text: reply.error.message, help: reply.error.help })
            return
          }
          if (reply.value.entries.length > 0) {
            read.current = [...read.current, ...reply.value.entries]
            setEntries(read.current)
          }
          if (reply.value.entries.length < PAGE) return
        }
      }),
    [desk, jobId, say],
  )
  useEffect(() => {
    void readOn()
  }, [readOn, log.entries])
  return entries
}

/** Replays the chain of the open job's log, again whenever the log grew. */
export function useChainState(): ChainState {
  const desk = useDesk()
  const { job, log } = useJob()
  const [state, setState] = useState<ChainState>({ kind: 'checking' })
  const jobId = job.id
  useEffect(() => {
    let wanted = true
    void desk.call('log.verify', { jobId }).then((reply) => {
      if (wanted && reply.ok) setState({ kind: 'checked', ...reply.value })
    })
    return () => {
      wanted = false
    }
  }, [desk, jobId, log.headHash])
  return state
}
