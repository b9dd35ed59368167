import { type Workspace, workspaceNames, workspaces } from './addresses.ts'

/** Keys of the frame around every workspace. */
export const frameKeys = {
  keys: { id: 'frame.keys', label: 'Show the keys', keys: '?' },
  search: { id: 'frame.search', label: 'Search this job', keys: 'Ctrl+K' },
  undo: { id: 'frame.undo', label: 'Undo the last change', keys: 'Ctrl+Z' },
  redo: { id: 'frame.redo', label: 'Do the undone change again', keys: 'Ctrl+Shift+Z or Ctrl+Y' },
  clear: { id: 'frame.clear', label: 'Select nothing', keys: 'Escape' },
  details: { id: 'frame.details', label: 'Show or fold the details', keys: '\\' },
} as const

/** Keys that go to a workspace: Alt and its place in the column. */
export const workspaceKeys: readonly {
  readonly id: string
  readonly label: string
  readonly keys: string
  readonly workspace: Workspace
}[] = workspaces.map((workspace, at) => ({
  id: `frame.to-${workspace}`,
  label: `To ${workspaceNames[workspace].toLowerCase()}`,
  keys: `Alt+${at + 1}`,
  workspace,
}))
