import { z } from 'zod'
import { nextEntry } from '../../app/evidence/log-chain.ts'
import { logEntrySchema, logEventSchema, type LogEntry, type LogEvent } from '../../app/evidence/log-entry.ts'
import { eachRow, row, rows, run, type ReadDb, type WriteDb } from './database.ts'
import { fromJson } from './json-column.ts'

const rowSchema = z.object({
  seq: z.number(),
  at_ms: z.number(),
  actor: z.string(),
  event: z.string(),
  previous: z.string().nullable(),
  hash: z.string(),
})

const COLUMNS = 'select seq, at_ms, actor, event, previous, hash from log where job_id = :jobId'

/** Who did something, and when. */
export interface Author {
  readonly actor: string
  readonly atMs: number
}

/** Adds an entry to a job's evidence log, chained to the one before. */
export function appendLog(db: WriteDb, jobId: string, { actor, atMs, event }: Author & { event: LogEvent }): LogEntry {
  const last = lastEntry(db, jobId)
  const entry = nextEntry(last, { atMs, actor, event })
  run(
    db,
    `insert into log (job_id, seq, at_ms, actor, event, previous, hash)
     values (:jobId, :seq, :atMs, :actor, :event, :previous, :hash)`,
    { jobId, seq: entry.seq, atMs, actor, event: JSON.stringify(event), previous: entry.previous, hash: entry.hash },
  )
  return entry
}

/** The newest entry of a job's log, or null. */
export function lastEntry(db: ReadDb, jobId: string): LogEntry | null {
  const found = row(db, `${COLUMNS} order by seq desc limit 1`, { jobId })
  return found === null ? null : toEntry(found)
}

/** Entries after `afterSeq`, oldest first. */
export function logPage(db: ReadDb, jobId: string, page: { afterSeq: number; limit: number }): LogEntry[] {
  return rows(db, `${COLUMNS} and seq > :afterSeq order by seq limit :limit`, { jobId, ...page }).map(toEntry)
}

/** Every entry, oldest first, one at a time. */
export function* wholeLog(db: ReadDb, jobId: string): Generator<LogEntry> {
  for (const found of eachRow(db, `${COLUMNS} order by seq`, { jobId })) yield toEntry(found)
}

function toEntry(found: unknown): LogEntry {
  const { seq, at_ms, actor, event, previous, hash } = rowSchema.parse(found)
  return logEntrySchema.parse({
    seq,
    atMs: at_ms,
    actor,
    event: fromJson(logEventSchema, event, `log entry ${seq}`),
    previous,
    hash,
  })
}
