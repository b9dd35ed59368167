import { randomUUID } from 'node:crypto'
import { open, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'

/** Files on their way to their place carry this ending; a start of the program sweeps what is left of them. */
export const ARRIVING = '.arriving'

/** Originals may be read by all and written by nobody. */
const READ_ONLY = 0o444

/**
 * Writes a file so that after a crash it is either wholly there or not at all: temporary name, sync, rename, sync of the
 * folder.
 *
 * @param path where the file is to be
 * @param bytes its content
 */
export async function writeWhole(path: string, bytes: Uint8Array, { readOnly = false } = {}): Promise<void> {
  const temporary = join(dirname(path), `${randomUUID()}${ARRIVING}`)
  try {
    const file = await open(temporary, 'wx', readOnly ? READ_ONLY : 0o644)
    try {
      await file.writeFile(bytes)
      await file.sync()
    } finally {
      await file.close()
    }
    await rename(temporary, path)
  } catch (cause) {
    await rm(temporary, { force: true })
    throw cause
  }
  await syncFolder(dirname(path))
}

/** Makes renames in a folder last. Windows has no such call and needs none. */
export async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}
