import { Suspense, useEffect } from 'react'
import type { JobId } from '../../app/job/ids.ts'
import { JobProvider, useJob } from '../state/job-state.tsx'
import { PlacementProvider } from '../state/placement.tsx'
import { ProblemsProvider } from '../state/problems.tsx'
import { SelectionProvider } from '../state/selection.tsx'
import { useTasks } from '../state/tasks.tsx'
import { TimeStrip } from '../time-strip/time-strip.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { jobsAddress, type Workspace, workspaceNames } from './addresses.ts'
import { Details, fetchDetailsAhead } from './details.tsx'
import { DropArea } from './drop-area.tsx'
import styles from './job-frame.module.css'
import { MissingWalk } from './missing-walk.tsx'
import { panes } from './panes.ts'
import { Toolbar } from './toolbar.tsx'
import { useDetailsFold } from './use-details-fold.ts'
import { useArrival } from './use-go-to.ts'
import { useWhenIdle } from './use-when-idle.ts'
import { WorkspaceColumn } from './workspace-column.tsx'

interface JobFrameProps {
  readonly jobId: JobId
  readonly workspace: Workspace
}

/** One open job: its workspaces, the details of what is selected, and the time strip. */
export function JobFrame({ jobId, workspace }: JobFrameProps) {
  useEffect(() => void panes[workspace].fetchAhead(), [workspace])
  return (
    <JobProvider
      jobId={jobId}
      waiting={<p className={styles['waiting']}>Opening the job…</p>}
      failed={(error) => (
        <EmptyState title={error.message} sentence={error.help}>
          <a href={jobsAddress}>To the jobs</a>
        </EmptyState>
      )}
    >
      <SelectionProvider jobId={jobId}>
        <ProblemsProvider>
          <PlacementProvider>
            <FrameLayout workspace={workspace} />
          </PlacementProvider>
        </ProblemsProvider>
      </SelectionProvider>
    </JobProvider>
  )
}

function FrameLayout({ workspace }: { workspace: Workspace }) {
  const { job } = useJob()
  const { takeIn } = useTasks()
  const fold = useDetailsFold()
  useArrival()
  useEffect(() => {
    document.title = `${job.number}, ${workspaceNames[workspace].toLowerCase()} – Battenbook`
  }, [job.number, workspace])
  useWhenIdle(fetchRest)
  const Pane = panes[workspace]
  // The packet shows its own list of what to mend, and needs the room for its pages.
  const hasDetails = workspace !== 'packet' && !fold.isFolded
  return (
    <div className={styles['frame']} data-details={hasDetails}>
      <WorkspaceColumn workspace={workspace} />
      <Toolbar detailsFold={workspace === 'packet' ? null : fold} />
      <main className={styles['pane']}>
        <MissingWalk />
        <Suspense fallback={null}>
          <Pane />
        </Suspense>
      </main>
      {hasDetails ? <Details /> : null}
      <div className={styles['strip']}>
        <TimeStrip />
      </div>
      <DropArea words={`Drop to take these into job ${job.number}`} onFiles={(files) => void takeIn(job.id, files)} />
    </div>
  )
}

/** The code of what may be shown next, once the job itself is on the screen. */
function fetchRest(): void {
  fetchDetailsAhead()
  for (const pane of Object.values(panes)) void pane.fetchAhead()
}
