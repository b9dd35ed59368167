import { type KeyboardEvent, useMemo } from 'react'
import { useJob } from '../state/job-state.tsx'
import { CauseSection } from './cause-section.tsx'
import styles from './finding-form.module.css'
import { findingLacks } from './finding-lacks.ts'
import { MeasuredSection } from './measured-section.tsx'
import { ObservedSection } from './observed-section.tsx'
import { ConsequenceSection, FollowUpSection, NotesSection } from './outcome-sections.tsx'
import { PhotosSection } from './photos-section.tsx'
import { PlaceSection } from './place-section.tsx'
import type { FindingForm } from './use-finding-form.ts'

interface FindingFormFieldsProps {
  readonly form: FindingForm
  readonly onSave: () => void
}

/** Every field of a finding, observations first, the opinion apart. Ctrl+Enter saves from anywhere in it. */
export function FindingFormFields({ form, onSave }: FindingFormFieldsProps) {
  const job = useJob()
  const lacks = useMemo(() => findingLacks(form.draft, form.id, job), [form.draft, form.id, job])
  function onKeyDown(event: KeyboardEvent<HTMLElement>) {
    if (event.key !== 'Enter' || !(event.ctrlKey || event.metaKey)) return
    event.preventDefault()
    event.stopPropagation()
    // Fields that are kept as typed until they are left give their value now.
    if (document.activeElement instanceof HTMLElement) document.activeElement.blur()
    onSave()
  }
  return (
    <div className={styles['form']} onKeyDownCapture={onKeyDown}>
      {form.faults.length === 0 ? null : (
        <ul className={styles['faults']} role="alert">
          {form.faults.map((fault) => (
            <li key={fault.text}>{fault.text}</li>
          ))}
        </ul>
      )}
      {lacks.sentences.length === 0 ? null : (
        <ul className={styles['lacks']} aria-label="What this finding lacks">
          {lacks.sentences.map((sentence) => (
            <li key={sentence}>It {sentence}</li>
          ))}
        </ul>
      )}
      <ObservedSection form={form} />
      <MeasuredSection form={form} lacking={lacks.measures} />
      <PlaceSection form={form} />
      <PhotosSection form={form} lackingRoles={lacks.roles} />
      <CauseSection form={form} />
      <ConsequenceSection form={form} />
      <FollowUpSection form={form} />
      <NotesSection form={form} />
    </div>
  )
}
