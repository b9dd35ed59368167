import { Suspense } from 'react'
import { I18nProvider } from 'react-aria-components'
import { Redirect, Route, Switch } from 'wouter'
import { jobIdSchema } from '../../app/job/ids.ts'
import { LibraryProvider } from '../state/library.tsx'
import { TasksProvider } from '../state/tasks.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { MessageProvider } from '../ui/message.tsx'
import { isWorkspace, jobAddress, jobsAddress } from './addresses.ts'
import { DeskServicesProvider } from './desk-services.tsx'
import { JobFrame, JobsScreen } from './screens.ts'

/** The whole desk: what every screen shares, and which screen an address shows. */
export function Desk() {
  return (
    <I18nProvider locale="en-US">
      <MessageProvider>
        <LibraryProvider>
          <TasksProvider>
            <DeskServicesProvider>
              <Suspense fallback={null}>
                <Screens />
              </Suspense>
            </DeskServicesProvider>
          </TasksProvider>
        </LibraryProvider>
      </MessageProvider>
    </I18nProvider>
  )
}

function Screens() {
  return (
    <Switch>
      <Route path="/">
        <JobsScreen />
      </Route>
      <Route path="/job/:jobId/:workspace">
        {({ jobId, workspace }) => <JobAddress jobId={jobId} workspace={workspace} />}
      </Route>
      <Route path="/job/:jobId">{({ jobId }) => <JobAddress jobId={jobId} workspace="" />}</Route>
      <Route>
        <EmptyState
          title="Nothing is at this address"
          sentence="Go back to the jobs and open what you need from there."
        >
          <a href={jobsAddress}>To the jobs</a>
        </EmptyState>
      </Route>
    </Switch>
  )
}

function JobAddress({ jobId, workspace }: { jobId: string; workspace: string }) {
  const id = jobIdSchema.safeParse(jobId)
  if (!id.success) return <Redirect to={jobsAddress} replace />
  if (!isWorkspace(workspace)) return <Redirect to={jobAddress(id.data, 'sheet')} replace />
  return <JobFrame key={id.data} jobId={id.data} workspace={workspace} />
}
