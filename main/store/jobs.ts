import { z } from 'zod'
import { planFrameSchema } from '../../app/job/places.ts'
import { jobSheetSchema } from '../../app/job/sheet.ts'
import { jobSchema, type Job } from '../../app/job/job.ts'
import { row, rows, run, type ReadDb, type WriteDb } from './database.ts'
import { fromJson } from './json-column.ts'

const jobRowSchema = z.object({
  id: z.string(),
  number: z.string(),
  folder: z.string(),
  created_at_ms: z.number(),
  sheet: z.string(),
  frame: z.string(),
})

/** A job and the name of its folder under `jobs/`. */
export interface StoredJob {
  readonly job: Job
  readonly folder: string
}

const COLUMNS = 'select id, number, folder, created_at_ms, sheet, frame from jobs'

/** Job numbers are the same when they differ only in case or outer spaces. */
function numberKey(number: string): string {
  return number.trim().normalize('NFC').toLocaleLowerCase('en')
}

/** One job by identity, or null. */
export function findJob(db: ReadDb, id: string): StoredJob | null {
  const found = row(db, `${COLUMNS} where id = :id`, { id })
  return found === null ? null : toJob(found)
}

/** One job by the number people use, or null. */
export function jobByNumber(db: ReadDb, number: string): StoredJob | null {
  const found = row(db, `${COLUMNS} where number_key = :key`, { key: numberKey(number) })
  return found === null ? null : toJob(found)
}

/** Every job, the last changed first. */
export function allJobs(db: ReadDb): StoredJob[] {
  return rows(db, `${COLUMNS} order by changed_at_ms desc, number`).map(toJob)
}

/** Identity and folder of every job, without what is in it. */
export function allJobFolders(db: ReadDb): readonly { readonly id: string; readonly folder: string }[] {
  const kept = z.object({ id: z.string(), folder: z.string() })
  return rows(db, 'select id, folder from jobs').map((found) => kept.parse(found))
}

/** Adds a job. */
export function addJob(db: WriteDb, { job, folder }: StoredJob): void {
  run(
    db,
    `insert into jobs (id, number, number_key, folder, created_at_ms, changed_at_ms, sheet, frame)
     values (:id, :number, :key, :folder, :at, :at, :sheet, :frame)`,
    {
      id: job.id,
      number: job.number,
      key: numberKey(job.number),
      folder,
      at: job.createdAtMs,
      sheet: JSON.stringify(job.sheet),
      frame: JSON.stringify(job.frame),
    },
  )
}

/** Notes that something in a job changed: what it lacks has to be counted again. */
export function touchJob(db: WriteDb, jobId: string, atMs: number): void {
  run(db, 'update jobs set changed_at_ms = :atMs, lacks = null, revision = revision + 1 where id = :jobId', {
    jobId,
    atMs,
  })
}

/** The number that goes up with every change of a job; 0 for a job that is not there. */
export function jobRevision(db: ReadDb, jobId: string): number {
  const found = row(db, 'select revision from jobs where id = :jobId', { jobId })
  return found === null ? 0 : z.object({ revision: z.number() }).parse(found).revision
}

/** Keeps the count of what a job lacks until the job changes. */
export function setLacks(db: WriteDb, jobId: string, lacks: number): void {
  run(db, 'update jobs set lacks = :lacks where id = :jobId', { jobId, lacks })
}

const tallyRowSchema = z.object({
  id: z.string(),
  changed_at_ms: z.number(),
  lacks: z.number().nullable(),
  photos: z.number(),
  findings: z.number(),
  facets: z.number(),
  packets: z.number(),
})
export type JobTally = z.output<typeof tallyRowSchema>

/** Counts per job, for the list of jobs. */
export function jobTallies(db: ReadDb): Map<string, JobTally> {
  const counted = rows(
    db,
    `select id, changed_at_ms, lacks,
       (select count(*) from photos where job_id = jobs.id) as photos,
       (select count(*) from findings where job_id = jobs.id) as findings,
       (select count(*) from facets where job_id = jobs.id) as facets,
       (select count(*) from packets where job_id = jobs.id) as packets
     from jobs`,
  ).map((found) => tallyRowSchema.parse(found))
  return new Map(counted.map((tally) => [tally.id, tally]))
}

function toJob(found: unknown): StoredJob {
  const kept = jobRowSchema.parse(found)
  return {
    folder: kept.folder,
    job: jobSchema.parse({
      id: kept.id,
      number: kept.number,
      createdAtMs: kept.created_at_ms,
      sheet: fromJson(jobSheetSchema, kept.sheet, `sheet of job ${kept.number}`),
      frame: fromJson(planFrameSchema, kept.frame, `plan frame of job ${kept.number}`),
    }),
  }
}
