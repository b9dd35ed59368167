import { useCallback, useEffect, useRef } from 'react'
import { useLocation, useSearch } from 'wouter'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { jobAddress, readTarget } from './addresses.ts'
import { type Place, selectionOf } from './places.ts'

/** Goes to a place in the open job and selects what is there. */
export function useGoTo(): (place: Place) => void {
  const [, navigate] = useLocation()
  const job = useJob()
  const { select } = useSelection()
  return useCallback(
    ({ workspace, target }) => {
      const selection = target === null ? null : selectionOf(target, job)
      if (selection !== null) select(selection)
      // The state makes each jump an own entry of the history, so that going to the same field twice shows it twice.
      navigate(jobAddress(job.job.id, workspace, target), { state: { jumpedAt: performance.now() } })
    },
    [job, navigate, select],
  )
}

/** Selects what the address points to when a job is opened by its address. */
export function useArrival(): void {
  const search = useSearch()
  const job = useJob()
  const { select } = useSelection()
  const arrived = useRef<string | null>(null)
  useEffect(() => {
    if (arrived.current === search) return
    arrived.current = search
    const target = readTarget(search)
    const selection = target === null ? null : selectionOf(target, job)
    if (selection !== null) select(selection)
  }, [search, job, select])
}
