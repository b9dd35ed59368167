import { useJob } from '../state/job-state.tsx'
import { Checkbox } from '../ui/checkbox.tsx'
import { SelectField } from '../ui/select-field.tsx'
import { TextArea } from '../ui/text-area.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './diary.module.css'
import { handedPacket, type EntryDraft } from './entry-draft.ts'

interface FieldsProps {
  readonly draft: EntryDraft
  readonly onChange: (part: Partial<EntryDraft>) => void
  readonly errors: (field: string) => string | null
}

const directions = [
  { key: 'they-called', label: 'They called' },
  { key: 'we-called', label: 'We called' },
  { key: 'not-stated', label: 'Not stated' },
] as const

/** The fields that the kind of an entry asks for. */
export function KindFields(props: FieldsProps) {
  const { draft, onChange, errors } = props
  const line = (key: 'people' | 'person' | 'from' | 'to' | 'what' | 'medium' | 'signedBy', label: string) => (
    <TextField label={label} value={draft[key]} onChange={(text) => onChange({ [key]: text })} error={errors(key)} />
  )
  switch (draft.kind) {
    case 'visit':
      return line('people', 'Who was there')
    case 'call':
      return (
        <>
          {line('person', 'Who was on the line')}
          <SelectField
            label="Which way"
            options={directions}
            value={draft.direction}
            onChange={(direction) => onChange({ direction: direction ?? 'not-stated' })}
          />
        </>
      )
    case 'received':
      return (
        <>
          {line('what', 'What was received')}
          {line('from', 'From whom')}
          {line('medium', 'How')}
        </>
      )
    case 'handed-over':
      return (
        <>
          {line('from', 'From')}
          {line('to', 'To')}
          {line('medium', 'How')}
          {line('signedBy', 'Signed for by')}
          <HandedFields {...props} />
        </>
      )
    case 'reminder':
      return (
        <Checkbox isSelected={draft.isDone} onChange={(isDone) => onChange({ isDone })}>
          Done
        </Checkbox>
      )
    case 'note':
      return null
  }
}

function HandedFields({ draft, onChange, errors }: FieldsProps) {
  const { packets } = useJob()
  return (
    <>
      <SelectField
        label="Packet"
        emptyLabel="No packet"
        options={packets.map(({ id, revision }) => ({ key: id, label: `Revision ${revision}` }))}
        value={draft.packet?.id ?? null}
        onChange={(id) => {
          const chosen = packets.find((packet) => packet.id === id)
          onChange({ packet: chosen === undefined ? null : handedPacket(chosen) })
        }}
      />
      <div className={styles['wide']}>
        <TextArea
          label="What else, one thing a line"
          rows={2}
          value={draft.things}
          onChange={(things) => onChange({ things })}
          error={errors('items')}
        />
      </div>
    </>
  )
}

/** Files of the job that belong to an entry. */
export function FileFields({ draft, onChange }: Omit<FieldsProps, 'errors'>) {
  const { attachments } = useJob()
  if (attachments.length === 0) return null
  const chosen = draft.attachmentIds
  return (
    <div className={styles['wide']} role="group" aria-label="Files that belong to it">
      <p className={styles['quiet']}>
        Files that belong to it. Every file of the job is listed in the packet and goes into the evidence bundle,
        whether an entry names it or not: keep private letters elsewhere.
      </p>
      <div className={styles['checks']}>
        {attachments.map(({ id, file }) => (
          <Checkbox
            key={id}
            isSelected={chosen.includes(id)}
            onChange={(isOn) =>
              onChange({ attachmentIds: isOn ? [...chosen, id] : chosen.filter((one) => one !== id) })
            }
          >
            {file.fileName}
          </Checkbox>
        ))}
      </div>
    </div>
  )
}
