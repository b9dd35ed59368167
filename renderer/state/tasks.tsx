import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react'
import type { TaskState } from '../../app/contract/intake.ts'
import type { JobId } from '../../app/job/ids.ts'
import { useDesk } from '../client/client-context.tsx'
import { useMessages } from '../ui/message.tsx'

/** Files on their way to the desk, before their intake starts. */
export interface Sending {
  readonly jobId: JobId
  readonly files: number
  readonly sentBytes: number
  readonly totalBytes: number
}

interface Tasks {
  readonly tasks: readonly TaskState[]
  readonly sending: Sending | null
  /** Sends files and starts their intake; answers the task's identity, or null when that failed. */
  takeIn(jobId: JobId, files: readonly File[]): Promise<string | null>
  cancel(taskId: string): Promise<void>
  /** Takes a finished task off the list. */
  putAway(taskId: string): void
}

const TasksContext = createContext<Tasks | null>(null)

/** Holds the long-running work of the whole library. */
export function TasksProvider({ children }: { children: ReactNode }) {
  const { tasks, putAway } = useTaskStates()
  const { sending, takeIn, cancel } = useTaskCalls()
  const state = useMemo(() => ({ tasks, sending, takeIn, cancel, putAway }), [tasks, sending, takeIn, cancel, putAway])
  return <TasksContext value={state}>{children}</TasksContext>
}

/** The long-running work there is, and the ways to start and stop it. */
export function useTasks(): Tasks {
  const tasks = useContext(TasksContext)
  if (tasks === null) throw new Error('useTasks is used outside a TasksProvider.')
  return tasks
}

function useTaskStates() {
  const desk = useDesk()
  const [tasks, setTasks] = useState<readonly TaskState[]>([])
  const [away, setAway] = useState<ReadonlySet<string>>(new Set())
  useEffect(() => {
    void desk.call('tasks.list', {}).then((reply) => {
      if (!reply.ok) return
      const running = reply.value.tasks.filter((task) => task.state === 'running')
      setTasks((heard) => running.reduce((list, task) => (has(list, task) ? list : withTask(list, task)), heard))
    })
    return desk.listen((event) => {
      if (event.type === 'task') setTasks((before) => withTask(before, event.task))
    })
  }, [desk])
  const putAway = useCallback((taskId: string) => setAway((before) => new Set([...before, taskId])), [])
  const shown = useMemo(() => tasks.filter((task) => !away.has(task.taskId)), [tasks, away])
  return { tasks: shown, putAway }
}

function useTaskCalls() {
  const desk = useDesk()
  const { say } = useMessages()
  const [sending, setSending] = useState<Sending | null>(null)
  const takeIn = useCallback(
    async (jobId: JobId, files: readonly File[]) => {
      if (files.length === 0) return null
      const reply = await desk.dropFiles(jobId, files, (sentBytes, totalBytes) =>
        setSending({ jobId, files: files.length, sentBytes, totalBytes }),
      )
      setSending(null)
      if (reply.ok) return reply.value.taskId
      say({ tone: 'error', text: reply.error.message, help: reply.error.help })
      return null
    },
    [desk, say],
  )
  const cancel = useCallback(
    async (taskId: string) => {
      const reply = await desk.call('tasks.cancel', { taskId })
      if (!reply.ok) say({ tone: 'error', text: reply.error.message, help: reply.error.help })
    },
    [desk, say],
  )
  return { sending, takeIn, cancel }
}

function has(tasks: readonly TaskState[], task: TaskState): boolean {
  return tasks.some((one) => one.taskId === task.taskId)
}

function withTask(tasks: readonly TaskState[], task: TaskState): readonly TaskState[] {
  if (!has(tasks, task)) return [...tasks, task]
  return tasks.map((one) => (one.taskId === task.taskId ? task : one))
}
