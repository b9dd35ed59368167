import { useCallback, useEffect, useState } from 'react'
import type { FindingId } from '../../app/job/ids.ts'
import { useJob } from '../state/job-state.tsx'
import { useSelection } from '../state/selection.tsx'
import { blankDraft, draftFromPhotos, type FindingDraft } from './finding-draft.ts'
import type { OpenForm } from './finding-editor.tsx'
import { heldForm, holdForm } from './held-forms.ts'

/** Which form the workspace shows, and what wants to take its place. */
export interface FormPlace {
  readonly open: OpenForm | null
  /** True while another finding, or a new one, waits for the open form to be left. */
  readonly isAskedToLeave: boolean
  startNew(): void
  onLeft(): void
  onStay(): void
  onDone(id: FindingId | null): void
}

/** Follows the selected finding with the form, and holds the selection back while the open form has changes. */
export function useOpenForm(): FormPlace {
  const { job, photos } = useJob()
  const { selection, select } = useSelection()
  const [open, setOpen] = useState<OpenForm | null>(() => heldAsOpen(heldForm(job.id)))
  const [newWanted, setNewWanted] = useState<FindingDraft | null>(null)
  const selected = selection.kind === 'finding' ? selection.id : null
  const wanted = newWanted === null && selected !== null && selected !== (open?.id ?? null) ? selected : null
  const show = useCallback((next: OpenForm | null) => {
    setNewWanted(null)
    setOpen(next)
  }, [])
  useEffect(() => {
    if (open === null && wanted !== null) show(formOf(wanted))
  }, [open, wanted, show])

  const onLeft = useCallback(() => {
    holdForm(job.id, null)
    if (newWanted !== null) {
      select({ kind: 'none' })
      show({ id: null, start: newWanted })
    } else show(wanted === null ? null : formOf(wanted))
  }, [job.id, newWanted, wanted, select, show])
  return {
    open,
    isAskedToLeave: open !== null && (wanted !== null || newWanted !== null),
    startNew() {
      const ids = new Set(selection.kind === 'photos' ? selection.ids : [])
      const start = ids.size === 0 ? blankDraft() : draftFromPhotos(photos.filter((photo) => ids.has(photo.id)))
      if (open !== null) return setNewWanted(start)
      if (selected !== null) select({ kind: 'none' })
      return show({ id: null, start })
    },
    onLeft,
    onStay() {
      setNewWanted(null)
      if (selected !== null) select(open?.id == null ? { kind: 'none' } : { kind: 'finding', id: open.id })
    },
    onDone(id) {
      holdForm(job.id, null)
      show(id === null ? null : formOf(id))
      if (id !== null) select({ kind: 'finding', id })
    },
  }
}

function formOf(id: FindingId): OpenForm {
  return { id, start: blankDraft() }
}

function heldAsOpen(form: ReturnType<typeof heldForm>): OpenForm | null {
  return form === null ? null : { id: form.id, start: form.start, held: form.draft }
}
