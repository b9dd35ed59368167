import { useMemo } from 'react'
import { findingLabel } from '../../app/evidence/finding.ts'
import { whatWords } from '../../app/packet/finding-words.ts'
import type { Cue } from '../../app/narration/cue.ts'
import { type JobClock, jobClock } from '../state/job-clock.ts'
import { useJob } from '../state/job-state.tsx'
import { relatedCues } from '../state/relations.ts'
import { useSelection } from '../state/selection.tsx'
import { type Column, DataTable } from '../ui/data-table.tsx'
import { cueTimeWords } from './cue-times.ts'
import { CueText } from './cue-text.tsx'
import styles from './narration.module.css'
import type { ReadNarration, StandingDraft } from './use-narration.ts'

interface CueRow {
  readonly at: number
  readonly cue: Cue
  /** Drafts that were read from its words. */
  readonly drafts: readonly StandingDraft[]
}

interface CueTableProps {
  readonly read: ReadNarration
  readonly onCue: (cue: number) => void
}

/** The cues in order, their drafts beside. */
export function CueTable({ read, onCue }: CueTableProps) {
  const job = useJob()
  const { selection } = useSelection()
  const clock = useMemo(() => jobClock(job), [job])
  const rows = useMemo(() => rowsOf(read), [read])
  const related = useMemo(
    () => new Set([...relatedCues(selection, job, read.narration.id)].map(String)),
    [selection, job, read.narration.id],
  )
  const selected =
    selection.kind === 'cue' && selection.narrationId === read.narration.id ? String(selection.cue) : null
  return (
    <DataTable
      label="Cues of the narration"
      columns={useColumns(read.startMs, clock)}
      rows={rows}
      rowKey={(row) => String(row.at)}
      rowHeightPx={46}
      selectedKey={selected}
      relatedKeys={related}
      onSelect={(row) => onCue(row.at)}
      empty={<p>This narration has no cues.</p>}
    />
  )
}

function rowsOf({ narration, drafts }: ReadNarration): readonly CueRow[] {
  const byCue = new Map<number, StandingDraft[]>()
  for (const standing of drafts) {
    for (const cue of standing.draft.cues) byCue.set(cue, [...(byCue.get(cue) ?? []), standing])
  }
  return narration.cues.map((cue, at) => ({ at, cue, drafts: byCue.get(at) ?? [] }))
}

function useColumns(startMs: number | null, clock: JobClock): readonly Column<CueRow>[] {
  return useMemo(
    () => [
      {
        key: 'time',
        title: startMs === null ? 'From the start' : 'Time',
        width: '92px',
        cell: ({ cue }) => cueTimeWords(cue.startMs, startMs, clock),
      },
      {
        key: 'words',
        title: 'Spoken',
        width: 'minmax(0, 3fr)',
        cell: ({ at, cue, drafts }) => (
          <span className={styles['words']}>
            {cue.speaker === '' ? null : <span className={styles['quiet']}>{cue.speaker}: </span>}
            <CueText text={cue.text} cue={at} drafts={drafts.map(({ draft }) => draft)} />
          </span>
        ),
      },
      {
        key: 'drafts',
        title: 'Drafts',
        width: 'minmax(0, 2fr)',
        cell: ({ at, drafts }) => (
          <span className={styles['words']}>
            {drafts
              .filter(({ draft }) => draft.cues[0] === at)
              .map(draftWords)
              .join('; ')}
          </span>
        ),
      },
    ],
    [startMs, clock],
  )
}

function draftWords({ draft, decision, finding }: StandingDraft): string {
  const what = whatWords({ component: draft.component.value, condition: draft.condition.value })
  if (decision === null) return what
  if (decision.findingId === null) return `Dropped: ${what}`
  return finding === null ? `Finding removed: ${what}` : `${findingLabel(finding.number)} ${what}`
}
