import { refuse } from '../../app/contract/app-error.ts'
import { print } from './print.ts'
import { printIntake, progressLine } from './task-lines.ts'
import { withDesk } from './with-desk.ts'

export interface NewFlags {
  readonly from?: string
  readonly number?: string
}

/** `battenbook new LIBRARY [--from JOBFOLDER] [--number NUMBER]` */
export async function newCommand(json: boolean, library: string, options: NewFlags): Promise<number> {
  if (options.from !== undefined && options.number !== undefined)
    refuse('invalid', '--number does not go with --from: the number stands in job.json.', {
      help: 'Leave one of the two out.',
    })
  return withDesk(library, { make: true }, async ({ ask, follow }) => {
    if (options.from === undefined) {
      const job = await ask('jobs.new', { number: options.number ?? null })
      print(json ? JSON.stringify({ ok: true, ...job }) : `Job ${job.number} begun.`)
      return 0
    }
    const { jobId, number, taskId } = await ask('jobs.new-from-folder', { folder: options.from })
    const task = await follow(taskId, progressLine(json))
    const ok = (task.intake?.failed.length ?? 0) === 0
    if (json) print(JSON.stringify({ ok, jobId, number, intake: task.intake }))
    else {
      print(`Job ${number} made from ${options.from}.`)
      printIntake(task)
    }
    return ok ? 0 : 1
  })
}
