import { useEffect, useState } from 'react'
import type { NearDoublesGroup } from '../../../app/contract/near-doubles.ts'
import { useDesk } from '../../client/client-context.tsx'
import { useJob } from '../../state/job-state.tsx'

/** Photos that show nearly the same, as far as they are known. */
export interface FoundNearDoubles {
  /** Null until the first answer. */
  readonly groups: readonly NearDoublesGroup[] | null
  /** Photos that are not looked at yet. */
  readonly waiting: number
}

/** Asks for near-doubles, again after every change of the job and as long as photos wait to be looked at. */
export function useNearDoubles(): FoundNearDoubles {
  const desk = useDesk()
  const { job, log } = useJob()
  const [found, setFound] = useState<FoundNearDoubles>({ groups: null, waiting: 0 })
  useEffect(() => {
    let wanted = true
    const ask = async (): Promise<void> => {
      const reply = await desk.call('near-doubles.find', { jobId: job.id })
      if (!wanted || !reply.ok) return
      setFound(reply.value)
      if (reply.value.waiting > 0) await ask()
    }
    void ask()
    return () => {
      wanted = false
    }
  }, [desk, job.id, log.headHash])
  return found
}
