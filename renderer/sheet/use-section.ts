import { type FocusEvent, useEffect, useRef, useState } from 'react'
import type { JobSheet } from '../../app/job/sheet.ts'
import { useJob } from '../state/job-state.tsx'
import { sameSection, sectionErrors, type SectionKey } from './section-draft.ts'
import { useSaveSection } from './sheet-saver.tsx'

/** One section of the sheet while a person works on it. */
export interface Section<Value> {
  readonly key: SectionKey
  readonly value: Value
  readonly errors: ReadonlyMap<string, string>
  readonly state: 'saved' | 'changed' | 'wrong'
  set(value: Value): void
  /** Saves now; does nothing when nothing changed, and shows what is wrong instead of saving it. */
  save(): void
  /** For the section's element: saves when the focus leaves it. */
  readonly leaving: { onBlur(event: FocusEvent): void }
}

/** Keeps a draft of one section, checks it, and saves it as one step when the person leaves it. */
export function useSection<Key extends SectionKey>(key: Key): Section<JobSheet[Key]> {
  const known = useJob().job.sheet[key]
  const saveSection = useSaveSection()
  const [draft, setDraft] = useState<JobSheet[Key] | null>(null)
  const [errors, setErrors] = useState<ReadonlyMap<string, string>>(new Map())
  // A field commits and the section saves in one and the same event, before React has drawn the new draft.
  const latest = useRef<JobSheet[Key] | null>(null)
  function set(value: JobSheet[Key]) {
    latest.current = value
    setDraft(value)
    if (errors.size > 0) setErrors(sectionErrors(key, value))
  }
  function save() {
    const value = latest.current
    if (value === null) return
    const wrong = sectionErrors(key, value)
    setErrors(wrong)
    if (wrong.size > 0) return
    if (sameSection(value, known)) {
      latest.current = null
      setDraft(null)
      return
    }
    void saveSection(key, value).then((saved) => {
      if (!saved || latest.current !== value) return
      latest.current = null
      setDraft(null)
    })
  }
  useSaveOnLeaving(save)
  return {
    key,
    value: draft ?? known,
    errors,
    state: errors.size > 0 ? 'wrong' : draft === null ? 'saved' : 'changed',
    set,
    save,
    leaving: {
      onBlur(event) {
        if (!staysInside(event)) save()
      },
    },
  }
}

function useSaveOnLeaving(save: () => void): void {
  const last = useRef(save)
  useEffect(() => {
    last.current = save
  })
  useEffect(() => () => last.current(), [])
}

/** Lists and dialogs of a field stand elsewhere in the document, yet belong to it. */
function staysInside(event: FocusEvent): boolean {
  const { relatedTarget, currentTarget } = event
  if (!(relatedTarget instanceof Element)) return false
  return currentTarget.contains(relatedTarget) || relatedTarget.closest('[role="listbox"], [role="dialog"]') !== null
}
