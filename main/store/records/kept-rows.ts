import type { ReadDb } from '../database.ts'

/** Rows of so many jobs are kept at most; those of the job that was asked for longest ago go first. */
const MOST_JOBS = 3

type Row = Readonly<Record<string, unknown>> & { readonly id: string }
type KeptRows<T> = Map<string, { readonly row: Row; readonly value: T }>

/**
 * Reads rows of a job and keeps what they were read as, so that a row is parsed and checked once for as long as it stays
 * the same. Each value of a row is compared with the row that was checked before: one that was changed in any way, by
 * whoever, is checked anew. Values that are handed out are shared, so they must be read only.
 */
export function keepingRows<T>(
  read: (row: unknown) => T,
): (db: ReadDb, jobId: string, rows: readonly unknown[]) => T[] {
  const kept = new WeakMap<ReadDb['connection'], Map<string, KeptRows<T>>>()
  return (db, jobId, rows) => {
    const jobs = kept.get(db.connection) ?? new Map<string, KeptRows<T>>()
    kept.set(db.connection, jobs)
    const known = keptOfJob(jobs, jobId)
    return rows.map((row) => {
      if (!isRow(row)) return read(row)
      const before = known.get(row.id)
      if (before !== undefined && isSame(before.row, row)) return before.value
      const value = read(row)
      known.set(row.id, { row, value })
      return value
    })
  }
}

function keptOfJob<T>(jobs: Map<string, KeptRows<T>>, jobId: string): KeptRows<T> {
  const found = jobs.get(jobId) ?? new Map<string, { row: Row; value: T }>()
  // A map keeps the order in which its keys came: the job asked for now goes to the end of the queue.
  jobs.delete(jobId)
  jobs.set(jobId, found)
  const [oldest] = jobs.keys()
  if (jobs.size > MOST_JOBS && oldest !== undefined) jobs.delete(oldest)
  return found
}

function isRow(row: unknown): row is Row {
  return typeof row === 'object' && row !== null && 'id' in row && typeof row.id === 'string'
}

function isSame(a: Row, b: Row): boolean {
  for (const key in b) if (a[key] !== b[key]) return false
  return true
}
