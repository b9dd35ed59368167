import { readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { LibraryLayout } from './layout.ts'

/**
 * Marks this process as the library's keeper: the one that may put it in order. Several programs can work on a library at
 * once, but only while no other runs can leftovers be told from files that are just coming in.
 *
 * @returns how to give the mark back, or null when another running program has it
 */
export function becomeKeeper(layout: LibraryLayout): (() => void) | null {
  const path = join(layout.folder, 'keeper.lock')
  for (let attempt = 0; attempt < 2; attempt++) {
    try {
      writeFileSync(path, String(process.pid), { flag: 'wx' })
      return () => rmSync(path, { force: true })
    } catch {
      if (isRunning(keeperOf(path))) return null
      rmSync(path, { force: true })
    }
  }
  return null
}

function keeperOf(path: string): number {
  try {
    return Number.parseInt(readFileSync(path, 'utf8'), 10)
  } catch {
    return Number.NaN
  }
}

function isRunning(pid: number): boolean {
  if (!Number.isInteger(pid) || pid <= 0) return false
  if (pid === process.pid) return true
  try {
    process.kill(pid, 0)
    return true
  } catch (cause) {
    return cause instanceof Error && 'code' in cause && cause.code === 'EPERM'
  }
}
