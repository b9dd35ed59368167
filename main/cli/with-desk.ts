import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { AppFailure, refuse } from '../../app/contract/app-error.ts'
import type { CallInput, CallOutput, ProcedureName } from '../../app/contract/contract.ts'
import type { TaskState } from '../../app/contract/intake.ts'
import type { JobId } from '../../app/job/ids.ts'
import { localCall, type Desk } from '../desk/desk.ts'
import { openDesk } from '../desk/open-desk.ts'

/** A desk as the terminal uses it: errors are thrown, to be put in words once at the end. */
export interface TerminalDesk {
  readonly ask: <Name extends ProcedureName>(name: Name, input: CallInput<Name>) => Promise<CallOutput<Name>>
  /** Waits for long work, telling every change. @throws AppFailure when it failed or was cancelled */
  readonly follow: (taskId: string, onChange: (task: TaskState) => void) => Promise<TaskState>
  /** A job by the number people use, in upper or lower case. */
  readonly jobByNumber: (number: string) => Promise<{ id: JobId; number: string }>
  readonly desk: Desk
}

/** Opens a library, runs `work` and closes it again. Unless `make` says so, the library must be there already. */
export async function withDesk<T>(
  library: string,
  { make }: { make: boolean },
  work: (desk: TerminalDesk) => Promise<T>,
): Promise<T> {
  if (!make && !existsSync(join(library, 'battenbook.db'))) {
    refuse('missing-folder', `There is no library in "${library}".`, {
      help: 'Check the folder, or make a library with: battenbook new LIBRARY',
    })
  }
  const desk = await openDesk(library, { drop: 'upload' })
  try {
    return await work(terminalDesk(desk))
  } finally {
    await desk.close()
  }
}

function terminalDesk(desk: Desk): TerminalDesk {
  const call = localCall(desk)
  const ask: TerminalDesk['ask'] = async (name, input) => {
    const reply = await call(name, input)
    if (!reply.ok) throw new AppFailure(reply.error)
    return reply.value
  }
  return {
    ask,
    desk,
    follow: async (taskId, onChange) => {
      const stop = desk.listen((event) => {
        if (event.type === 'task' && event.task.taskId === taskId) onChange(event.task)
      })
      const task = await desk.tasks.ended(taskId)
      stop()
      if (task.state === 'failed')
        refuse('internal', task.error ?? 'The work failed.', {
          help: 'Mend what is named and run the same command again.',
        })
      if (task.state === 'cancelled') refuse('cancelled', 'The work was cancelled.')
      return task
    },
    jobByNumber: async (number) => {
      const { jobs } = await ask('jobs.list', {})
      const wanted = numberKey(number)
      const job = jobs.find((one) => numberKey(one.number) === wanted)
      return (
        job ??
        refuse('not-found', `There is no job ${number} in this library.`, {
          help: 'List the jobs with: battenbook list LIBRARY',
        })
      )
    },
  }
}

function numberKey(number: string): string {
  return number.trim().normalize('NFC').toLocaleLowerCase('en')
}
