import { randomUUID } from 'node:crypto'
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import type { LibraryLayout } from './layout.ts'
import { isLeftBehind, ownMark } from './process-mark.ts'

/**
 * Notes in the library's folder that this program has it open. Several programs can work on a library at once.
 *
 * @returns how to take the note back
 */
export function keepLibrary(layout: LibraryLayout): () => void {
  const folder = notesFolder(layout.folder)
  mkdirSync(folder, { recursive: true })
  for (const name of readdirSync(folder)) if (isLeftBehind(name)) rmSync(join(folder, name), { force: true })
  const note = join(folder, `${ownMark}-${randomUUID()}`)
  writeFileSync(note, '')
  return () => rmSync(note, { force: true })
}

/** True when a running program has the library in `folder` open. */
export function isKept(folder: string): boolean {
  try {
    return readdirSync(notesFolder(folder)).some((name) => !isLeftBehind(name))
  } catch {
    return false
  }
}

function notesFolder(folder: string): string {
  return join(folder, 'open-in')
}
