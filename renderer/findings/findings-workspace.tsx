import { useState } from 'react'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { Button } from '../ui/button.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { EVERY_FINDING, filteredFindings } from './finding-filter.ts'
import type { TableFold } from './editor-head.tsx'
import { FindingEditor } from './finding-editor.tsx'
import { FindingsBar } from './findings-bar.tsx'
import { FindingsTable, useLackCounts } from './findings-table.tsx'
import styles from './findings-workspace.module.css'
import { showSection } from './show-section.ts'
import { type FormPlace, useOpenForm } from './use-open-form.ts'

/** The findings: a table over the form of the selected one. */
export function FindingsWorkspace() {
  const { findings } = useJob()
  const { selection } = useSelection()
  const [filter, setFilter] = useState(EVERY_FINDING)
  const lacks = useLackCounts()
  const place = useOpenForm()
  const [wantsFold, setFolded] = useState(false)
  // The table only makes room for a form.
  const isFolded = wantsFold && place.open !== null
  const selectedPhotos = selection.kind === 'photos' ? selection.ids.length : 0
  useCommands([{ id: 'findings.new', label: 'New finding', keys: 'N', enabled: true, perform: place.startNew }])
  const shown = filteredFindings(findings, filter, lacks)
  return (
    <div className={styles['workspace']}>
      <FindingsBar filter={filter} onFilter={setFilter} selectedPhotos={selectedPhotos} onNew={place.startNew} />
      {findings.length === 0 || isFolded ? null : (
        <div className={styles['table']} data-alone={place.open === null}>
          <FindingsTable findings={shown} onOpen={() => showSection('observed')} />
          {shown.length === 0 ? <p className={styles['none']}>No finding fits. Clear a filter to see more.</p> : null}
        </div>
      )}
      <FormArea place={place} fold={{ isFolded, toggle: () => setFolded(!isFolded) }} />
    </div>
  )
}

interface FormAreaProps {
  readonly place: FormPlace
  readonly fold: TableFold
}

function FormArea({ place, fold }: FormAreaProps) {
  const { findings, photos } = useJob()
  const { open, isAskedToLeave } = place
  if (open !== null) {
    return (
      <FindingEditor
        key={open.id ?? 'new'}
        open={open}
        isAskedToLeave={isAskedToLeave}
        onLeft={place.onLeft}
        onStay={place.onStay}
        fold={findings.length === 0 ? null : fold}
        onDone={place.onDone}
      />
    )
  }
  if (findings.length > 0) return null
  return (
    <EmptyState
      title="No finding is recorded yet"
      sentence={
        photos.length === 0
          ? 'Write down what was found, one thing at a time. Photos can be attached later.'
          : 'Select photos that show one thing, then start a finding from them. What is sound is a finding too.'
      }
    >
      <Button look="main" onPress={place.startNew}>
        Start a finding
      </Button>
    </EmptyState>
  )
}
