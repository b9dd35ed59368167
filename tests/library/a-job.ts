import { randomUUID } from 'node:crypto'
import { join } from 'node:path'
import type { JobId } from '../../app/job/ids.ts'
import type { Waiting } from '../../main/library/intake/find-files.ts'
import { takeIn, type Outcome, type TakeInOptions } from '../../main/library/intake/take-in.ts'
import { jobLayout, type JobLayout } from '../../main/library/layout.ts'
import { findJob } from '../../main/store/jobs.ts'
import { openTestDesk, type TestDesk } from './a-desk.ts'

/** A job in a library of its own, an empty card to take files from, and the job's folders. */
export interface TestJob {
  readonly desk: TestDesk
  readonly jobId: JobId
  readonly card: string
  readonly places: JobLayout
}

/** Opens a library with one job for `work`, and closes it again. */
export async function withJob(
  scratch: (name: string) => string,
  work: (job: TestJob) => Promise<void> | void,
): Promise<void> {
  const desk = openTestDesk(scratch('library'))
  try {
    const jobId = await desk.newJob()
    const folder = findJob(desk.library.db, jobId)?.folder ?? ''
    await work({ desk, jobId, card: scratch('card'), places: jobLayout(desk.library.layout, folder) })
  } finally {
    await desk.close()
  }
}

/** Takes files in below the desk, where what happens in the middle can be arranged; answers the outcomes as told. */
export async function takeInDirectly(
  { desk, jobId, places }: TestJob,
  given: Partial<TakeInOptions> & { files: readonly Waiting[] },
): Promise<readonly Outcome[]> {
  const outcomes: Outcome[] = []
  await takeIn(desk.library, jobId, {
    places,
    actor: 'Test operator',
    now: () => 1_800_000_000_000,
    newId: randomUUID,
    signal: new AbortController().signal,
    onUnforeseen: (cause) => {
      throw cause
    },
    ...given,
    onOutcome: (outcome) => {
      outcomes.push(outcome)
      given.onOutcome?.(outcome)
    },
  })
  return outcomes
}

/** Files of a folder, in the order given, ready to be taken in. */
export function waiting(folder: string, ...names: string[]): Waiting[] {
  return names.map((fileName) => ({ path: join(folder, fileName), fileName }))
}

/** `IMG_1.jpg`, `IMG_2.jpg`, ... */
export function countedNames(count: number): string[] {
  return Array.from({ length: count }, (_, i) => `IMG_${i + 1}.jpg`)
}
