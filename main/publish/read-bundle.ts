import { createHash } from 'node:crypto'
import type { Readable } from 'node:stream'
import { openPromise, type Entry } from 'yauzl'
import { AppFailure, refuse } from '../../app/contract/app-error.ts'

/** What is kept in memory while a bundle is read: the small files that are looked into. */
export interface BundleContent {
  /** SHA-256 of every file, by its name in the bundle. */
  readonly hashes: ReadonlyMap<string, string>
  readonly kept: ReadonlyMap<string, Buffer>
}

/**
 * Reads a zip once, hashing every file as it goes.
 *
 * @param keep names of the files whose bytes are wanted too
 * @throws AppFailure `not-verified` when it is no sound zip, or holds a name twice
 */
export async function readBundle(path: string, keep: ReadonlySet<string>): Promise<BundleContent> {
  const hashes = new Map<string, string>()
  const kept = new Map<string, Buffer>()
  const unsound = (why: string): never => refuse('not-verified', `The bundle is not a sound zip file: ${why}.`)
  const zip = await openPromise(path, { lazyEntries: true, validateEntrySizes: true }).catch((cause: unknown) =>
    unsound(reason(cause)),
  )
  try {
    for await (const entry of entriesOf(zip)) {
      const name = entry.fileName
      if (name.endsWith('/')) continue
      if (hashes.has(name)) unsound(`it holds ${name} twice`)
      const hash = createHash('sha256')
      const parts: Buffer[] = []
      for await (const part of await openEntry(zip, entry)) {
        hash.update(part)
        if (keep.has(name)) parts.push(part)
      }
      hashes.set(name, hash.digest('hex'))
      if (keep.has(name)) kept.set(name, Buffer.concat(parts))
    }
  } catch (cause) {
    if (cause instanceof AppFailure) throw cause
    unsound(reason(cause))
  } finally {
    zip.close()
  }
  return { hashes, kept }
}

type Zip = Awaited<ReturnType<typeof openPromise>>

async function* entriesOf(zip: Zip): AsyncGenerator<Entry> {
  yield* zip.eachEntry()
}

function openEntry(zip: Zip, entry: Entry): Promise<Readable> {
  return zip.openReadStreamPromise(entry)
}

function reason(cause: unknown): string {
  return cause instanceof Error ? cause.message : 'it cannot be read'
}
