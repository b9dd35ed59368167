import { print } from './print.ts'
import { printIntake, progressLine } from './task-lines.ts'
import { withDesk } from './with-desk.ts'

/** `battenbook new LIBRARY [--from JOBFOLDER] [--number NUMBER]` */
export async function newCommand(
  json: boolean,
  library: string,
  options: { from?: string; number?: string },
): Promise<number> {
  return withDesk(library, { make: true }, async ({ ask, follow }) => {
    if (options.from === undefined) {
      const job = await ask('jobs.new', { number: options.number ?? null })
      print(json ? JSON.stringify({ ok: true, ...job }) : `Job ${job.number} begun.`)
      return 0
    }
    const { jobId, number, taskId } = await ask('jobs.new-from-folder', { folder: options.from })
    const task = await follow(taskId, progressLine(json))
    if (json) print(JSON.stringify({ ok: true, jobId, number, intake: task.intake }))
    else {
      print(`Job ${number} made from ${options.from}.`)
      printIntake(task)
    }
    return (task.intake?.failed.length ?? 0) === 0 ? 0 : 1
  })
}
