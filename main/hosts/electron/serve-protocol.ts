import { stat } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { parseFileAddress } from '../../../app/contract/files.ts'
import type { Desk } from '../../desk/desk.ts'
import { contentRange, readByteRange } from '../byte-range.ts'
import { openPart } from '../open-part.ts'
import type { PageFile } from '../page-files.ts'
import { saveAsHeader } from '../save-as.ts'
import { securityHeaders } from '../security-headers.ts'

/** What is looked at of a request. */
export interface AskedFor {
  readonly url: string
  readonly method: string
  readonly headers: { readonly get: (name: string) => string | null }
}

/** Answers the window's requests: built pages and files of the open library by identity, never by path. */
export function serveProtocol(
  desk: Pick<Desk, 'file'>,
  pages: { readonly find: (pathname: string) => PageFile | null },
): (request: AskedFor) => Promise<Response> {
  return async (request) => {
    const url = new URL(request.url)
    if (url.host !== 'app' || request.method !== 'GET') return refusal(403)
    if (url.pathname.startsWith('/files/')) {
      const ref = parseFileAddress(url.pathname)
      const file = ref === null ? null : await desk.file(ref)
      if (file === null) return refusal(404)
      const saving: Record<string, string> =
        file.saveAs === null ? {} : { 'content-disposition': saveAsHeader(file.saveAs) }
      const headers = { 'content-type': file.mediaType, 'accept-ranges': 'bytes', ...saving }
      return fileResponse(file.path, { headers, range: request.headers.get('range') })
    }
    const page = pages.find(url.pathname)
    return page === null
      ? refusal(404)
      : fileResponse(page.path, { headers: { 'content-type': page.mediaType }, range: null })
  }
}

async function fileResponse(
  path: string,
  given: { headers: Record<string, string>; range: string | null },
): Promise<Response> {
  const { size } = await stat(path)
  const range = readByteRange(given.range, size)
  const part: Record<string, string> = range === null ? {} : { 'content-range': contentRange(range, size) }
  const headers = { ...securityHeaders, ...given.headers, ...part }
  if (range === 'unsatisfiable') return new Response(null, { status: 416, headers })
  const length = range === null ? size : range.last - range.first + 1
  const body = Readable.toWeb(openPart(path, range)) as ReadableStream<Uint8Array>
  return new Response(body, {
    status: range === null ? 200 : 206,
    headers: { ...headers, 'content-length': String(length) },
  })
}

function refusal(status: 403 | 404): Response {
  return new Response(null, { status, headers: securityHeaders })
}
