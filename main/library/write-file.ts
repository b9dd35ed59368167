import { randomUUID } from 'node:crypto'
import { closeSync, fsyncSync, openSync } from 'node:fs'
import { open, rename, rm } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { ownMark } from './process-mark.ts'

/** Files on their way to their place carry this ending; a start of the program sweeps what is left of them. */
export const ARRIVING = '.arriving'

/** Originals may be read by all and written by nobody. */
const READ_ONLY = 0o444

/** A name in `folder` for a file on its way in; it says which run of the program is writing it. */
export function arrivingPath(folder: string): string {
  return join(folder, `${ownMark}-${randomUUID()}${ARRIVING}`)
}

/**
 * Writes a read-only file under an arriving name and syncs it; a rename then puts it in its place. After a failure
 * nothing is left of it.
 *
 * @param folder where the file is to be
 * @param chunks its content, in parts
 * @returns the arriving name, with its path
 */
export async function writeArriving(
  folder: string,
  chunks: AsyncIterable<Uint8Array> | Iterable<Uint8Array>,
): Promise<string> {
  const path = arrivingPath(folder)
  try {
    const file = await open(path, 'wx', READ_ONLY)
    try {
      // Unlike `write`, `writeFile` goes on until the whole part is written.
      for await (const chunk of chunks) await file.writeFile(chunk)
      await file.sync()
    } finally {
      await file.close()
    }
    return path
  } catch (cause) {
    await rm(path, { force: true })
    throw cause
  }
}

/**
 * Writes a file that can be made again at any time, such as a preview: whoever reads it finds all of it or nothing. It is
 * not synced.
 *
 * @param path where the file is to be
 * @param bytes its content
 */
export async function writeWhole(path: string, bytes: Uint8Array): Promise<void> {
  const temporary = arrivingPath(dirname(path))
  try {
    const file = await open(temporary, 'wx')
    try {
      await file.writeFile(bytes)
    } finally {
      await file.close()
    }
    await rename(temporary, path)
  } catch (cause) {
    await rm(temporary, { force: true })
    throw cause
  }
}

/** Makes what was written to a file last, whatever happens to the machine. */
export async function syncFile(path: string): Promise<void> {
  const file = await open(path, 'r+')
  try {
    await file.sync()
  } finally {
    await file.close()
  }
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

/** As `syncFolder`, for the inside of a transaction, which can't wait for a promise. */
export function syncFolderNow(folder: string): void {
  if (process.platform === 'win32') return
  const handle = openSync(folder, 'r')
  try {
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}
