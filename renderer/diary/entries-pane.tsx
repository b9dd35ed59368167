import { useMemo, useState } from 'react'
import { useSearch } from 'wouter'
import { diaryTimeShort } from '../../app/diary/diary-time.ts'
import { diaryKindLabels, diaryLabel, type DiaryEntry } from '../../app/diary/entry.ts'
import { filteredEntries, type DiaryFilter } from '../../app/diary/entry-filter.ts'
import { headWords } from '../../app/diary/entry-words.ts'
import { readTarget } from '../frame/addresses.ts'
import { useCommands } from '../state/commands.ts'
import { useJob } from '../state/job-state.tsx'
import { Button } from '../ui/button.tsx'
import { type Column, DataTable } from '../ui/data-table.tsx'
import { EmptyState } from '../ui/empty-state.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { SelectField } from '../ui/select-field.tsx'
import { TextField } from '../ui/text-field.tsx'
import styles from './diary.module.css'
import { diaryKinds } from './diary-kinds.ts'
import { EntryDialog } from './entry-dialog.tsx'
import { EntryView } from './entry-view.tsx'

const shownKinds = [
  { key: 'all', label: 'Everything' },
  { key: 'open', label: 'Open reminders' },
  ...diaryKinds.map((key) => ({ key, label: diaryKindLabels[key] })),
] as const

const columns: readonly Column<DiaryEntry>[] = [
  { key: 'number', title: 'No.', width: '64px', cell: ({ number }) => diaryLabel(number) },
  { key: 'when', title: 'When', width: '190px', cell: ({ content }) => diaryTimeShort(content.at) },
  { key: 'kind', title: 'Kind', width: '150px', cell: ({ content }) => diaryKindLabels[content.kind] },
  {
    key: 'what',
    title: 'What',
    width: 'minmax(0, 1fr)',
    cell: ({ content, struck }) => (
      <span className={struck === null ? undefined : styles['struck']}>
        {headWords(content)}
        {content.text === '' ? '' : ` – ${content.text}`}
      </span>
    ),
  },
]

/** All entries, newest first, and the one that is looked at. */
export function EntriesPane() {
  const { diary } = useJob()
  const [filter, setFilter] = useState<DiaryFilter>({ kind: 'all', text: '' })
  const arrived = readTarget(useSearch())
  const [selectedId, select] = useState<string | null>(arrived?.kind === 'diary' ? arrived.id : null)
  const [editing, setEditing] = useState<DiaryEntry | 'new' | null>(null)
  const shown = useMemo(() => filteredEntries(diary.entries, filter), [diary.entries, filter])
  const selected = diary.entries.find(({ id }) => id === selectedId) ?? null
  useCommands([
    { id: 'diary.new', label: 'New diary entry', keys: 'N', enabled: true, perform: () => setEditing('new') },
  ])
  const adding = (
    <Button look="main" onPress={() => setEditing('new')}>
      New entry
    </Button>
  )
  return (
    <>
      {diary.entries.length === 0 ? (
        <EmptyState
          title="Nothing is in the diary yet"
          sentence="Write down visits, calls and what was said, documents that came and went, and what to think of. It stays with the job and out of every packet; press N for a new entry."
        >
          {adding}
        </EmptyState>
      ) : (
        <div className={styles['split']}>
          <div className={styles['workspace']}>
            <div className={styles['bar']}>
              <FilterFields filter={filter} onChange={setFilter} />
              <span className={styles['quiet']}>{countWords(shown.length, 'entry', 'entries')}</span>
              <span className={styles['gap']} />
              {adding}
            </div>
            <div className={styles['table']} style={{ flex: 1 }}>
              <DataTable
                label="Diary entries, newest first"
                columns={columns}
                rows={shown}
                rowKey={({ id }) => id}
                selectedKey={selectedId}
                onSelect={({ id }) => select(id)}
                onOpen={setEditing}
                empty={<p className={styles['quiet']}>No entry fits.</p>}
              />
            </div>
          </div>
          {selected === null ? null : <EntryView entry={selected} onCorrect={() => setEditing(selected)} />}
        </div>
      )}
      {editing === null ? null : (
        <EntryDialog entry={editing === 'new' ? null : editing} onClose={() => setEditing(null)} />
      )}
    </>
  )
}

function FilterFields({ filter, onChange }: { filter: DiaryFilter; onChange: (filter: DiaryFilter) => void }) {
  return (
    <>
      <SelectField
        label="Show"
        hideLabel
        options={shownKinds}
        value={filter.kind}
        onChange={(kind) => onChange({ ...filter, kind: kind ?? 'all' })}
      />
      <TextField
        label="Search the diary"
        hideLabel
        placeholder="Words, names, D-7"
        value={filter.text}
        onChange={(text) => onChange({ ...filter, text })}
      />
    </>
  )
}
