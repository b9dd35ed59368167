import { useState } from 'react'
import { useCommands } from '../state/commands.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { KeyHint } from '../ui/key-hint.tsx'
import { useMessages } from '../ui/message.tsx'
import { frameKeys } from './frame-keys.ts'
import { JobSearch } from './job-search.tsx'
import styles from './toolbar.module.css'
import type { DetailsFold } from './use-details-fold.ts'

interface ToolbarProps {
  /** Null where the workspace has no details at its right. */
  readonly detailsFold: DetailsFold | null
}

/** The line over every workspace: search, undo and redo. */
export function Toolbar({ detailsFold }: ToolbarProps) {
  const [isSearching, setSearching] = useState(false)
  const { selection, select } = useSelection()
  useCommands(
    [
      { ...frameKeys.search, enabled: true, perform: () => setSearching(true) },
      { ...frameKeys.clear, enabled: selection.kind !== 'none', perform: () => select({ kind: 'none' }) },
    ],
    'frame',
  )
  return (
    <header className={styles['toolbar']}>
      <button type="button" className={styles['search']} onClick={() => setSearching(true)}>
        <Icon name="search" />
        <span className={styles['searchWords']}>Search this job</span>
        <KeyHint keys={frameKeys.search.keys} />
      </button>
      <UndoRedo />
      {detailsFold === null ? null : (
        <Button look="quiet" onPress={detailsFold.turn}>
          {detailsFold.isFolded ? 'Show details' : 'Fold details'}
        </Button>
      )}
      <JobSearch isOpen={isSearching} onClose={() => setSearching(false)} />
    </header>
  )
}

function UndoRedo() {
  const { history } = useJob()
  const edit = useEdit()
  const { say } = useMessages()
  async function go(name: 'history.undo' | 'history.redo', done: string) {
    const answer = await edit(name, {})
    if (answer !== null && answer.summary !== null) say({ tone: 'note', text: `${done}: ${answer.summary}` })
  }
  const undo = () => void go('history.undo', 'Undone')
  const redo = () => void go('history.redo', 'Done again')
  useCommands(
    [
      { ...frameKeys.undo, enabled: history.undo !== null, perform: undo },
      { ...frameKeys.redo, enabled: history.redo !== null, perform: redo },
    ],
    'frame',
  )
  return (
    <div className={styles['history']}>
      <span className={styles['next']}>{history.undo === null ? '' : `Last change: ${history.undo}`}</span>
      <IconButton
        icon="undo"
        label={history.undo === null ? 'Nothing to undo' : `Undo: ${history.undo}`}
        keys={frameKeys.undo.keys}
        isDisabled={history.undo === null}
        onPress={undo}
      />
      <IconButton
        icon="redo"
        label={history.redo === null ? 'Nothing to do again' : `Do again: ${history.redo}`}
        keys="Ctrl+Shift+Z"
        isDisabled={history.redo === null}
        onPress={redo}
      />
    </div>
  )
}
