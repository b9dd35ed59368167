import { createReadStream, type ReadStream } from 'node:fs'
import type { ByteRange } from './byte-range.ts'

/** Reads a part of a file as a stream, or the whole of it. */
export function openPart(path: string, range: ByteRange | null): ReadStream {
  return range === null ? createReadStream(path) : createReadStream(path, { start: range.first, end: range.last })
}
