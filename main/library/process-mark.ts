import { randomBytes } from 'node:crypto'

/**
 * Stands in the names of whatever this run of the program is in the middle of making, so that another run can tell what
 * is being made from what was left behind. The random part tells two runs with the same process number apart.
 */
export const ownMark = `${process.pid}-${randomBytes(6).toString('hex')}`

/** Reads the mark that a name starts with. */
const MARK = /^(\d{1,10})-[0-9a-f]{12}/

/** True when the name starts with the mark of a run that is over, or with none. */
export function isLeftBehind(name: string): boolean {
  const [mark, pid] = MARK.exec(name) ?? []
  if (mark === undefined || pid === undefined) return true
  return Number(pid) === process.pid ? mark !== ownMark : !isRunning(Number(pid))
}

function isRunning(pid: number): boolean {
  if (pid <= 0) return false
  try {
    process.kill(pid, 0)
    return true
  } catch (cause) {
    return cause instanceof Error && 'code' in cause && cause.code === 'EPERM'
  }
}
