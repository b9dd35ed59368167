import type { JobId } from '../../app/job/ids.ts'
import { inTransaction, type ReadDb } from '../store/database.ts'
import { nextNumber } from '../store/counters.ts'
import { jobRevision } from '../store/jobs.ts'
import { recordEdit, type Write } from '../store/record-edits.ts'
import type { DeskWorld } from './desk-world.ts'
import { needJob } from './snapshot.ts'

/** One edit by a person: what it is called and what it writes, worked out inside the transaction. */
export interface Edit<T> {
  readonly summary: string
  readonly writes: readonly Write[]
  readonly result: T
}

/** Runs an edit as one transaction, one log entry and one step of undo, then tells the screens. */
export function editJob<T>(world: DeskWorld, jobId: JobId, plan: (db: ReadDb, newNumber: NumberGiver) => Edit<T>): T {
  needJob(world.library.db, jobId)
  const { edit, changed } = inTransaction(world.library.db, (db) => {
    const edit = plan(db, (name) => nextNumber(db, jobId, name))
    const entry = recordEdit(db, jobId, { actor: world.operator(), atMs: world.now(), ...edit })
    return { edit, changed: entry !== null }
  })
  if (changed) announceChange(world, jobId)
  return edit.result
}

type NumberGiver = (name: 'finding' | 'reading' | 'diary-entry') => number

/** Tells the screens that a job's records changed. */
export function announceChange(world: DeskWorld, jobId: JobId): void {
  world.announce({ type: 'job-changed', jobId, revision: jobRevision(world.library.db, jobId) })
  world.announce({ type: 'jobs-changed' })
}
