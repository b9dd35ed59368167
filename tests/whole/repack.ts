import { createWriteStream, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { pipeline } from 'node:stream/promises'
import { ZipFile } from 'yazl'

/** Turns over one bit in the middle of a file. */
export function flipOneBit(path: string): void {
  const bytes = readFileSync(path)
  const middle = Math.floor(bytes.length / 2)
  bytes[middle] = (bytes[middle] ?? 0) ^ 1
  writeFileSync(path, bytes)
}

/** Packs everything in a folder into a zip, as anybody could. */
export async function repack(folder: string, zipPath: string): Promise<void> {
  const zip = new ZipFile()
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue
    const path = join(entry.parentPath, entry.name)
    zip.addFile(path, relative(folder, path))
  }
  zip.end()
  await pipeline(zip.outputStream, createWriteStream(zipPath))
}
