import { refuse } from '../../app/contract/app-error.ts'
import type { TaskState } from '../../app/contract/intake.ts'

/** Long work under way or done: started, watched, cancelled. */
export interface TaskList {
  /** Starts work and answers at once; the promise of its end is kept for those who wait. */
  readonly start: (
    task: Pick<TaskState, 'jobId' | 'kind' | 'title'>,
    work: (handle: TaskHandle) => Promise<void>,
  ) => string
  readonly show: (taskId: string) => TaskState
  readonly list: () => readonly TaskState[]
  readonly cancel: (taskId: string) => void
  /** Resolves with the last state when the work has ended, however it ended. */
  readonly ended: (taskId: string) => Promise<TaskState>
  /** Cancels everything and waits until it has stopped. */
  readonly stopAll: () => Promise<void>
}

/** What the work itself holds: how to tell how far it is, and whether to stop. */
export interface TaskHandle {
  readonly signal: AbortSignal
  readonly update: (change: Partial<Pick<TaskState, 'done' | 'total' | 'doing' | 'intake' | 'packetId'>>) => void
}

interface Running {
  state: TaskState
  readonly abort: AbortController
  ended: Promise<TaskState>
}

/** Finished tasks stay readable for this many more. */
const KEPT = 50
/** Screens are told at most this often while work goes on, milliseconds. */
const TELL_EVERY_MS = 100

/** Makes the list of tasks. `words` turns whatever was thrown into a sentence. */
export function createTaskList(given: {
  now: () => number
  newId: () => string
  tell: (task: TaskState) => void
  words: (cause: unknown) => string
}): TaskList {
  const tasks = new Map<string, Running>()
  const find = (taskId: string): Running =>
    tasks.get(taskId) ?? refuse('not-found', 'This piece of work is no longer known.')
  return {
    start: (task, work) => {
      const running = begin({ ...task, taskId: given.newId() }, given)
      tasks.set(running.state.taskId, running)
      running.ended = follow(running, { work, given })
      for (const old of [...tasks.keys()].slice(0, -KEPT))
        if (tasks.get(old)?.state.state !== 'running') tasks.delete(old)
      return running.state.taskId
    },
    show: (taskId) => find(taskId).state,
    list: () => [...tasks.values()].map((running) => running.state),
    cancel: (taskId) => find(taskId).abort.abort(),
    ended: (taskId) => find(taskId).ended,
    stopAll: async () => {
      for (const running of tasks.values()) running.abort.abort()
      await Promise.all([...tasks.values()].map((running) => running.ended))
    },
  }
}

function begin(task: Pick<TaskState, 'taskId' | 'jobId' | 'kind' | 'title'>, { now }: { now: () => number }): Running {
  const state: TaskState = {
    ...task,
    state: 'running',
    done: 0,
    total: 0,
    doing: '',
    startedAtMs: now(),
    leftMs: null,
    intake: null,
    packetId: null,
    error: null,
  }
  return { state, abort: new AbortController(), ended: Promise.resolve(state) }
}

async function follow(
  running: Running,
  { work, given }: { work: (handle: TaskHandle) => Promise<void>; given: Parameters<typeof createTaskList>[0] },
): Promise<TaskState> {
  let toldAtMs = 0
  const update: TaskHandle['update'] = (change) => {
    running.state = { ...running.state, ...change }
    running.state = { ...running.state, leftMs: timeLeft(running.state, given.now()) }
    if (given.now() - toldAtMs < TELL_EVERY_MS) return
    toldAtMs = given.now()
    given.tell(running.state)
  }
  // The caller gets the task's name before the work says its first word.
  await Promise.resolve()
  try {
    await work({ signal: running.abort.signal, update })
    running.state = { ...running.state, state: running.abort.signal.aborted ? 'cancelled' : 'done', leftMs: null }
  } catch (cause) {
    const cancelled = running.abort.signal.aborted
    running.state = {
      ...running.state,
      state: cancelled ? 'cancelled' : 'failed',
      leftMs: null,
      error: cancelled ? null : given.words(cause),
    }
  }
  given.tell(running.state)
  return running.state
}

function timeLeft({ done, total, startedAtMs }: TaskState, nowMs: number): number | null {
  if (done < 3 || total === 0) return null
  return Math.round(((nowMs - startedAtMs) / done) * (total - done))
}
