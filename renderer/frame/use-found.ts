import { useEffect, useState } from 'react'
import type { SearchHit } from '../../app/contract/search.ts'
import type { JobId } from '../../app/job/ids.ts'
import { useDesk } from '../client/client-context.tsx'

/** Long enough to skip most half-typed words, short enough not to be felt. */
const WAIT_MS = 90

/** What is found for a text as it is typed, in one job or in all; null while there is no text or no answer yet. */
export function useFound(text: string, jobId: JobId | null): readonly SearchHit[] | null {
  const desk = useDesk()
  const [found, setFound] = useState<readonly SearchHit[] | null>(null)
  const wanted = text.trim()
  useEffect(() => {
    if (wanted === '') {
      setFound(null)
      return undefined
    }
    let current = true
    const timer = setTimeout(() => {
      void desk.call('search.find', { text: wanted, jobId, limit: 100 }).then((reply) => {
        if (current) setFound(reply.ok ? reply.value.hits.map(withoutLabel) : [])
      })
    }, WAIT_MS)
    return () => {
      current = false
      clearTimeout(timer)
    }
  }, [desk, wanted, jobId])
  return found
}

/** The excerpt often begins with the label, which stands beside it already. */
function withoutLabel(hit: SearchHit): SearchHit {
  const { label, excerpt } = hit
  return excerpt.startsWith(label) ? { ...hit, excerpt: excerpt.slice(label.length).trimStart() } : hit
}
