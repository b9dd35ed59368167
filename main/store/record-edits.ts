import { refuse } from '../../app/contract/app-error.ts'
import { digestOf } from '../../app/evidence/log-chain.ts'
import { recordKindSchema, type LogEntry, type RecordKind } from '../../app/evidence/log-entry.ts'
import { z } from 'zod'
import { row, rows, run, type ReadDb, type WriteDb } from './database.ts'
import { touchJob } from './jobs.ts'
import { fromJson } from './json-column.ts'
import { appendLog, type Author } from './log.ts'
import { assessmentTable } from './records/assessment.ts'
import { attachmentTagsTable } from './records/attachments.ts'
import { cameraClockTable } from './records/cameras.ts'
import { diaryEntryTable, jobClocksTable } from './records/diary.ts'
import { fieldSurveyTable } from './records/field-survey.ts'
import { frameTable, sheetTable } from './records/job-parts.ts'
import { markupTable } from './records/markups.ts'
import { photoTagsTable } from './records/photos.ts'
import type { RecordTable } from './records/record-table.ts'
import { priceBookTable, scopeTable } from './records/scope.ts'
import {
  draftDecisionTable,
  facetTable,
  findingTable,
  narrationTable,
  outlineTable,
  planImageTable,
  readingTable,
  weatherChoicesTable,
  weatherSourceTable,
  weatherStationTable,
} from './records/tables.ts'
import { videoTagsTable } from './records/videos.ts'
import { indexRecord } from './search-index.ts'

/** One record and the value it is to have; null removes it. */
export interface Write {
  readonly record: RecordKind
  readonly id: string
  readonly after: unknown
}

const changeSchema = z.object({ record: recordKindSchema, id: z.string(), before: z.unknown(), after: z.unknown() })
type Change = z.output<typeof changeSchema>

const changesRowSchema = z.object({ changes: z.string() })
const stepRowSchema = z.object({ id: z.number(), log_seq: z.number(), summary: z.string(), changes: z.string() })

/** Widens a table of one type of record to one that checks what it is given. */
function checked<T>(table: RecordTable<T>): RecordTable<unknown> {
  return { ...table, put: (db, at, value) => table.put(db, at, value === null ? null : table.parse(value)) }
}

const tables = {
  sheet: checked(sheetTable),
  frame: checked(frameTable),
  outline: checked(outlineTable),
  facet: checked(facetTable),
  photo: checked(photoTagsTable),
  markup: checked(markupTable),
  camera: checked(cameraClockTable),
  finding: checked(findingTable),
  reading: checked(readingTable),
  video: checked(videoTagsTable),
  attachment: checked(attachmentTagsTable),
  'plan-image': checked(planImageTable),
  narration: checked(narrationTable),
  'draft-decision': checked(draftDecisionTable),
  'field-survey': checked(fieldSurveyTable),
  assessment: checked(assessmentTable),
  'weather-station': checked(weatherStationTable),
  'weather-source': checked(weatherSourceTable),
  'weather-choices': checked(weatherChoicesTable),
  scope: checked(scopeTable),
  'price-book': checked(priceBookTable),
  'diary-entry': checked(diaryEntryTable),
  'diary-clocks': checked(jobClocksTable),
} satisfies Record<RecordKind, RecordTable<unknown>>

/**
 * The one way in which records change: writes them, logs the change by digest, and keeps a step for undo.
 * Writes that change nothing are left out; when none is left, nothing is logged and the answer is null.
 */
export function recordEdit(
  db: WriteDb,
  jobId: string,
  edit: Author & { summary: string; writes: readonly Write[] },
): LogEntry | null {
  const changes = lastOfEach(edit.writes)
    .map(({ record, id, after }): Change => {
      const table = tables[record]
      // Compared, logged and kept for undo in the form in which it is stored, not as it was handed over.
      return { record, id, before: table.get(db, { jobId, id }), after: after === null ? null : table.parse(after) }
    })
    .filter((change) => digestOrNull(change.before) !== digestOrNull(change.after))
  if (changes.length === 0) return null
  writeAll(
    db,
    jobId,
    changes.map(({ record, id, after }) => ({ record, id, after })),
  )
  const entry = appendLog(db, jobId, {
    ...edit,
    event: { type: 'edited', summary: edit.summary, changes: changes.map(logged) },
  })
  run(db, 'delete from steps where job_id = :jobId and undone = 1', { jobId })
  run(db, 'insert into steps (job_id, log_seq, summary, changes) values (:jobId, :seq, :summary, :changes)', {
    jobId,
    seq: entry.seq,
    summary: edit.summary,
    changes: JSON.stringify(changes),
  })
  touchJob(db, jobId, edit.atMs)
  return entry
}

