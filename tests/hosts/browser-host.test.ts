import { createServer } from 'node:http'
import { connect } from 'node:net'
import { networkInterfaces } from 'node:os'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { JobId } from '../../app/job/ids.ts'
import { serveDesk, type Served } from '../../main/hosts/browser/serve-desk.ts'
import { openTestDesk, type TestDesk } from '../library/a-desk.ts'
import { useScratch } from '../library/scratch.ts'
import { asking, visit, type Answer, type Asking, type Visit } from './browser-visit.ts'
import { expectGuarded } from './guarded.ts'
import { smallPages } from './pages.ts'

const scratch = useScratch()
let desk: TestDesk
let served: Served
let page: Visit
let jobId: JobId
const answers: Answer[] = []

/** Asks without a cookie unless one is given, and keeps the answer, so that all of them can be looked at in the end. */
async function ask(given: Asking): Promise<Answer> {
  const answer = await asking(served.address, given)
  answers.push(answer)
  return answer
}

/** Sends bytes as they are, and answers the first line of what comes back. */
function firstLine(bytes: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let heard = ''
    const socket = connect({ host: '127.0.0.1', port: Number(port()) }, () => socket.write(bytes))
    socket.on('data', (part) => (heard += part.toString('latin1')))
    socket.on('error', reject)
    socket.on('close', () => resolve(heard.split('\r\n')[0] ?? ''))
  })
}

const port = () => new URL(served.address).port
const entrance = () => served.entrance.slice(served.address.length - 1)

beforeAll(async () => {
  desk = openTestDesk(scratch('library'))
  served = await serveDesk(desk.desk, { port: 0, pagesFolder: smallPages(scratch('pages')) })
  page = await visit(served)
  jobId = await desk.newJob('H-1')
})

afterAll(async () => {
  await served.close()
  await desk.close()
})

describe('who is let in', () => {
  it('is whoever has the secret, which becomes a cookie that pages cannot read and other sites cannot send', async () => {
    const answer = await ask({ path: entrance() })
    expect(answer.status).toBe(303)
    expect(answer.headers.location).toBe('/')
    expect(answer.headers['set-cookie']?.[0]).toMatch(/^battenbook-\d+=[\w-]{43}; HttpOnly; SameSite=Strict; Path=\/$/)
    // 256 bits of chance, as 43 characters of base64url.
    expect(entrance()).toMatch(/^\/enter\?token=[\w-]{43}$/)
  })

  it.each(['/enter?token=wrong', '/enter?token=', '/enter', `/enter?token=${'A'.repeat(43)}`])(
    'is not one with %s',
    async (path) => {
      const answer = await ask({ path })
      expect(answer.status).toBe(403)
      expect(answer.headers['set-cookie']).toBeUndefined()
    },
  )

  it.each(['/', '/index.html', '/assets/app-0123.js', '/events', '/files/original/x'])(
    'without the cookie %s is 401',
    async (path) => {
      expect((await ask({ path })).status).toBe(401)
    },
  )

  it('a cookie of another start, or part of the right one, is 401', async () => {
    const { cookie = '' } = page.headers
    for (const wrong of [cookie.slice(0, -1), `${cookie}x`, `x${cookie}`, `battenbook-${port()}=${'A'.repeat(43)}`])
      expect((await ask({ path: '/', headers: { cookie: wrong } })).status).toBe(401)
    expect((await ask({ path: '/', headers: { cookie: `other=1; ${cookie}; more=2` } })).status).toBe(200)
  })

  it('the secret is of no use as the cookie, nor the cookie as the secret', async () => {
    const [, token = ''] = entrance().split('=')
    expect((await ask({ path: '/', headers: { cookie: `battenbook-${port()}=${token}` } })).status).toBe(401)
    expect((await ask({ path: `/enter?token=${page.headers['cookie']?.split('=')[1]}` })).status).toBe(403)
  })
})

