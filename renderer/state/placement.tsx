import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react'
import type { Placement, Suggestion } from '../../app/contract/placement.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import { useDesk } from '../client/client-context.tsx'
import { coalesced } from './coalesced.ts'
import { useJob } from './job-state.tsx'

/** What is suggested of the open job's photos. */
export interface PlacementState {
  /** Null until the desk has answered for the first time. */
  readonly placement: Placement | null
  readonly byPhoto: ReadonlyMap<PhotoId, Suggestion>
}

interface Held extends PlacementState {
  /** Says that somebody looks; the answer takes that back. */
  readonly look: () => () => void
}

const PlacementContext = createContext<Held | null>(null)

/** A pause in the work before suggestions are asked for again: they are never the first thing that a person waits for. */
const AFTER_MS = 350

/** Holds the suggestions of the open job while a screen shows them, asked for again whenever the job has changed. */
export function PlacementProvider({ children }: { children: ReactNode }) {
  const desk = useDesk()
  const snapshot = useJob()
  const jobId = snapshot.job.id
  const [placement, setPlacement] = useState<Placement | null>(null)
  const [lookers, setLookers] = useState(0)
  const refresh = useMemo(
    () =>
      coalesced(async () => {
        const reply = await desk.call('placement.suggest', { jobId })
        if (reply.ok) setPlacement(reply.value)
      }),
    [desk, jobId],
  )
  const isWatched = lookers > 0
  useEffect(() => {
    if (!isWatched) return undefined
    const timer = setTimeout(() => void refresh(), AFTER_MS)
    return () => clearTimeout(timer)
  }, [refresh, snapshot, isWatched])
  const look = useCallback(() => {
    setLookers((count) => count + 1)
    return () => setLookers((count) => count - 1)
  }, [])
  const held = useMemo<Held>(
    () => ({
      placement,
      byPhoto: new Map((placement?.suggestions ?? []).map((suggestion) => [suggestion.photoId, suggestion])),
      look,
    }),
    [placement, look],
  )
  return <PlacementContext value={held}>{children}</PlacementContext>
}

/** What is suggested of the open job's photos; it is kept fresh while the caller is shown and wants it. */
export function usePlacement(isWanted = true): PlacementState {
  const held = useContext(PlacementContext)
  if (held === null) throw new Error('usePlacement is used outside a PlacementProvider.')
  const { look } = held
  useEffect(() => (isWanted ? look() : undefined), [isWanted, look])
  return held
}
