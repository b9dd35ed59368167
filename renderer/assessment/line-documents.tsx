import type { AttachmentId } from '../../app/job/ids.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { SelectField } from '../ui/select-field.tsx'
import styles from './stated.module.css'

interface LineDocumentsProps {
  readonly label: string
  readonly value: readonly AttachmentId[]
  readonly onChange: (attachmentIds: AttachmentId[]) => void
}

/** Files of the job that show what a line says. */
export function LineDocuments({ label, value, onChange }: LineDocumentsProps) {
  const { attachments } = useJob()
  const open = attachments.filter(({ id }) => !value.includes(id))
  return (
    <div className={styles['documents']}>
      {attachments
        .filter(({ id }) => value.includes(id))
        .map(({ id, file }) => (
          <Button key={id} look="quiet" onPress={() => onChange(value.filter((other) => other !== id))}>
            {file.fileName}: take off
          </Button>
        ))}
      {open.length === 0 ? null : (
        <SelectField
          label={label}
          emptyLabel="Add a file"
          options={open.map(({ id, file }) => ({ key: id, label: file.fileName }))}
          value={null}
          onChange={(key) => {
            const chosen = open.find(({ id }) => id === key)
            if (chosen !== undefined) onChange([...value, chosen.id])
          }}
        />
      )}
    </div>
  )
}
