import { useEffect, useMemo, useState } from 'react'
import { findingLabel } from '../../app/evidence/finding.ts'
import type { FindingId, JobId } from '../../app/job/ids.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { EditorHead, type TableFold } from './editor-head.tsx'
import { type FindingDraft, draftOfFinding } from './finding-draft.ts'
import { FindingFormFields } from './finding-form.tsx'
import styles from './findings-workspace.module.css'
import { type HeldForm, holdForm } from './held-forms.ts'
import { SectionLinks } from './section-links.tsx'
import { RemoveFinding } from './remove-finding.tsx'
import { UnsavedQuestion } from './unsaved-question.tsx'
import { useFindingForm } from './use-finding-form.ts'

/** A form that is open in the workspace. */
export interface OpenForm {
  /** Null for a new finding. */
  readonly id: FindingId | null
  /** What a new finding starts with. */
  readonly start: FindingDraft
  /** Changes from before, not saved yet. */
  readonly held?: FindingDraft
}

interface FindingEditorProps {
  readonly open: OpenForm
  /** True when another finding wants the place: the form answers by `onLeft` or `onStay`. */
  readonly isAskedToLeave: boolean
  readonly onLeft: () => void
  readonly onStay: () => void
  /** The table above, which may give its room to the form; null when there is none. */
  readonly fold: TableFold | null
  /** The form is done with: saved as this finding, or given up. */
  readonly onDone: (id: FindingId | null) => void
}

/** The form of one finding with its save and remove buttons. Changes are never lost without a question. */
export function FindingEditor({ open, isAskedToLeave, onLeft, onStay, fold, onDone }: FindingEditorProps) {
  const { findings, job } = useJob()
  const finding = findings.find((one) => one.id === open.id) ?? null
  const start = useMemo(() => (finding === null ? open.start : draftOfFinding(finding)), [finding, open.start])
  const form = useFindingForm({ start, id: open.id, ...(open.held === undefined ? {} : { held: open.held }) })
  const { isChanged, draft } = form
  const what = finding === null ? 'the new finding' : findingLabel(finding.number)
  useHolding(job.id, isChanged ? { id: open.id, start, draft } : null)
  useEffect(() => {
    if (isAskedToLeave && !isChanged) onLeft()
  }, [isAskedToLeave, isChanged, onLeft])
  useWarningOnClose(isChanged)
  const [saving, setSaving] = useState(false)
  async function save(after: (id: FindingId) => void) {
    setSaving(true)
    const id = await form.save()
    setSaving(false)
    if (id !== null) after(id)
    else onStay()
  }
  const saveHere = () => void save(onDone)
  const canSave = !saving && (isChanged || open.id === null)
  useCommands([
    { id: 'findings.save', label: 'Save the form', keys: 'Ctrl+Enter', enabled: canSave, perform: saveHere },
  ])
  return (
    <section className={styles['editor']} aria-label={`Form of ${what}`}>
      <EditorHead
        title={finding === null ? 'New finding' : what}
        isChanged={isChanged}
        fold={fold}
        canDiscard={open.id === null || isChanged}
        onDiscard={open.id === null ? () => onDone(null) : form.discard}
        canSave={canSave}
        onSave={saveHere}
      >
        {finding === null ? null : <RemoveFinding finding={finding} onRemoved={() => onDone(null)} />}
      </EditorHead>
      <SectionLinks />
      <div className={styles['editorBody']} data-form-scroller>
        <FindingFormFields form={form} onSave={saveHere} />
      </div>
      <UnsavedQuestion
        isOpen={isAskedToLeave && isChanged}
        what={what}
        onSave={() => void save(onLeft)}
        onDiscard={() => {
          form.discard()
          onLeft()
        }}
        onKeep={onStay}
      />
    </section>
  )
}

/** Keeps the changed form in case its person looks at another workspace before saving. */
function useHolding(jobId: JobId, form: HeldForm | null): void {
  useEffect(() => holdForm(jobId, form))
}

function useWarningOnClose(isChanged: boolean): void {
  useEffect(() => {
    if (!isChanged) return undefined
    const warn = (event: BeforeUnloadEvent) => event.preventDefault()
    window.addEventListener('beforeunload', warn)
    return () => window.removeEventListener('beforeunload', warn)
  }, [isChanged])
}
