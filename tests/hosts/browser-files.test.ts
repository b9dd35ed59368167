import { readdirSync, writeFileSync } from 'node:fs'
import { connect } from 'node:net'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import type { JobId } from '../../app/job/ids.ts'
import { serveDesk, type Served } from '../../main/hosts/browser/serve-desk.ts'
import { openTestDesk, type TestDesk } from '../library/a-desk.ts'
import { aPhoto, photosIn } from '../library/a-photo.ts'
import { useScratch } from '../library/scratch.ts'
import { asking, visit, type Answer, type Asking, type Visit } from './browser-visit.ts'
import { expectGuarded } from './guarded.ts'
import { smallPages } from './pages.ts'

const scratch = useScratch()
let desk: TestDesk
let served: Served
let page: Visit
let jobId: JobId
let photoId: string
let attachmentId: string

async function ask(given: Asking): Promise<Answer> {
  const answer = await asking(served.address, given)
  expectGuarded(answer)
  return answer
}

const port = () => new URL(served.address).port

beforeAll(async () => {
  desk = openTestDesk(scratch('library'))
  served = await serveDesk(desk.desk, { port: 0, pagesFolder: smallPages(scratch('pages')) })
  page = await visit(served)
  jobId = await desk.newJob('H-1')
  const card = scratch('card')
  await photosIn(card, ['a.jpg'])
  writeFileSync(join(card, `permit (copy) 'صورة'*.txt`), 'a permit')
  await desk.takeIn(jobId, card)
  const { photos, attachments } = await desk.ask('jobs.open', { jobId })
  photoId = photos[0]?.id ?? ''
  attachmentId = attachments[0]?.id ?? ''
})

afterAll(async () => {
  await served.close()
  await desk.close()
})

