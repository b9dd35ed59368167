import { Button } from '../ui/button.tsx'
import { Icon } from '../ui/icon.tsx'
import { IconButton } from '../ui/icon-button.tsx'
import { TextField } from '../ui/text-field.tsx'
import { SectionFrame } from './section-frame.tsx'
import styles from './sheet.module.css'
import { useSection } from './use-section.ts'

const words = {
  permits: { title: 'Permits', note: 'Roof permits on file for the house.', one: 'permit', reference: 'Permit number' },
  priorRepairs: {
    title: 'Earlier repairs',
    note: 'Work on the roof before the loss, with how it is known.',
    one: 'repair',
    reference: 'Invoice or permit',
  },
} as const

const emptyNote = { date: null, reference: '', description: '' }

/** A list of dated notes: permits, or repairs made before the loss. */
export function DatedNotesSection({ which }: { which: keyof typeof words }) {
  const section = useSection(which)
  const { value, set, errors } = section
  const { title, note, one, reference } = words[which]
  const at = (row: number, name: string) => ({
    name: `${which}.${row}.${name}`,
    hideLabel: row > 0,
    error: errors.get(`${which}.${row}.${name}`) ?? null,
  })
  return (
    <SectionFrame title={title} note={note} section={section}>
      <div className={styles['rows']}>
        {value.map((entry, row) => (
          <div
            key={row}
            className={`${styles['row']} ${styles['dated']}`}
            role="group"
            aria-label={`${title} ${row + 1}`}
          >
            <TextField
              label="Date"
              placeholder="2019-06-02"
              value={entry.date ?? ''}
              {...at(row, 'date')}
              onChange={(text) => set(value.with(row, { ...entry, date: text.trim() === '' ? null : text.trim() }))}
            />
            <TextField
              label={reference}
              value={entry.reference}
              {...at(row, 'reference')}
              onChange={(text) => set(value.with(row, { ...entry, reference: text }))}
            />
            <TextField
              label="What was done"
              value={entry.description}
              {...at(row, 'description')}
              onChange={(text) => set(value.with(row, { ...entry, description: text }))}
            />
            <IconButton icon="trash" label={`Remove ${one} ${row + 1}`} onPress={() => set(value.toSpliced(row, 1))} />
          </div>
        ))}
        <Button onPress={() => set([...value, emptyNote])}>
          <Icon name="plus" />
          Add a {one}
        </Button>
      </div>
    </SectionFrame>
  )
}
