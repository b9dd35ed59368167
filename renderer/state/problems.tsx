import { createContext, type ReactNode, useContext, useEffect, useRef, useState } from 'react'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { useDesk } from '../client/client-context.tsx'
import { useJob } from './job-state.tsx'

const ProblemsContext = createContext<readonly PacketProblem[] | null>(null)

/** A pause after the last change, so that looking through a large job never gets between two key presses. */
const PAUSE_MS = 120
/** As many photos as the desk measures for one call. */
const AT_ONCE = 500

/**
 * Holds what the open job still lacks. It is worked out here from the job that the screen holds, by the same rules by
 * which the desk does when a packet issues.
 */
export function ProblemsProvider({ children }: { children: ReactNode }) {
  const snapshot = useJob()
  const [problems, setProblems] = useState<readonly PacketProblem[]>([])
  const measure = useMeasuring(snapshot)
  useEffect(() => {
    let isWanted = true
    const timer = setTimeout(() => {
      // Loaded apart: the sun and the time zones of the earth need not be there for the first picture.
      void import('./look-through.ts').then(({ lookThrough }) => {
        if (!isWanted) return
        const { problems: found, toMeasure } = lookThrough(snapshot)
        setProblems(found)
        measure.current(toMeasure)
      })
    }, PAUSE_MS)
    return () => {
      isWanted = false
      clearTimeout(timer)
    }
  }, [snapshot, measure])
  return <ProblemsContext value={problems}>{children}</ProblemsContext>
}

/** What the open job still lacks. */
export function useProblems(): readonly PacketProblem[] {
  const problems = useContext(ProblemsContext)
  if (problems === null) throw new Error('useProblems is used outside a ProblemsProvider.')
  return problems
}

/** Asks the desk, once for each photo, how bright it is. */
function useMeasuring({ job }: JobSnapshot) {
  const desk = useDesk()
  const asked = useRef(new Set<PhotoId>())
  const measure = useRef<(ids: readonly PhotoId[]) => void>(() => undefined)
  useEffect(() => {
    measure.current = (ids) => {
      const photoIds = ids.filter((id) => !asked.current.has(id)).slice(0, AT_ONCE)
      if (photoIds.length === 0) return
      for (const id of photoIds) asked.current.add(id)
      void desk.call('jobs.measure-brightness', { jobId: job.id, photoIds })
    }
  }, [desk, job.id])
  return measure
}