describe('files of the library', () => {
  it('come byte for byte, with their type and size, and only the head when that is asked for', async () => {
    const answer = await ask({ path: `/files/original/${photoId}`, headers: page.headers })
    expect(answer.status).toBe(200)
    expect(answer.headers).toMatchObject({ 'content-type': 'image/jpeg', 'content-disposition': 'inline' })
    expect(answer.body.equals(await aPhoto({ shade: 0 }))).toBe(true)
    const head = await ask({ method: 'HEAD', path: `/files/original/${photoId}`, headers: page.headers })
    expect(head).toMatchObject({ status: 200, text: '' })
    expect(head.headers['content-length']).toBe(String(answer.body.length))
    for (const path of ['/', '/assets/app-0123.js', '/events', '/no/such.page'])
      expect((await ask({ method: 'HEAD', path, headers: page.headers })).text).toBe('')
    for (const kind of ['thumbnail', 'preview'])
      expect((await ask({ path: `/files/${kind}/${photoId}`, headers: page.headers })).headers['content-type']).toBe(
        'image/jpeg',
      )
  })

  it('that are not for showing are offered for saving, under their own name, and never as a page', async () => {
    const { headers } = await ask({ path: `/files/attachment/${attachmentId}`, headers: page.headers })
    expect(headers['content-type']).toBe('application/octet-stream')
    // RFC 8187, section 3.2.1: attr-char; everything else is percent-encoded UTF-8.
    const [, encoded = ''] =
      /^attachment; filename\*=UTF-8''([\w!#$&+\-.^`|~%]+)$/.exec(headers['content-disposition'] ?? '') ?? []
    expect(decodeURIComponent(encoded)).toBe(`permit (copy) 'صورة'*.txt`)
  })

  it('that are previews are made again when they are gone or empty', async () => {
    const folder = join(desk.library.layout.jobs, 'H-1', 'derived')
    for (const name of readdirSync(folder)) writeFileSync(join(folder, name), '')
    const both = await Promise.all(
      ['thumbnail', 'preview'].map((kind) => ask({ path: `/files/${kind}/${photoId}`, headers: page.headers })),
    )
    for (const answer of both) expect(answer.body.subarray(0, 2).toString('hex')).toBe('ffd8')
    expect(readdirSync(folder)).toHaveLength(2)
  })
})

describe('uploads and events', () => {
  it('work end to end: files sent, taken in, told of', async () => {
    const leave = new AbortController()
    const stream = await fetch(`${served.address}events`, { headers: page.headers, signal: leave.signal })
    expect(stream.headers.get('content-type')).toBe('text/event-stream')
    let heard = ''
    const reading = (async () => {
      for await (const part of stream.body ?? []) heard += Buffer.from(part).toString('utf8')
    })().catch(() => undefined)

    const name = `"quoted" ${'n'.repeat(280)} صورة.jpg`
    const bytes = await aPhoto({ shade: 77 })
    const put = (index: number, fileName: string, body: Buffer) =>
      ask({
        method: 'PUT',
        path: `/upload/up-1/${index}?name=${encodeURIComponent(fileName)}`,
        headers: page.headers,
        body,
      })
    expect((await put(10, 'z/../../last.jpg', await aPhoto({ shade: 78 }))).status).toBe(200)
    expect((await put(2, name, bytes)).status).toBe(200)
    // Sending one again, after a connection was cut, replaces it.
    expect((await put(2, name, bytes)).status).toBe(200)
    const started = await page.call('intake.start', { jobId, from: { kind: 'upload', uploadId: 'up-1' } })
    expect(started).toMatchObject({ ok: true })
    await expect.poll(() => heard, { timeout: 10_000 }).toMatch(/"state":"done"/)
    leave.abort()
    await reading

    expect(heard).toMatch(/^: listening\n\n/)
    expect(heard).toContain('"type":"job-changed"')
    const { photos } = await desk.ask('jobs.open', { jobId })
    expect(photos.slice(-2).map((photo) => photo.file.fileName)).toEqual([name, 'last.jpg'])
    expect(
      (await ask({ path: `/files/original/${photos.at(-2)?.id}`, headers: page.headers })).body.equals(bytes),
    ).toBe(true)
    expect(readdirSync(desk.library.layout.incoming)).toEqual([])
    // A second intake of the same upload has nothing to take.
    expect(await page.call('intake.start', { jobId, from: { kind: 'upload', uploadId: 'up-1' } })).toMatchObject({
      error: { code: 'not-found' },
    })
  })

  it('an upload with a wrong address is 404', async () => {
    for (const path of [
      '/upload/',
      '/upload/a',
      '/upload/a/b',
      '/upload/../x/1',
      '/upload/a%2fb/1',
      '/upload/a/12345678',
    ])
      expect((await ask({ method: 'PUT', path, headers: page.headers, body: 'x' })).status).toBe(
        path.includes('..') ? 405 : 404,
      )
  })

  it('an upload that cannot be kept is no success', async () => {
    // A file stands where the upload's folder should be.
    writeFileSync(join(desk.library.layout.incoming, 'blocked'), '')
    const answer = await ask({ method: 'PUT', path: '/upload/blocked/0?name=a.jpg', headers: page.headers, body: 'x' })
    expect(answer.status).toBe(500)
    expect(JSON.parse(answer.text)).toMatchObject({ ok: false, error: { message: /\w/ } })
  })

  it('an upload that breaks off leaves nothing', async () => {
    const socket = connect({ host: '127.0.0.1', port: Number(port()) })
    const lines = Object.entries({ host: `127.0.0.1:${port()}`, ...page.headers, 'content-length': '1000' })
    socket.write(
      `PUT /upload/broken/0?name=a.jpg HTTP/1.1\r\n${lines.map(([k, v]) => `${k}: ${v}`).join('\r\n')}\r\n\r\nsome bytes`,
    )
    const folder = join(desk.library.layout.incoming, 'broken')
    await expect.poll(() => readdirSync(folder)).toHaveLength(1)
    socket.destroy()
    await expect.poll(() => readdirSync(folder)).toEqual([])
  })

  it('a page that goes away is told nothing more', async () => {
    const leave = new AbortController()
    await fetch(`${served.address}events`, { headers: page.headers, signal: leave.signal })
    leave.abort()
    await wait(50)
    expect(await page.call('frame.save', { jobId, frame: { upAzimuthDeg: 5 } })).toMatchObject({ ok: true })
    expect(desk.reports).toEqual([])
  })
})
