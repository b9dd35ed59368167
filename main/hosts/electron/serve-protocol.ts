import { createReadStream } from 'node:fs'
import { stat } from 'node:fs/promises'
import { Readable } from 'node:stream'
import { parseFileAddress } from '../../../app/contract/files.ts'
import type { Desk } from '../../desk/desk.ts'
import type { PageFile } from '../page-files.ts'
import { saveAsHeader } from '../save-as.ts'
import { securityHeaders } from '../security-headers.ts'

/** Answers the window's requests: built pages and files of the open library by identity, never by path. */
export function serveProtocol(
  desk: Pick<Desk, 'file'>,
  pages: { readonly find: (pathname: string) => PageFile | null },
): (request: { readonly url: string; readonly method: string }) => Promise<Response> {
  return async (request) => {
    const url = new URL(request.url)
    if (url.host !== 'app' || request.method !== 'GET') return refusal(403)
    if (url.pathname.startsWith('/files/')) {
      const ref = parseFileAddress(url.pathname)
      const file = ref === null ? null : await desk.file(ref)
      if (file === null) return refusal(404)
      const saving: Record<string, string> =
        file.saveAs === null ? {} : { 'content-disposition': saveAsHeader(file.saveAs) }
      return fileResponse(file.path, { 'content-type': file.mediaType, ...saving })
    }
    const page = pages.find(url.pathname)
    return page === null ? refusal(404) : fileResponse(page.path, { 'content-type': page.mediaType })
  }
}

async function fileResponse(path: string, headers: Record<string, string>): Promise<Response> {
  const { size } = await stat(path)
  const body = Readable.toWeb(createReadStream(path)) as ReadableStream<Uint8Array>
  return new Response(body, {
    status: 200,
    headers: { ...securityHeaders, ...headers, 'content-length': String(size) },
  })
}

function refusal(status: 403 | 404): Response {
  return new Response(null, { status, headers: securityHeaders })
}
