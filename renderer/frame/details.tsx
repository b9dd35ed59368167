import { type ReactNode, Suspense } from 'react'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { findingLabel } from '../../app/evidence/finding.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { useJob } from '../state/job-state.tsx'
import { type Selection, useSelection } from '../state/selection.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { countWords } from '../ui/quantity-words.ts'
import styles from './details.module.css'
import { Lacks } from './lacks.tsx'
import { ReadingDetails } from './reading-details.tsx'
import { screenPart } from './screen-part.tsx'

const PhotoDetails = screenPart(async () => (await import('../photos/photo-details.tsx')).PhotoDetails)
const VideoDetails = screenPart(async () => (await import('../video/video-details.tsx')).VideoDetails)
const FindingDetails = screenPart(async () => (await import('../findings/finding-details.tsx')).FindingDetails)
const FacetDetails = screenPart(async () => (await import('../plan/facet-details.tsx')).FacetDetails)
const CueDetails = screenPart(async () => (await import('../narration/cue-details.tsx')).CueDetails)
const EntryDetails = screenPart(async () => (await import('../log/entry-details.tsx')).EntryDetails)

/** Fetches the code of every kind of details. */
export function fetchDetailsAhead(): void {
  const parts = [PhotoDetails, VideoDetails, FindingDetails, FacetDetails, CueDetails, EntryDetails]
  for (const part of parts) void part.fetchAhead()
}

/** The right column: what is selected, or else what the job still lacks. */
export function Details() {
  const job = useJob()
  const { selection, select } = useSelection()
  return (
    <aside className={styles['details']} aria-label="Details">
      <header className={styles['head']}>
        <h2 className={styles['title']}>{titleOf(selection, job)}</h2>
        {selection.kind === 'none' ? null : (
          <IconButton icon="close" label="Select nothing" keys="Escape" onPress={() => select({ kind: 'none' })} />
        )}
      </header>
      <div className={styles['body']}>
        <Suspense fallback={null}>{contentOf(selection)}</Suspense>
      </div>
    </aside>
  )
}

function contentOf(selection: Selection): ReactNode {
  switch (selection.kind) {
    case 'none':
      return <Lacks />
    case 'photos':
      return <PhotoDetails />
    case 'video':
      return <VideoDetails id={selection.id} />
    case 'facet':
      return <FacetDetails />
    case 'finding':
      return <FindingDetails />
    case 'reading':
      return <ReadingDetails id={selection.id} />
    case 'cue':
      return <CueDetails />
    case 'entry':
      return <EntryDetails />
  }
}

function titleOf(selection: Selection, job: JobSnapshot): string {
  switch (selection.kind) {
    case 'none':
      return 'What this job lacks'
    case 'photos': {
      if (selection.ids.length > 1) return countWords(selection.ids.length, 'photo')
      const photo = job.photos.find((one) => one.id === selection.lead)
      return photo === undefined ? 'Photo' : `Photo ${photoLabel(photo.number)}`
    }
    case 'video': {
      const video = job.videos.find((one) => one.id === selection.id)
      return video === undefined ? 'Video' : `Video ${videoLabel(video.number)}`
    }
    case 'facet':
      return `Facet ${job.facets.find((one) => one.id === selection.id)?.letter ?? ''}`
    case 'finding': {
      const finding = job.findings.find((one) => one.id === selection.id)
      return finding === undefined ? 'Finding' : `Finding ${findingLabel(finding.number)}`
    }
    case 'reading':
      return `Reading ${job.readings.find((one) => one.id === selection.id)?.number ?? ''}`
    case 'cue':
      return `Cue ${selection.cue + 1}`
    case 'entry':
      return `Log entry ${selection.seq}`
  }
}
