import { useMemo, useState } from 'react'
import type { LogEntry } from '../../app/evidence/log-entry.ts'
import { jobClock, dayWords, timeWords } from '../state/job-clock.ts'
import { useJob } from '../state/job-state.tsx'
import { recordsOfEntry } from '../state/relations.ts'
import { useRelated, useSelection } from '../state/selection.tsx'
import { Badge } from '../ui/badge.tsx'
import { type Column, DataTable } from '../ui/data-table.tsx'
import { countWords } from '../ui/quantity-words.ts'
import { SegmentedChoice } from '../ui/segmented-choice.tsx'
import { TextField } from '../ui/text-field.tsx'
import { type EntryGroup, entryFits, entryGroups, entryWords } from './entry-words.ts'
import styles from './log.module.css'
import { type ChainState, useChainState, useLogEntries } from './use-log.ts'

/** The evidence log: every change of the record, who made it, and whether the chain holds. */
export function LogWorkspace() {
  const entries = useLogEntries()
  const chain = useChainState()
  const [group, setGroup] = useState<EntryGroup>('all')
  const [text, setText] = useState('')
  const shown = useMemo(
    () => entries.filter((entry) => entryFits(entry, { group, text: text.trim() })).toReversed(),
    [entries, group, text],
  )
  const { selection, select } = useSelection()
  const related = useRelatedEntries(entries)
  return (
    <section className={styles['log']} aria-label="Evidence log">
      <header className={styles['head']}>
        <h2 className={styles['title']}>Evidence log</h2>
        <ChainLine chain={chain} />
      </header>
      <div className={styles['tools']}>
        <SegmentedChoice label="Show" hideLabel options={entryGroups} value={group} onChange={setGroup} />
        <div className={styles['filter']}>
          <TextField
            label="Filter by words"
            hideLabel
            placeholder="Filter by words or name"
            value={text}
            onChange={setText}
          />
        </div>
        <span className={styles['quiet']}>{countWords(shown.length, 'entry', 'entries')}</span>
      </div>
      <div className={styles['table']}>
        <DataTable
          label="Entries of the evidence log, newest first"
          columns={useColumns()}
          rows={shown}
          rowKey={(entry) => String(entry.seq)}
          rowHeightPx={30}
          selectedKey={selection.kind === 'entry' ? String(selection.seq) : null}
          relatedKeys={related}
          onSelect={(entry) => select({ kind: 'entry', seq: entry.seq })}
          empty={<p className={styles['none']}>No entry has these words.</p>}
        />
      </div>
    </section>
  )
}

function ChainLine({ chain }: { chain: ChainState }) {
  const { log } = useJob()
  return (
    <p className={styles['chain']}>
      {chain.kind === 'checking' ? (
        <span className={styles['quiet']}>Replaying the chain…</span>
      ) : chain.brokenAtSeq === null ? (
        <Badge tone="good">Chain holds, {countWords(chain.entries, 'entry', 'entries')}</Badge>
      ) : (
        <Badge tone="bad">
          Chain broken at entry {chain.brokenAtSeq}
          {chain.why === null ? '' : `: ${chain.why}`}
        </Badge>
      )}
      <span className={styles['quiet']}>Head</span>
      <code className={styles['hash']}>{log.headHash}</code>
    </p>
  )
}

function useColumns(): readonly Column<LogEntry>[] {
  const job = useJob()
  return useMemo(() => {
    const clock = jobClock(job)
    return [
      { key: 'seq', title: 'No.', width: '56px', align: 'end', cell: (entry) => entry.seq },
      {
        key: 'time',
        title: `Time, ${clock.zoneWords}`,
        width: '200px',
        cell: (entry) => (
          <>
            <span className={styles['quiet']}>{dayWords(entry.atMs, clock)}</span> {timeWords(entry.atMs, clock)}
          </>
        ),
      },
      { key: 'what', title: 'What', width: 'minmax(0, 1fr)', cell: (entry) => entryWords(entry.event) },
      { key: 'who', title: 'Who', width: '130px', cell: (entry) => (entry.actor === '' ? 'not named' : entry.actor) },
    ]
  }, [job])
}

/** Entries about the records that are selected elsewhere. */
function useRelatedEntries(entries: readonly LogEntry[]): ReadonlySet<string> {
  const { photoIds, findingIds, facetIds } = useRelated()
  const { selection } = useSelection()
  return useMemo(() => {
    if (selection.kind === 'none' || selection.kind === 'entry') return new Set()
    const wanted: readonly [Parameters<typeof recordsOfEntry>[1], ReadonlySet<string>][] =
      selection.kind === 'photos'
        ? [['photo', photoIds]]
        : [
            ['finding', selection.kind === 'finding' ? findingIds : new Set()],
            ['facet', selection.kind === 'facet' ? facetIds : new Set()],
            ['reading', selection.kind === 'reading' ? new Set([selection.id]) : new Set()],
          ]
    const named = (entry: LogEntry) =>
      wanted.some(([kind, ids]) => [...recordsOfEntry(entry, kind)].some((id) => ids.has(id)))
    return new Set(entries.filter(named).map((entry) => String(entry.seq)))
  }, [entries, selection, photoIds, findingIds, facetIds])
}