describe('requests that another page makes', () => {
  const call = (headers: Record<string, string>): Asking => ({
    method: 'POST',
    path: '/call/jobs.list',
    headers: { cookie: page.headers['cookie'] ?? '', 'content-type': 'application/json', ...headers },
    body: '{}',
  })

  it('are 403 under another name for this address (DNS rebinding)', async () => {
    for (const host of [
      'evil.example',
      `evil.example:${port()}`,
      '127.0.0.1',
      '127.0.0.1:1',
      `127.0.0.1.evil.example:${port()}`,
      `[::1]:${port()}`,
    ]) {
      expect((await ask({ path: '/', headers: { ...page.headers, host } })).status).toBe(403)
      expect((await ask({ path: entrance(), headers: { host } })).status).toBe(403)
    }
  })

  it('are refused when they name no host, or an empty one', async () => {
    const { cookie = '' } = page.headers
    expect(await firstLine(`GET / HTTP/1.1\r\nhost:\r\ncookie: ${cookie}\r\nconnection: close\r\n\r\n`)).toBe(
      'HTTP/1.1 403 Forbidden',
    )
    expect(await firstLine(`GET / HTTP/1.0\r\ncookie: ${cookie}\r\n\r\n`)).toBe('HTTP/1.1 403 Forbidden')
    expect(await firstLine(`GET / HTTP/1.1\r\ncookie: ${cookie}\r\n\r\n`)).toBe('HTTP/1.1 400 Bad Request')
  })

  it('are 403 from a foreign origin, the same machine included', async () => {
    const own = served.address.slice(0, -1)
    for (const origin of [
      'https://evil.example',
      'null',
      `http://127.0.0.1:${Number(port()) + 1}`,
      own.replace('http:', 'https:'),
      `${own}.evil.example`,
      `http://localhost:${port()}`,
    ])
      expect((await ask(call({ origin }))).status).toBe(403)
    expect((await ask(call({ origin: own }))).status).toBe(200)
  })

  it.each(['cross-site', 'same-site'])('are 403 when the browser calls them %s', async (site) => {
    expect((await ask(call({ ...page.headers, 'sec-fetch-site': site }))).status).toBe(403)
    expect((await ask({ path: '/', headers: { ...page.headers, 'sec-fetch-site': site } })).status).toBe(403)
  })

  it('are 403 when they would change something and name no origin', async () => {
    expect((await ask(call({}))).status).toBe(403)
    expect((await ask({ ...call({}), method: 'PUT', path: '/upload/u/0?name=a' })).status).toBe(403)
    expect((await ask({ ...call({}), method: 'DELETE' })).status).toBe(403)
  })

  it('work under the name localhost, as a whole', async () => {
    const host = `localhost:${port()}`
    expect((await ask(call({ host, origin: `http://${host}` }))).status).toBe(200)
  })
})

describe('the address', () => {
  it('is bound to 127.0.0.1 and nowhere else', async () => {
    const others = Object.values(networkInterfaces()).flatMap((found) => found ?? [])
    const outside = others
      .filter(({ internal, family }) => !internal && family === 'IPv4')
      .map(({ address }) => address)
    for (const address of [...outside, '::1', '127.0.0.2']) {
      const outcome = await new Promise((resolve) => {
        const socket = connect({ host: address, port: Number(port()), timeout: 2000 })
        socket.once('connect', () => resolve('connected'))
        socket.once('timeout', () => resolve('no answer'))
        socket.once('error', () => resolve('refused'))
        socket.once('close', () => socket.destroy())
      })
      expect({ address, outcome }).not.toEqual({ address, outcome: 'connected' })
    }
    expect(served.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/)
  })

  it('in use is an error of the system, told to whoever serves', async () => {
    const other = createServer()
    await new Promise<void>((resolve) => other.listen(0, '127.0.0.1', resolve))
    const bound = other.address()
    const taken = typeof bound === 'object' && bound !== null ? bound.port : 0
    const again = serveDesk(desk.desk, { port: taken, pagesFolder: smallPages(scratch('pages')) })
    await expect(again).rejects.toMatchObject({ code: 'EADDRINUSE' })
    other.close()
  })
})

