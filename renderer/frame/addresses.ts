import type { JobId } from '../../app/job/ids.ts'

/** The workspaces of a job, in the order of the work. */
export const workspaces = [
  'sheet',
  'plan',
  'photos',
  'video',
  'narration',
  'findings',
  'field-tests',
  'weather',
  'assessment',
  'scope',
  'packet',
  'log',
  'diary',
] as const
export type Workspace = (typeof workspaces)[number]

/** Plain words for each workspace. */
export const workspaceNames = {
  sheet: 'Job sheet',
  plan: 'Roof plan',
  photos: 'Photos',
  video: 'Video',
  narration: 'Narration',
  findings: 'Findings',
  'field-tests': 'Field tests',
  weather: 'Weather',
  assessment: 'Assessment',
  scope: 'Scope and cost',
  packet: 'Packet',
  log: 'Evidence log',
  diary: 'Diary',
} as const satisfies Record<Workspace, string>

/** Records and fields that an address can point to. */
export const targetKinds = ['field', 'photo', 'video', 'finding', 'facet', 'reading', 'entry', 'diary'] as const
/** What in a workspace an address points to: a field of the sheet by its dotted path, or a record by its identity. */
export interface Target {
  readonly kind: (typeof targetKinds)[number]
  readonly id: string
}

/** Address of the list of jobs. */
export const jobsAddress = '/'

/** Address of a job's workspace, and of what to show there. */
export function jobAddress(jobId: JobId, workspace: Workspace, target: Target | null = null): string {
  const address = `/job/${encodeURIComponent(jobId)}/${workspace}`
  return target === null ? address : `${address}?${target.kind}=${encodeURIComponent(target.id)}`
}

/** Reads the part of an address after `?`; null when it points to nothing. */
export function readTarget(search: string): Target | null {
  const asked = new URLSearchParams(search)
  for (const kind of targetKinds) {
    const id = asked.get(kind)
    if (id !== null && id !== '') return { kind, id }
  }
  return null
}

/** True when `name` is a workspace's part of an address. */
export function isWorkspace(name: string): name is Workspace {
  return workspaces.some((workspace) => workspace === name)
}
