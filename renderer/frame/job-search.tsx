import { useMemo, useState } from 'react'
import type { SearchHit } from '../../app/contract/search.ts'
import { useJob } from '../state/job-state.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { SearchHits } from './search-hits.tsx'
import { placeOfHit } from './places.ts'
import { useGoTo } from './use-go-to.ts'
import { useFound } from './use-found.ts'

interface JobSearchProps {
  readonly isOpen: boolean
  readonly onClose: () => void
}

/** Searches the open job as one types, and goes to what is chosen. */
export function JobSearch({ isOpen, onClose }: JobSearchProps) {
  return (
    <Dialog title="Search this job" isOpen={isOpen} onClose={onClose}>
      <JobSearchBody onClose={onClose} />
    </Dialog>
  )
}

function JobSearchBody({ onClose }: { onClose: () => void }) {
  const { job } = useJob()
  const [text, setText] = useState('')
  const found = useFound(text, job.id)
  const goTo = useGoTo()
  const hits = useMemo(() => found?.filter((hit) => hit.kind !== 'job') ?? null, [found])
  function choose(hit: SearchHit) {
    onClose()
    goTo(placeOfHit(hit))
  }
  return (
    <SearchHits
      text={text}
      onText={setText}
      hits={hits}
      onChoose={choose}
      placeholder="Words from captions, findings, file names"
    />
  )
}
