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

/** Keys that go through what is missing, one by one. */
export const walkKeys = {
  next: { id: 'frame.missing-next', label: 'Go through what is missing: the next', keys: 'Alt+M' },
  previous: { id: 'frame.missing-previous', label: 'The missing thing before', keys: 'Alt+Shift+M' },
  fix: { id: 'frame.missing-fix', label: 'Mend it in one step', keys: 'Alt+Enter' },
  other: { id: 'frame.missing-fix-other', label: 'Mend it the other way', keys: 'Alt+Shift+Enter' },
  skip: { id: 'frame.missing-skip', label: 'Skip it for now', keys: 'Alt+K' },
  stop: { id: 'frame.missing-stop', label: 'Stop going through what is missing', keys: 'Alt+Q' },
} as const

/** Workspaces that came when Alt and a digit were all given away. */
const furtherKeys: Readonly<Partial<Record<Workspace, string>>> = {
  assessment: 'Alt+Shift+1',
  scope: 'Alt+Shift+2',
  diary: 'Alt+Shift+3',
}

const numbered = workspaces.filter((workspace) => furtherKeys[workspace] === undefined)

/** Keys that go to a workspace: Alt and its place in the column, 0 for the tenth; with Shift those that came later. */
export const workspaceKeys: readonly {
  readonly id: string
  readonly label: string
  readonly keys: string
  readonly workspace: Workspace
}[] = workspaces.map((workspace) => ({
  id: `frame.to-${workspace}`,
  label: `To ${workspaceNames[workspace].toLowerCase()}`,
  keys: furtherKeys[workspace] ?? `Alt+${(numbered.indexOf(workspace) + 1) % 10}`,
  workspace,
}))
