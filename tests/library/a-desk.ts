import { randomUUID } from 'node:crypto'
import { join } from 'node:path'
import { AppFailure } from '../../app/contract/app-error.ts'
import type { CallInput, CallOutput, ProcedureName } from '../../app/contract/contract.ts'
import type { TaskState } from '../../app/contract/intake.ts'
import type { JobId } from '../../app/job/ids.ts'
import { createDesk, localCall, type Desk } from '../../main/desk/desk.ts'
import { openLibrary, type Library } from '../../main/library/open-library.ts'

/** 14 March 2026, 18:00 UTC: where the clock of a test desk starts. */
export const DESK_OPENED_MS = Date.UTC(2026, 2, 14, 18)

/** A desk over a library of its own, with a clock that goes on by a second whenever it is looked at. */
export interface TestDesk {
  readonly desk: Desk
  readonly library: Library
  /** Calls and expects a value. @throws AppFailure with the error that came instead */
  readonly ask: <Name extends ProcedureName>(name: Name, input: CallInput<Name>) => Promise<CallOutput<Name>>
  readonly newJob: (number?: string) => Promise<JobId>
  /** Takes files in and waits for the end. */
  readonly takeIn: (jobId: JobId, ...paths: string[]) => Promise<TaskState>
  /** What was written to the log file. */
  readonly reports: readonly string[]
  readonly close: () => Promise<void>
}

/** Opens a library and sets a desk up over it that checks its own answers. */
export function openTestDesk(folder: string, { sampleFolder = join(folder, 'no-sample') } = {}): TestDesk {
  let clockMs = DESK_OPENED_MS
  const now = () => (clockMs += 1000)
  const reports: string[] = []
  const library = openLibrary(folder, { nowMs: now() })
  const desk = createDesk({
    library,
    now,
    newId: randomUUID,
    defaultOperator: 'Test operator',
    report: (line) => reports.push(line),
    programVersion: 'test',
    sampleFolder,
    drop: 'upload',
    checkAnswers: true,
  })
  const call = localCall(desk)
  const ask: TestDesk['ask'] = async (name, input) => {
    const reply = await call(name, input)
    if (!reply.ok) throw new AppFailure(reply.error)
    return reply.value
  }
  return {
    desk,
    library,
    ask,
    reports,
    newJob: async (number) => (await ask('jobs.new', { number: number ?? null })).jobId,
    takeIn: async (jobId, ...paths) => {
      const { taskId } = await ask('intake.start', { jobId, from: { kind: 'paths', paths } })
      return desk.tasks.ended(taskId)
    },
    close: () => desk.close(),
  }
}
