import { createReadStream } from 'node:fs'
import { stat } from 'node:fs/promises'
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http'
import { pipeline } from 'node:stream/promises'
import { parseFileAddress } from '../../../app/contract/files.ts'
import type { Desk } from '../../desk/desk.ts'
import { contentRange, readByteRange } from '../byte-range.ts'
import { openPart } from '../open-part.ts'
import { listPageFiles, type PageFile } from '../page-files.ts'
import { saveAsHeader } from '../save-as.ts'
import { securityHeaders } from '../security-headers.ts'
import { createDoorkeeper, type Doorkeeper } from './doorkeeper.ts'
import { readBody } from './read-body.ts'
import { sendEvents } from './send-events.ts'

/** A running loopback host. */
export interface Served {
  /** The address to open, with the secret in it. */
  readonly entrance: string
  /** The address without the secret. */
  readonly address: string
  readonly close: () => Promise<void>
}

/** Calls are small; the largest brings the picture of a frame of a video. */
const MOST_CALL_BYTES = 26 * 1024 * 1024

interface Exchange {
  readonly desk: Desk
  readonly door: Doorkeeper
  readonly pages: { readonly find: (pathname: string) => PageFile | null }
  readonly request: IncomingMessage
  readonly response: ServerResponse
  readonly url: URL
}

/** Puts a desk behind a loopback address. Binds 127.0.0.1 only; `port` 0 takes any free one. */
export async function serveDesk(
  desk: Desk,
  { port, pagesFolder }: { port: number; pagesFolder: string },
): Promise<Served> {
  let bound = port
  const door = createDoorkeeper(() => bound)
  const pages = listPageFiles(pagesFolder)
  const server = createServer((request, response) => {
    for (const [name, value] of Object.entries(securityHeaders)) response.setHeader(name, value)
    const url = addressOf(request)
    if (url === null) return refuseWith(response, 400, 'This address cannot be read.')
    answer({ desk, door, pages, request, response, url }).catch(() => {
      if (response.headersSent) response.destroy()
      else refuseWith(response, 500, 'Something went wrong inside the program.')
    })
  })
  bound = await listen(server, port)
  const address = `http://127.0.0.1:${bound}/`
  return {
    address,
    entrance: `${address}enter?token=${door.token}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve())
        server.closeAllConnections()
      }),
  }
}

/** The address asked for, which is always a path of our own; null for the other forms that a request line may have. */
function addressOf({ url = '/' }: IncomingMessage): URL | null {
  return url.startsWith('/') ? new URL(`http://127.0.0.1${url}`) : null
}

function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject)
    server.listen(port, '127.0.0.1', () => {
      const bound = server.address()
      resolve(typeof bound === 'object' && bound !== null ? bound.port : port)
    })
  })
}

async function answer(exchange: Exchange): Promise<void> {
  const { door, request, response, url } = exchange
  if (!door.sameOrigin(request))
    return refuseWith(response, 403, 'This address is for Battenbook on this computer only.')
  if (url.pathname === '/enter' && request.method === 'GET') {
    const cookie = door.exchange(url.searchParams.get('token'))
    if (cookie === null)
      return refuseWith(
        response,
        403,
        'This address has expired. Start Battenbook again and use the address it prints.',
      )
    response.writeHead(303, { location: '/', 'set-cookie': cookie, 'cache-control': 'no-store' }).end()
    return
  }
  if (!door.knows(request))
    return refuseWith(response, 401, 'Open the address that Battenbook printed when it started.')
  if (request.method === 'POST' && url.pathname.startsWith('/call/')) return answerCall(exchange)
  if (request.method === 'PUT' && url.pathname.startsWith('/upload/')) return answerUpload(exchange)
  if (request.method !== 'GET' && request.method !== 'HEAD')
    return refuseWith(response, 405, 'This way of asking is not known here.')
  if (url.pathname === '/events') {
    if (request.method === 'GET') return sendEvents(exchange.desk, response)
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' }).end()
    return
  }
  if (url.pathname.startsWith('/files/')) return answerFile(exchange)
  return answerPage(exchange)
}

async function answerCall({ desk, request, response, url }: Exchange): Promise<void> {
  if (request.headers['content-type']?.startsWith('application/json') !== true)
    return refuseWith(response, 415, 'Calls are JSON.')
  const body = await readBody(request, MOST_CALL_BYTES)
  if (body === null) return refuseWith(response, 413, 'This call is too large.')
  const reply = await desk.call(url.pathname.slice('/call/'.length), parseJson(body))
  sendJson(response, 200, reply)
}

async function answerUpload({ desk, request, response, url }: Exchange): Promise<void> {
  const match = /^\/upload\/([A-Za-z0-9-]{1,64})\/(\d{1,7})$/.exec(url.pathname)
  const [, uploadId, index] = match ?? []
  if (uploadId === undefined || index === undefined)
    return refuseWith(response, 404, 'This upload is not addressed rightly.')
  const fileName = url.searchParams.get('name') ?? ''
  const reply = await desk.acceptUpload({ uploadId, index: Number(index), fileName, body: request })
  // Whoever sends a file looks at the status alone.
  sendJson(response, reply.ok ? 200 : reply.error.code === 'disk-full' ? 507 : 500, reply)
}

async function answerFile({ desk, request, response, url }: Exchange): Promise<void> {
  const ref = parseFileAddress(url.pathname)
  const file = ref === null ? null : await desk.file(ref)
  if (file === null) return refuseWith(response, 404, 'There is no such file in the library.')
  const { size } = await stat(file.path)
  const range = readByteRange(request.headers.range, size)
  if (range === 'unsatisfiable') {
    response.setHeader('content-range', contentRange(range, size))
    return refuseWith(response, 416, 'The file is shorter than that.')
  }
  response.writeHead(range === null ? 200 : 206, {
    'content-type': file.mediaType,
    'content-length': range === null ? size : range.last - range.first + 1,
    'accept-ranges': 'bytes',
    ...(range === null ? {} : { 'content-range': contentRange(range, size) }),
    'cache-control': 'private, no-cache',
    'content-disposition': file.saveAs === null ? 'inline' : saveAsHeader(file.saveAs),
  })
  if (request.method === 'HEAD') return void response.end()
  await pipeline(openPart(file.path, range), response).catch((cause: unknown) => {
    // A player that jumps elsewhere lets go of what it asked for before.
    if (!response.destroyed) throw cause
  })
}

async function answerPage({ pages, request, response, url }: Exchange): Promise<void> {
  const file = pages.find(url.pathname)
  if (file === null) return refuseWith(response, 404, 'There is no such page.')
  response.writeHead(200, {
    'content-type': file.mediaType,
    'cache-control': file.lasting ? 'private, max-age=31536000, immutable' : 'no-cache',
  })
  if (request.method === 'HEAD') response.end()
  else await pipeline(createReadStream(file.path), response)
}

function parseJson(body: Buffer): unknown {
  try {
    return JSON.parse(body.toString('utf8'))
  } catch {
    return undefined
  }
}

function sendJson(response: ServerResponse, status: number, value: unknown): void {
  response
    .writeHead(status, { 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store' })
    .end(JSON.stringify(value))
}

function refuseWith(response: ServerResponse, status: number, sentence: string): void {
  response
    .writeHead(status, {
      'content-type': 'text/plain; charset=utf-8',
      'cache-control': 'no-store',
      connection: 'close',
    })
    .end(`${sentence}\n`)
}
