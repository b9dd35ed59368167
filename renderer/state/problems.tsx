import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { useDesk } from '../client/client-context.tsx'
import { coalesced } from './coalesced.ts'
import { useJob } from './job-state.tsx'

const ProblemsContext = createContext<readonly PacketProblem[] | null>(null)

/** Holds what the open job still lacks, asked for again whenever the job changes. */
export function ProblemsProvider({ children }: { children: ReactNode }) {
  const desk = useDesk()
  const snapshot = useJob()
  const jobId = snapshot.job.id
  const [problems, setProblems] = useState<readonly PacketProblem[]>([])
  const refresh = useMemo(
    () =>
      coalesced(async () => {
        const reply = await desk.call('packet.problems', { jobId })
        if (reply.ok) setProblems(reply.value.problems)
      }),
    [desk, jobId],
  )
  useEffect(() => {
    void refresh()
  }, [refresh, snapshot])
  return <ProblemsContext value={problems}>{children}</ProblemsContext>
}

/** What the open job still lacks. */
export function useProblems(): readonly PacketProblem[] {
  const problems = useContext(ProblemsContext)
  if (problems === null) throw new Error('useProblems is used outside a ProblemsProvider.')
  return problems
}