/** Takes back the newest step that stands; answers its words, or null when there is none. */
export function undoStep(db: WriteDb, jobId: string, author: Author): string | null {
  return replay(db, jobId, { ...author, direction: 'undo' })
}

/** Does again the step that was taken back last; answers its words, or null when there is none. */
export function redoStep(db: WriteDb, jobId: string, author: Author): string | null {
  return replay(db, jobId, { ...author, direction: 'redo' })
}

/** What undo and redo would do, in words. */
export function historyState(db: ReadDb, jobId: string): { undo: string | null; redo: string | null } {
  return { undo: findStep(db, jobId, 'undo')?.summary ?? null, redo: findStep(db, jobId, 'redo')?.summary ?? null }
}

/** The changes of the steps that stand and removed a record of a kind, the newest step first. */
export function standingSteps(
  db: ReadDb,
  jobId: string,
  { removing }: { readonly removing: RecordKind },
): readonly (readonly Change[])[] {
  return rows(
    db,
    `select changes from steps where job_id = :jobId and undone = 0
       and changes like :mark and changes like '%"after":null%' order by id desc`,
    { jobId, mark: `%"record":"${removing}"%` },
  )
    .map((found) => fromJson(z.array(changeSchema), changesRowSchema.parse(found).changes, 'undo step'))
    .filter((changes) => changes.some(({ record, after }) => record === removing && after === null))
}

function replay(
  db: WriteDb,
  jobId: string,
  { direction, actor, atMs }: Author & { direction: 'undo' | 'redo' },
): string | null {
  const step = findStep(db, jobId, direction)
  if (step === null) return null
  const kept = fromJson(z.array(changeSchema), step.changes, 'undo step').map(inPresentForm)
  const changes =
    direction === 'redo' ? kept : kept.toReversed().map((c) => ({ ...c, before: c.after, after: c.before }))
  for (const change of changes) {
    const now = tables[change.record].get(db, { jobId, id: change.id })
    if (digestOrNull(now) !== digestOrNull(change.before)) {
      refuse(
        'conflict',
        `"${step.summary}" can't be ${direction === 'undo' ? 'taken back' : 'done again'}: the record has changed since.`,
      )
    }
  }
  writeAll(db, jobId, changes)
  appendLog(db, jobId, {
    actor,
    atMs,
    event: {
      type: direction === 'undo' ? 'undone' : 'redone',
      summary: step.summary,
      entry: step.log_seq,
      changes: changes.map(logged),
    },
  })
  run(db, 'update steps set undone = :undone where id = :id', { id: step.id, undone: direction === 'undo' ? 1 : 0 })
  touchJob(db, jobId, atMs)
  return step.summary
}

/** A step kept by an older program, its records with the fields that have been added since. */
function inPresentForm(change: Change): Change {
  const parse = (value: unknown) => (value == null ? null : tables[change.record].parse(value))
  return { ...change, before: parse(change.before), after: parse(change.after) }
}

function findStep(db: ReadDb, jobId: string, direction: 'undo' | 'redo'): z.output<typeof stepRowSchema> | null {
  const found =
    direction === 'undo'
      ? row(
          db,
          'select id, log_seq, summary, changes from steps where job_id = :jobId and undone = 0 order by id desc limit 1',
          { jobId },
        )
      : row(
          db,
          'select id, log_seq, summary, changes from steps where job_id = :jobId and undone = 1 order by id limit 1',
          { jobId },
        )
  return found === null ? null : stepRowSchema.parse(found)
}

/** The writes of a step, one for each record: where a step writes a record twice, what it wrote last. */
function lastOfEach(writes: readonly Write[]): readonly Write[] {
  return [...new Map(writes.map((write) => [`${write.record} ${write.id}`, write])).values()]
}

/** Lets go of letters and numbers first, so that records of one step can take them over from each other, either way round. */
function writeAll(db: WriteDb, jobId: string, writes: readonly Write[]): void {
  for (const { record, id } of writes) tables[record].release?.(db, { jobId, id })
  for (const { record, id, after } of writes) {
    tables[record].put(db, { jobId, id }, after)
    indexRecord(db, jobId, { record, id })
  }
}

function logged(change: Change) {
  return {
    record: change.record,
    id: change.id,
    before: digestOrNull(change.before),
    after: digestOrNull(change.after),
  }
}

function digestOrNull(value: unknown): string | null {
  return value === null ? null : digestOf(value)
}
