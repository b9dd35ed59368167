import { isWorkspace } from './addresses.ts'
import { panes } from './panes.ts'
import { screenPart } from './screen-part.tsx'

/** The list of jobs. */
export const JobsScreen = screenPart(async () => (await import('../jobs/jobs-screen.tsx')).JobsScreen)

/** One open job. */
export const JobFrame = screenPart(async () => (await import('./job-frame.tsx')).JobFrame)

/** Fetches the code of the screen at an address, so that the first drawing shows it. */
export async function fetchFirstScreen(pathname: string): Promise<void> {
  const workspace = /^\/job\/[^/]+\/([^/]+)/.exec(pathname)?.[1] ?? ''
  if (isWorkspace(workspace)) await Promise.all([JobFrame.fetchAhead(), panes[workspace].fetchAhead()])
  else await JobsScreen.fetchAhead()
}

/** Fetches the code of an open job, for which the list of jobs is the way in. */
export function fetchJobAhead(): void {
  void JobFrame.fetchAhead()
  for (const pane of Object.values(panes)) void pane.fetchAhead()
}
