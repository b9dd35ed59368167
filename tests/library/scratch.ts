import { chmodSync, mkdirSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll } from 'vitest'

/** Folders for the tests of one file: each call gives a new one; all are gone when the file is done. */
export function useScratch(): (name?: string) => string {
  const base = mkdtempSync(join(tmpdir(), 'battenbook-test-'))
  let count = 0
  afterAll(() => {
    chmodSync(base, 0o755)
    rmSync(base, { recursive: true, force: true, maxRetries: 3 })
  })
  return (name = 'folder') => {
    count += 1
    const folder = join(base, `${count}-${name}`)
    mkdirSync(folder, { recursive: true })
    return folder
  }
}
