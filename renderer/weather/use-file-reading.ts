import { useEffect, useState } from 'react'
import type { Attachment } from '../../app/evidence/attachment.ts'
import type { FileReading } from '../../app/contract/weather.ts'
import type { ReadingChoices } from '../../app/weather/reading-choices.ts'
import { useDesk } from '../client/client-context.tsx'
import { useJob } from '../state/job-state.tsx'

/** What the desk understands of a file by the choices; the last answer stays in sight while the next is on its way. */
export function useFileReading(
  attachment: Attachment,
  choices: ReadingChoices,
): { reading: FileReading | null; error: string | null } {
  const desk = useDesk()
  const { job } = useJob()
  const [answer, setAnswer] = useState<{ reading: FileReading | null; error: string | null }>({
    reading: null,
    error: null,
  })
  useEffect(() => {
    let isCurrent = true
    const ask = async () => {
      const reply = await desk.call('weather.read-file', { jobId: job.id, attachmentId: attachment.id, choices })
      if (!isCurrent) return
      setAnswer(reply.ok ? { reading: reply.value, error: null } : { reading: null, error: reply.error.message })
    }
    void ask()
    return () => {
      isCurrent = false
    }
  }, [desk, job.id, attachment.id, choices])
  return answer
}
