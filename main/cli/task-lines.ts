import type { TaskState } from '../../app/contract/intake.ts'
import { print } from './print.ts'

/** Tells how long work goes, one line now and then, on a terminal only. */
export function progressLine(json: boolean): (task: TaskState) => void {
  return (task) => {
    if (json || !process.stderr.isTTY) return
    const left = task.leftMs === null ? '' : `, about ${Math.ceil(task.leftMs / 1000)} s left`
    process.stderr.write(`\r\u001b[K${task.done} of ${task.total}${left}${task.state === 'running' ? '' : '\n'}`)
  }
}

/** What an intake did, in lines. */
export function printIntake(task: TaskState): void {
  const { intake } = task
  if (intake === null) return
  print(
    `${intake.photosAdded} photos taken in, ${intake.videosAdded === 0 ? '' : `${intake.videosAdded} videos, `}${intake.attachmentsAdded} other files kept, ${intake.doubles.length} doubles, ${intake.failed.length} failed.`,
  )
  for (const { fileName, sameAs } of intake.doubles) print(`  double: ${fileName} is the same as ${sameAs}`)
  for (const { fileName, reason } of intake.attached) print(`  kept among the attachments: ${fileName}: ${reason}`)
  for (const { fileName, reason } of intake.failed) print(`  failed: ${fileName}: ${reason}`)
}
