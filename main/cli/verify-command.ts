import { stat } from 'node:fs/promises'
import { withFileWords } from '../library/file-failure.ts'
import { verifyBundle } from '../publish/verify-bundle.ts'
import { print } from './print.ts'
import { withDesk } from './with-desk.ts'

/** `battenbook verify BUNDLE|LIBRARY`; exit code 1 at the first difference, which is named. */
export async function verifyCommand(json: boolean, path: string): Promise<number> {
  const isFolder = await withFileWords(path, async () => (await stat(path)).isDirectory())
  const check = isFolder ? await verifyFolder(path) : await verifyBundle(path)
  if (json) print(JSON.stringify({ ok: check.problems.length === 0, ...check }))
  else if (check.problems.length === 0) print(`Sound: ${check.files} files and ${check.entries} log entries checked.`)
  else for (const problem of check.problems) print(problem)
  return check.problems.length === 0 ? 0 : 1
}

async function verifyFolder(library: string): Promise<{ files: number; entries: number; problems: readonly string[] }> {
  const check = await withDesk(library, { make: false }, ({ ask }) => ask('library.verify', {}))
  return {
    files: check.filesChecked,
    entries: check.entriesChecked,
    problems: check.differences.map(({ job, what, problem }) => `Job ${job}, ${what}: ${problem}`),
  }
}
