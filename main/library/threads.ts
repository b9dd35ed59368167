import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { programFolder } from '../program.ts'

/** Threads that read files which may be broken or hostile: what one does to time or memory ends with its thread. */
export interface Threads {
  /**
   * Gives a thread a task and waits for its answer.
   *
   * @throws Error where the thread fails, or takes too long; it is then ended
   */
  readonly ask: (task: unknown) => Promise<unknown>
}

export const TOO_LONG = 'it takes too long'

interface Member {
  readonly worker: Worker
  idle: NodeJS.Timeout | null
}

/** An idle thread keeps the memory of its largest task, so it goes soon. */
const IDLE_MS = 3_000
const MOST_HEAP_MB = 512

/**
 * Threads of one kind, begun when they are needed.
 *
 * @param kind where the worker's source stands below `main/`, and the name it has when built; at most `most` work at a
 *   time, each task for `longestMs`
 */
export function createThreads(kind: { source: string; built: string; most: number; longestMs: number }): Threads {
  const free: Member[] = []
  const waiting: (() => void)[] = []
  let working = 0
  const keep = (member: Member) => {
    member.worker.unref()
    member.idle = setTimeout(() => {
      free.splice(free.indexOf(member), 1)
      void member.worker.terminate()
    }, IDLE_MS)
    member.idle.unref()
    free.push(member)
  }
  const work = async (task: unknown): Promise<unknown> => {
    const member = free.pop() ?? { worker: newWorker(kind), idle: null }
    if (member.idle !== null) clearTimeout(member.idle)
    member.worker.ref()
    try {
      const answer = await answerOf(member.worker, { task, longestMs: kind.longestMs })
      keep(member)
      return answer
    } catch (cause) {
      void member.worker.terminate()
      throw cause
    }
  }
  return {
    ask: async (task) => {
      while (working >= kind.most) await new Promise<void>((resolve) => waiting.push(resolve))
      working += 1
      try {
        return await work(task)
      } finally {
        working -= 1
        waiting.shift()?.()
      }
    },
  }
}

function answerOf(worker: Worker, { task, longestMs }: { task: unknown; longestMs: number }): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const onMessage = (reply: unknown) => settle(() => resolve(reply))
    const onError = (cause: Error) => settle(() => reject(cause))
    const onExit = () => onError(new Error('the thread ended'))
    const timer = setTimeout(() => onError(new Error(TOO_LONG)), longestMs)
    function settle(end: () => void) {
      clearTimeout(timer)
      worker.off('message', onMessage).off('error', onError).off('exit', onExit)
      end()
    }
    worker.on('message', onMessage).on('error', onError).on('exit', onExit)
    worker.postMessage(task)
  })
}

function newWorker({ source, built }: { source: string; built: string }): Worker {
  const inSource = join(programFolder, 'main', ...source.split('/'))
  // Beside the built program, or in the source where that is at hand.
  const path = existsSync(inSource) ? inSource : join(programFolder, 'dist', 'main', built)
  const worker = new Worker(path, { resourceLimits: { maxOldGenerationSizeMb: MOST_HEAP_MB } })
  // A thread that is being ended may still fail; nobody waits for it any more.
  worker.on('error', () => undefined)
  return worker
}
