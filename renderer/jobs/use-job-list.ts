import { useEffect, useMemo, useState } from 'react'
import type { JobSummary } from '../../app/contract/jobs.ts'
import { useDesk } from '../client/client-context.tsx'
import { coalesced } from '../state/coalesced.ts'
import { useMessages } from '../ui/message.tsx'

/** The library's jobs, fetched again whenever the desk says that they changed. */
export function useJobList(): { readonly jobs: readonly JobSummary[]; readonly isKnown: boolean } {
  const desk = useDesk()
  const { say } = useMessages()
  const [jobs, setJobs] = useState<readonly JobSummary[] | null>(null)
  const refresh = useMemo(
    () =>
      coalesced(async () => {
        const reply = await desk.call('jobs.list', {})
        if (reply.ok) setJobs(reply.value.jobs)
        else say({ tone: 'error', text: reply.error.message, help: reply.error.help })
      }),
    [desk, say],
  )
  useEffect(() => {
    void refresh()
    return desk.listen(
      (event) => {
        if (event.type !== 'task') void refresh()
      },
      () => void refresh(),
    )
  }, [desk, refresh])
  return { jobs: jobs ?? [], isKnown: jobs !== null }
}
