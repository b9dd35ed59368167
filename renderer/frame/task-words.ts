import type { TaskState } from '../../app/contract/intake.ts'

/** How fast a task goes, from what it has done since it started: `12.5 a second`, or what it is doing while that is not known. */
export function rateWords(task: Pick<TaskState, 'done' | 'total' | 'leftMs' | 'doing'>): string {
  const left = task.total - task.done
  if (task.leftMs === null || task.leftMs <= 0 || left <= 0) return task.doing
  const perSecond = left / (task.leftMs / 1000)
  return perSecond >= 1 ? `${perSecond.toFixed(1)} a second` : `${(perSecond * 60).toFixed(0)} a minute`
}
