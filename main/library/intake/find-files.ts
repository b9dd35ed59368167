import { readdir, stat } from 'node:fs/promises'
import { basename, join, resolve } from 'node:path'
import { byCardName, isPassedOver } from '../../../app/evidence/card-order.ts'
import { withFileWords } from '../file-failure.ts'

/** A file waiting to be taken in. */
export interface Waiting {
  readonly path: string
  /** The name it came with. */
  readonly fileName: string
}

/**
 * Every file under the given paths, folders walked through, in the order a person would list them. Hidden files and what
 * operating systems leave behind are passed over.
 *
 * @throws AppFailure `missing-folder` or `no-permission` naming the path
 */
export async function findFiles(paths: readonly string[]): Promise<readonly Waiting[]> {
  // By path: a file that is named and also stands in a folder that is named is one file.
  const found = new Map<string, Waiting>()
  for (const path of paths) {
    const whole = resolve(path)
    const kind = await withFileWords(path, () => stat(whole))
    if (kind.isDirectory()) await walk(whole, found)
    else if (kind.isFile()) found.set(whole, { path: whole, fileName: basename(whole) })
  }
  return [...found.values()]
}

async function walk(folder: string, found: Map<string, Waiting>): Promise<void> {
  const entries = await withFileWords(folder, () => readdir(folder, { withFileTypes: true }))
  for (const entry of entries.toSorted((a, b) => byCardName(a.name, b.name))) {
    if (isPassedOver(entry.name)) continue
    const path = join(folder, entry.name)
    // Links are not followed: a card has none, and one that points upwards would never end.
    if (entry.isDirectory()) await walk(path, found)
    else if (entry.isFile()) found.set(path, { path, fileName: entry.name })
  }
}