describe('paths', () => {
  it.each([
    '/files/original/..%2f..%2fbattenbook.db',
    '/files/original/../../battenbook.db',
    '/files/original/%2e%2e/%2e%2e/battenbook.db',
    '/files/original/..%5c..%5cbattenbook.db',
    '/files/draft/..%2f..%2f..%2fbattenbook.db',
    '/files/database/battenbook.db',
    '/files/original/',
    '/files/original',
    '/files/',
    '/files/original/no-such-photo',
    '/files/attachment/no-such-file',
    '/files/packet/no-such-packet',
    '/files/draft/no-such-draft',
    '/files/original/%00',
    '/assets/../../battenbook.db',
    '/assets/..%2f..%2fpackage.json',
    '/assets/%2e%2e/%2e%2e/package.json',
    '/assets/no-such-file.js',
    '/package.json',
  ])('%s leads nowhere', async (path) => {
    const answer = await ask({ path, headers: page.headers })
    expect(answer.status).toBe(404)
    expect(answer.text).not.toMatch(/SQLite|"name"/)
  })

  it.each(['//[', '/%E0%A4%A', '/call/%E0%A4%A', 'http://evil.example/', '*', '//evil.example/', '/\\..\\..'])(
    '%s does not bring the program down',
    async (path) => {
      for (const method of ['GET', 'POST']) {
        const headers = { ...page.headers, 'content-type': 'application/json' }
        expect((await ask({ path, method, headers })).status).toBeLessThan(500)
      }
      expect((await ask({ path: '/', headers: page.headers })).status).toBe(200)
    },
  )

  it('of screens all get the page, so that an address can be opened again', async () => {
    const answer = await ask({ path: `/jobs/${jobId}/photos`, headers: page.headers })
    expect(answer).toMatchObject({ status: 200, text: '<!doctype html><title>Battenbook</title>' })
    expect(answer.headers['content-type']).toBe('text/html; charset=utf-8')
  })
})

describe('calls', () => {
  const call = (more: Partial<Asking>): Asking => ({
    method: 'POST',
    path: '/call/jobs.list',
    ...more,
    headers: { ...page.headers, 'content-type': 'application/json', ...more.headers },
  })

  it('that are no JSON by their own word are 415', async () => {
    for (const type of ['text/plain', 'application/x-www-form-urlencoded', ''])
      expect((await ask(call({ body: '{}', headers: { 'content-type': type } }))).status).toBe(415)
  })

  it('that are too large are 413, whether they say so or not', async () => {
    const body = Buffer.alloc(26 * 1024 * 1024 + 1, ' ')
    expect((await ask(call({ body }))).status).toBe(413)
    expect((await ask(call({ body, headers: { 'transfer-encoding': 'chunked' } }))).status).toBe(413)
    expect((await ask(call({ body: body.subarray(2) }))).status).toBe(200)
  })

  it('with a body that is no JSON get an error value', async () => {
    for (const body of ['', '{', 'text', '\0'])
      expect(JSON.parse((await ask(call({ body, path: '/call/jobs.open' }))).text)).toMatchObject({
        ok: false,
        error: { code: 'invalid' },
      })
  })

  it('by other methods are 405', async () => {
    for (const method of ['DELETE', 'PATCH', 'OPTIONS', 'PUT']) expect((await ask(call({ method }))).status).toBe(405)
  })
})

describe('every answer', () => {
  it('carries the content policy and forbids guessing of types', () => {
    expect(new Set(answers.map((answer) => answer.status))).toEqual(
      new Set([200, 303, 400, 401, 403, 404, 405, 413, 415]),
    )
    for (const answer of answers) expectGuarded(answer)
  })

  it('leaves the secret out, and so does the log file', () => {
    const [, token = ''] = entrance().split('=')
    const logs = desk.library.layout.logs
    const written = readdirSync(logs).map((name) => readFileSync(join(logs, name), 'utf8'))
    for (const text of [...desk.reports, ...written, ...answers.map((answer) => answer.text)])
      expect(text).not.toContain(token)
  })
})
