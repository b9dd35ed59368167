import { appError } from '../../app/contract/app-error.ts'
import type { CallInput, CallOutput, ProcedureName } from '../../app/contract/contract.ts'
import { type DeskEvent, deskEventSchema } from '../../app/contract/events.ts'
import type { Reply } from '../../app/contract/procedure.ts'
import type { JobId } from '../../app/job/ids.ts'
import type { DeskClient } from './desk-client.ts'
import { readReply, unreachable } from './read-reply.ts'

/** What the program's own window offers its page. */
interface WindowBridge {
  call(name: string, input: unknown): Promise<unknown>
  listen(on: (event: unknown) => void): () => void
  /** Paths on disk of files that were dropped or chosen. */
  pathsOf(files: File[]): string[]
}

declare global {
  interface Window {
    /** There when the page is shown in the program's own window. */
    readonly battenbook?: WindowBridge
  }
}

/** A client that reaches the desk through the program's own window. */
export function windowClient(bridge: WindowBridge): DeskClient {
  async function call<Name extends ProcedureName>(
    name: Name,
    input: CallInput<Name>,
  ): Promise<Reply<CallOutput<Name>>> {
    try {
      return readReply(name, await bridge.call(name, input))
    } catch {
      return unreachable()
    }
  }
  return {
    call,
    listen(on: (event: DeskEvent) => void) {
      return bridge.listen((raw) => {
        const event = deskEventSchema.safeParse(raw)
        if (event.success) on(event.data)
      })
    },
    async dropFiles(jobId: JobId, files: readonly File[]) {
      const paths = bridge.pathsOf([...files]).filter((path) => path !== '')
      if (paths.length === 0) return noPaths()
      return call('intake.start', { jobId, from: { kind: 'paths', paths } })
    },
    async addPlanImage(jobId: JobId, file: File, about: CallInput<'plan-images.add'>['about']) {
      const paths = bridge.pathsOf([file]).filter((path) => path !== '')
      if (paths.length === 0) return noPaths()
      return call('plan-images.add', { jobId, about, from: { kind: 'paths', paths } })
    },
  }
}

function noPaths(): Reply<never> {
  return {
    ok: false,
    error: appError('unreadable-file', 'What was dropped is not a file on this computer.', {
      help: 'Save it to a folder first, then drop it from there.',
    }),
  }
}
