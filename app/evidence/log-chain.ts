import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import canonicalize from 'canonicalize'
import type { LogEntry, LogEvent } from './log-entry.ts'

/** SHA-256 (FIPS 180-4) of a value's canonical JSON (RFC 8785), as 64 hex digits. */
export function digestOf(value: unknown): string {
  const text = canonicalize(value)
  if (text === undefined) throw new TypeError('Only values that JSON can hold have a digest.')
  return bytesToHex(sha256(utf8ToBytes(text)))
}

/** Makes the entry that follows `last` (null for the first). */
export function nextEntry(
  last: Pick<LogEntry, 'seq' | 'hash'> | null,
  happened: { readonly atMs: number; readonly actor: string; readonly event: LogEvent },
): LogEntry {
  const body = { seq: (last?.seq ?? 0) + 1, ...happened, previous: last?.hash ?? null }
  return { ...body, hash: digestOf(body) }
}

/** Where a chain stops being whole, and why. */
export interface ChainBreak {
  readonly seq: number
  readonly why: string
}

/** Replays a log from its first entry; null when every entry fits, else the first that doesn't. */
export function findChainBreak(entries: Iterable<LogEntry>): ChainBreak | null {
  let last: LogEntry | null = null
  for (const entry of entries) {
    const expectedSeq: number = (last?.seq ?? 0) + 1
    if (entry.seq !== expectedSeq)
      return { seq: expectedSeq, why: `Entry ${expectedSeq} is missing; entry ${entry.seq} stands in its place.` }
    if (entry.previous !== (last?.hash ?? null)) {
      return { seq: entry.seq, why: `Entry ${entry.seq} does not follow from the entry before it.` }
    }
    const { hash, ...body } = entry
    if (digestOf(body) !== hash)
      return { seq: entry.seq, why: `Entry ${entry.seq} has been changed after it was written.` }
    last = entry
  }
  return null
}
