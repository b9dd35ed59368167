import { print } from './print.ts'
import { printIntake, progressLine } from './task-lines.ts'
import { withDesk } from './with-desk.ts'

/** `battenbook take-in LIBRARY JOB PATH...`; exit code 1 when a file failed. */
export async function takeInCommand(
  json: boolean,
  { library, job, paths }: { library: string; job: string; paths: readonly string[] },
): Promise<number> {
  return withDesk(library, { make: false }, async ({ ask, follow, jobByNumber }) => {
    const { id } = await jobByNumber(job)
    const { taskId } = await ask('intake.start', { jobId: id, from: { kind: 'paths', paths: [...paths] } })
    const task = await follow(taskId, progressLine(json))
    const ok = (task.intake?.failed.length ?? 0) === 0
    if (json) print(JSON.stringify({ ok, intake: task.intake }))
    else printIntake(task)
    return ok ? 0 : 1
  })
}
