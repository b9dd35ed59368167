import type { IncomingMessage } from 'node:http'

/** Reads a request's body; null when it is larger than `mostBytes`. The connection stays whole, so that it can be said. */
export async function readBody(request: IncomingMessage, mostBytes: number): Promise<Buffer | null> {
  if (Number(request.headers['content-length'] ?? 0) > mostBytes) return null
  const parts: Buffer[] = []
  let bytes = 0
  for await (const part of request.iterator({ destroyOnReturn: false })) {
    const chunk = Buffer.from(part)
    bytes += chunk.length
    if (bytes > mostBytes) return null
    parts.push(chunk)
  }
  return Buffer.concat(parts)
}
