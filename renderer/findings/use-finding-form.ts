import { useEffect, useRef, useState } from 'react'
import type { FindingId } from '../../app/job/ids.ts'
import { useEdit } from '../state/job-state.tsx'
import { type DraftFault, type FindingDraft, findingOfDraft, sameDraft, type SavedFinding } from './finding-draft.ts'

/** A finding under edit: nothing is saved until `save`. */
export interface FindingForm {
  readonly draft: FindingDraft
  /** Null for a new finding. */
  readonly id: FindingId | null
  /** True when the form says something else than it started with. */
  readonly isChanged: boolean
  /** What keeps it from being saved; filled when saving was tried. */
  readonly faults: readonly DraftFault[]
  change(patch: Partial<FindingDraft>): void
  /** Back to what it started with. */
  discard(): void
  /** Saves as one step of undo; null when something is still open or it was refused. */
  save(): Promise<FindingId | null>
}

export interface FormStart {
  /** What is saved, or proposed for a new finding. */
  readonly start: FindingDraft
  readonly id: FindingId | null
  /** A form that was left unsaved before. */
  readonly held?: FindingDraft
  /** Saves in place of the usual way; null when it was refused. */
  readonly onSaved?: ((finding: SavedFinding) => Promise<FindingId | null>) | undefined
}

/** Holds the form of a finding. When the record changes elsewhere, a form that nobody touched follows it. */
export function useFindingForm({ start, id, held, onSaved }: FormStart): FindingForm {
  const edit = useEdit()
  const [draft, setDraft] = useState(held ?? start)
  const [faults, setFaults] = useState<readonly DraftFault[]>([])
  // Saving by key follows right after the last field is left, before the form is drawn again.
  const latest = useRef(draft)
  const base = useRef(start)
  function set(next: FindingDraft) {
    latest.current = next
    setDraft(next)
  }
  useEffect(() => {
    if (sameDraft(base.current, start)) return
    const untouched = sameDraft(latest.current, base.current)
    base.current = start
    if (untouched) set(start)
  }, [start])
  return {
    draft,
    id,
    isChanged: !sameDraft(draft, start),
    faults,
    change(patch) {
      set({ ...latest.current, ...patch })
      setFaults([])
    },
    discard() {
      set(start)
      setFaults([])
    },
    async save() {
      const ready = findingOfDraft(latest.current)
      if ('faults' in ready) {
        setFaults(ready.faults)
        return null
      }
      if (onSaved !== undefined) return onSaved(ready.finding)
      const saved = await edit('findings.save', { id, finding: ready.finding })
      return saved?.id ?? null
    },
  }
}

/** What is wrong with one field of the form, in words. */
export function faultOf(form: FindingForm, field: DraftFault['field']): string | null {
  return form.faults.find((fault) => fault.field === field)?.text ?? null
}
