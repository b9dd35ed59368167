import { type ReactNode, useId, useState } from 'react'
import {
  diaryContentSchema,
  contentFault,
  diaryKindLabels,
  diaryLabel,
  type DiaryEntry,
} from '../../app/diary/entry.ts'
import { useEdit, useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { Dialog } from '../ui/dialog.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './diary.module.css'
import { zoneOfEntries } from './zone-of-entries.ts'
import { diaryKinds } from './diary-kinds.ts'
import { contentOf, draftOf, newDraft, type EntryDraft } from './entry-draft.ts'
import { FileFields, KindFields } from './entry-fields.tsx'
import { WhenFields } from './when-fields.tsx'

interface EntryDialogProps {
  /** The entry to correct; null for a new one. */
  readonly entry: DiaryEntry | null
  readonly onClose: () => void
}

const kindOptions = diaryKinds.map((key) => ({ key, label: diaryKindLabels[key] }))

/** One entry of the diary, typed or corrected. */
export function EntryDialog({ entry, onClose }: EntryDialogProps) {
  const { job } = useJob()
  const edit = useEdit()
  const [draft, setDraft] = useState<EntryDraft>(() =>
    entry === null ? newDraft(Date.now(), zoneOfEntries(job)) : draftOf(entry.content),
  )
  const [because, setBecause] = useState('')
  const formId = useId()
  const [fault, setFault] = useState<Fault | null>(null)
  const set = (part: Partial<EntryDraft>) => setDraft({ ...draft, ...part })
  async function save() {
    const wrong = faultOf(draft)
    setFault(wrong)
    if (wrong !== null) return
    const saved = await edit('diary.save', { id: entry?.id ?? null, content: contentOf(draft), because })
    if (saved !== null) onClose()
  }
  return (
    <Dialog
      title={entry === null ? 'New entry' : `Correct ${diaryLabel(entry.number)}`}
      isOpen
      onClose={onClose}
      actions={
        <>
          <Button onPress={onClose}>Cancel</Button>
          <Button look="main" type="submit" form={formId}>
            {entry === null ? 'Add to the diary' : 'Save the correction'}
          </Button>
        </>
      }
    >
      <EntryForm id={formId} draft={draft} fault={fault} onChange={set} onSave={() => void save()}>
        {entry === null ? null : <TextField label="Why it is corrected" value={because} onChange={setBecause} />}
      </EntryForm>
    </Dialog>
  )
}

interface EntryFormProps {
  readonly id: string
  readonly onSave: () => void
  readonly draft: EntryDraft
  readonly fault: Fault | null
  readonly onChange: (part: Partial<EntryDraft>) => void
  readonly children: ReactNode
}

/** Enter in any line of it saves. */
function EntryForm({ id, draft, fault, onChange, onSave, children }: EntryFormProps) {
  const errors = errorsOf(fault)
  return (
    <form
      id={id}
      className={styles['fields']}
      onSubmit={(event) => {
        event.preventDefault()
        onSave()
      }}
    >
      <SelectField
        label="Kind"
        options={kindOptions}
        value={draft.kind}
        onChange={(kind) => onChange({ kind: kind ?? draft.kind })}
      />
      <WhenFields draft={draft} onChange={onChange} errors={errors} />
      <KindFields draft={draft} onChange={onChange} errors={errors} />
      <div className={styles['wide']}>
        <TextArea
          label="In your own words"
          help="Stays in the diary: a packet never shows it."
          rows={5}
          value={draft.text}
          onChange={(text) => onChange({ text })}
          error={errors('text')}
        />
      </div>
      <FileFields draft={draft} onChange={onChange} />
      <div className={styles['wide']}>{children}</div>
    </form>
  )
}

interface Fault {
  readonly field: string
  readonly sentence: string
}

function errorsOf(fault: Fault | null) {
  return (field: string) => (fault?.field === field ? fault.sentence : null)
}

/** The first thing that is wrong with a draft, by field. */
function faultOf(draft: EntryDraft): Fault | null {
  const read = diaryContentSchema.safeParse(contentOf(draft))
  if (read.success) return contentFault(read.data)
  const issue = read.error.issues[0]
  const field = issue?.path.filter((part) => part !== 'at')[0] ?? ''
  return { field: String(field), sentence: issue?.message ?? 'A field is wrong.' }
}
