import { z } from 'zod'
import { row, type WriteDb } from './database.ts'

/** The next number of a kind in a job. Numbers are given once and never used again, also after a record is removed. */
export function nextNumber(
  db: WriteDb,
  jobId: string,
  name: 'photo' | 'video' | 'finding' | 'reading' | 'packet' | 'diary-entry',
): number {
  const found = row(
    db,
    `insert into counters (job_id, name, last) values (:jobId, :name, 1)
     on conflict (job_id, name) do update set last = last + 1 returning last`,
    { jobId, name },
  )
  return z.object({ last: z.number() }).parse(found).last
}

/** Makes sure that numbers up to `used` are never given again; for jobs that arrive with numbers of their own. */
export function reserveNumber(
  db: WriteDb,
  jobId: string,
  taken: { name: 'finding' | 'reading' | 'diary-entry'; used: number },
): void {
  row(
    db,
    `insert into counters (job_id, name, last) values (:jobId, :name, :used)
     on conflict (job_id, name) do update set last = max(last, :used) returning last`,
    { jobId, ...taken },
  )
}
