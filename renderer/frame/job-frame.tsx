import { lazy, Suspense, useEffect } from 'react'
import type { JobId } from '../../app/job/ids.ts'
import { JobProvider, useJob } from '../state/job-state.tsx'
import { PlacementProvider } from '../state/placement.tsx'
import { ProblemsProvider } from '../state/problems.tsx'
import { SelectionProvider } from '../state/selection.tsx'
import { useTasks } from '../state/tasks.tsx'
import { TimeStrip } from '../time-strip/time-strip.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { jobsAddress, type Workspace, workspaceNames } from './addresses.ts'
import { Details } from './details.tsx'
import { DropArea } from './drop-area.tsx'
import styles from './job-frame.module.css'
import { MissingWalk } from './missing-walk.tsx'
import { Toolbar } from './toolbar.tsx'
import { useDetailsFold } from './use-details-fold.ts'
import { useArrival } from './use-go-to.ts'
import { WorkspaceColumn } from './workspace-column.tsx'

const panes = {
  sheet: lazy(async () => ({ default: (await import('../sheet/sheet-workspace.tsx')).SheetWorkspace })),
  plan: lazy(async () => ({ default: (await import('../plan/plan-workspace.tsx')).PlanWorkspace })),
  photos: lazy(async () => ({ default: (await import('../photos/photos-workspace.tsx')).PhotosWorkspace })),
  video: lazy(async () => ({ default: (await import('../video/video-workspace.tsx')).VideoWorkspace })),
  narration: lazy(async () => ({ default: (await import('../narration/narration-workspace.tsx')).NarrationWorkspace })),
  findings: lazy(async () => ({ default: (await import('../findings/findings-workspace.tsx')).FindingsWorkspace })),
  'field-tests': lazy(async () => ({
    default: (await import('../field-tests/field-tests-workspace.tsx')).FieldTestsWorkspace,
  })),
  weather: lazy(async () => ({ default: (await import('../weather/weather-workspace.tsx')).WeatherWorkspace })),
  packet: lazy(async () => ({ default: (await import('../packet/packet-workspace.tsx')).PacketWorkspace })),
  diary: lazy(async () => ({ default: (await import('../diary/diary-workspace.tsx')).DiaryWorkspace })),
  log: lazy(async () => ({ default: (await import('../log/log-workspace.tsx')).LogWorkspace })),
} as const satisfies Record<Workspace, unknown>

interface JobFrameProps {
  readonly jobId: JobId
  readonly workspace: Workspace
}

/** One open job: its workspaces, the details of what is selected, and the time strip. */
export function JobFrame({ jobId, workspace }: JobFrameProps) {
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
