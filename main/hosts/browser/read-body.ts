import type { Readable } from 'node:stream'

/** Reads a request's body; null when it is larger than `mostBytes`. */
export async function readBody(body: Readable, mostBytes: number): Promise<Buffer | null> {
  const parts: Buffer[] = []
  let bytes = 0
  for await (const part of body) {
    const chunk = Buffer.from(part)
    bytes += chunk.length
    if (bytes > mostBytes) return null
    parts.push(chunk)
  }
  return Buffer.concat(parts)
}
