import { mkdirSync } from 'node:fs'
import { refuse } from '../../app/contract/app-error.ts'
import { jobIdSchema } from '../../app/job/ids.ts'
import { jobSchema, type Job } from '../../app/job/job.ts'
import { planFrameSchema } from '../../app/job/places.ts'
import type { JobSheet } from '../../app/job/sheet.ts'
import { safeFileName, slug } from '../library/file-names.ts'
import { jobLayout } from '../library/layout.ts'
import { inTransaction, type ReadDb } from '../store/database.ts'
import { addJob, allJobs, jobByNumber } from '../store/jobs.ts'
import { appendLog } from '../store/log.ts'
import { indexJob } from '../store/search-index.ts'
import type { DeskWorld } from './desk-world.ts'

/**
 * Opens a new job with its folder and first log entry. Without a number it gets the next free one of the year.
 *
 * @throws AppFailure `conflict` about `number` when the number is in use
 */
export function newJob(world: DeskWorld, given: { number: string | null; sheet: JobSheet }): Job {
  const { db, layout } = world.library
  const atMs = world.now()
  // All in one transaction: another program may begin a job at the same moment.
  const job = inTransaction(db, (write) => {
    const number = given.number ?? freeNumber(write, atMs)
    if (jobByNumber(write, number) !== null) {
      refuse('conflict', `Job number ${number} is in use.`, {
        about: 'number',
        help: 'Open the job that has this number, or choose another number.',
      })
    }
    const job = jobSchema.parse({
      id: jobIdSchema.parse(world.newId()),
      number,
      createdAtMs: atMs,
      sheet: given.sheet,
      frame: planFrameSchema.parse({ anchor: given.sheet.property.position }),
    })
    const folder = freeFolder(write, job)
    const places = jobLayout(layout, folder)
    for (const path of [places.originals, places.derived, places.attachments, places.issued])
      mkdirSync(path, { recursive: true })
    addJob(write, { job, folder })
    appendLog(write, job.id, { actor: world.operator(), atMs, event: { type: 'job-opened', number } })
    indexJob(write, job.id)
    return job
  })
  world.announce({ type: 'jobs-changed' })
  return job
}

function freeNumber(db: ReadDb, atMs: number): string {
  const year = new Date(atMs).getUTCFullYear()
  for (let next = 1; ; next++) {
    const number = `${year}-${String(next).padStart(4, '0')}`
    if (jobByNumber(db, number) === null) return number
  }
}

/** Folder names differ even where a file system takes upper and lower case for the same. */
function freeFolder(db: ReadDb, { number, sheet }: Job): string {
  const taken = new Set(allJobs(db).map((kept) => kept.folder.toLocaleLowerCase('en')))
  const words = slug(sheet.property.address === '' ? sheet.owner.name : sheet.property.address)
  const wanted = safeFileName(words === '' ? number : `${number}-${words}`)
  for (let copy = 1; ; copy++) {
    const name = copy === 1 ? wanted : `${wanted}-${copy}`
    if (!taken.has(name.toLocaleLowerCase('en'))) return name
  }
}
