import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { _electron } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { fileAddress } from '../../app/contract/files.ts'
import { libraryArgument } from '../../main/hosts/electron/library-argument.ts'
import { menuTemplate } from '../../main/hosts/electron/menu.ts'
import { pageOrigin, SCHEME } from '../../main/hosts/electron/scheme.ts'
import { channels, openWindow } from '../../main/hosts/electron/window-host.ts'
import { ensureBuilt, ensurePagesBuilt, programFolder } from '../built-program.ts'
import { openTestDesk, type TestDesk } from '../library/a-desk.ts'
import { aPhoto, photosIn } from '../library/a-photo.ts'
import { useScratch } from '../library/scratch.ts'
import { electronStandIn } from './electron-stand-in.ts'
import { smallPages } from './pages.ts'

const scratch = useScratch()
const electron = electronStandIn()
let desk: TestDesk
let photoId: string
let attachmentId: string
const window = () => {
  const [opened] = electron.windows
  if (opened === undefined) throw new Error('No window was opened.')
  return opened
}

beforeAll(async () => {
  desk = openTestDesk(scratch('library'))
  openWindow(electron.parts, {
    desk: desk.desk,
    pagesFolder: smallPages(scratch('pages')),
    preload: '/program/preload.cjs',
  })
  const card = scratch('card')
  await photosIn(card, ['a.jpg'])
  writeFileSync(join(card, `it's (a) letter.txt`), 'a letter')
  const jobId = await desk.newJob()
  await desk.takeIn(jobId, card)
  const { photos, attachments } = await desk.ask('jobs.open', { jobId })
  photoId = photos[0]?.id ?? ''
  attachmentId = attachments[0]?.id ?? ''
})

afterAll(() => desk.close())

describe('the window', () => {
  it('is one, and its page has no way to the computer but the preload', () => {
    expect(electron.windows).toHaveLength(1)
    expect(window().options.webPreferences).toMatchObject({
      preload: '/program/preload.cjs',
      sandbox: true,
      contextIsolation: true,
      nodeIntegration: false,
      webviewTag: false,
    })
    // Settings that would undo the ones above, https://www.electronjs.org/docs/latest/tutorial/security
    for (const unsafe of [
      'webSecurity',
      'allowRunningInsecureContent',
      'experimentalFeatures',
      'nodeIntegrationInWorker',
      'nodeIntegrationInSubFrames',
      'enableBlinkFeatures',
    ])
      expect(window().options.webPreferences).not.toHaveProperty(unsafe)
  })

  it('loads our own page, and is shown once that is there', () => {
    expect(window().loaded).toEqual(['battenbook://app/'])
    expect(window().shown).toBe(false)
    window().emit('ready-to-show')
    expect(window().shown).toBe(true)
  })

  it('goes to no other address, opens no second window and embeds nothing', () => {
    for (const url of [
      'https://evil.example/',
      'file:///etc/passwd',
      'battenbook://other/',
      'battenbook://app.evil.example/',
      'about:blank',
      'javascript:alert(1)',
    ])
      expect(window().emitContents('will-navigate', { url })).toBe(true)
    expect(window().emitContents('will-navigate', { url: `${pageOrigin}/jobs` })).toBe(false)
    expect(window().emitContents('will-attach-webview')).toBe(true)
    expect(window().openHandler?.()).toEqual({ action: 'deny' })
  })

  it.each(['media', 'geolocation', 'notifications', 'openExternal', 'fileSystem', 'clipboard-read', 'usb'])(
    'is denied %s',
    (permission) => {
      expect(electron.allows(permission)).toBe(false)
    },
  )

  it('has a menu without developer tools, and leaves undo to the pages', () => {
    for (const platform of ['linux', 'darwin', 'win32'])
      expect(JSON.stringify(menuTemplate(platform))).not.toMatch(/toggleDevTools|"undo"|"redo"/i)
  })
})

describe('the one channel', () => {
  it('takes calls from our own page', async () => {
    expect([...electron.handlers.keys()]).toEqual(['battenbook:call'])
    const call = { name: 'library.info', input: {} }
    expect(await electron.invoke(channels.call, { from: `${pageOrigin}/`, ...call })).toMatchObject({
      ok: true,
      value: { photos: 1 },
    })
    expect(await electron.invoke(channels.call, { from: `${pageOrigin}/jobs/x`, ...call })).toMatchObject({ ok: true })
  })

  it.each([
    null,
    '',
    'https://evil.example/',
    'file:///x',
    'battenbook://app.evil.example/',
    'battenbook://other/',
    'about:blank',
  ])('takes none from %j', async (from) => {
    const call = { from, name: 'jobs.new', input: {} }
    const before = (await desk.ask('jobs.list', {})).jobs.length
    await expect(electron.invoke(channels.call, call)).rejects.toThrow('Calls are taken from the workstation only.')
    expect((await desk.ask('jobs.list', {})).jobs).toHaveLength(before)
  })

  it('answers rubbish with error values', async () => {
    for (const name of [undefined, null, 7, {}, ['jobs.open'], 'no.such.call'])
      expect(
        await electron.invoke(channels.call, { from: pageOrigin, name, input: new Map([[1, 10n]]) }),
      ).toMatchObject({ ok: false })
  })

  it('goes by the same names in the preload, which can load no other file', () => {
    const preload = readFileSync(join(programFolder, 'main', 'hosts', 'electron', 'preload.ts'), 'utf8')
    const named = [...preload.matchAll(/^const (CALL|EVENT) = '([^']+)'$/gm)].map(([, which, name]) => [which, name])
    expect(named).toEqual([
      ['CALL', channels.call],
      ['EVENT', channels.event],
    ])
    expect([...preload.matchAll(/from '([^']+)'/g)].map((match) => match[1])).toEqual(['electron'])
  })

  it('tells the page of events until the window is closed', async () => {
    await desk.newJob()
    expect(window().sent.at(-1)).toEqual({ channel: 'battenbook:event', value: { type: 'jobs-changed' } })
    const count = window().sent.length
    window().emit('closed')
    await desk.newJob()
    expect(window().sent).toHaveLength(count)
  })
})

describe('the protocol', () => {
  it('is the only one, and gives pages and files of the library, with the content policy', async () => {
    expect([...electron.schemes.keys()]).toEqual([SCHEME])
    const page = await electron.fetch(`${pageOrigin}/`)
    expect(await page.text()).toContain('<title>Battenbook</title>')
    const original = await electron.fetch(`${pageOrigin}${fileAddress({ kind: 'original', id: photoId })}`)
    expect(Buffer.from(await original.arrayBuffer()).equals(await aPhoto({ shade: 0 }))).toBe(true)
    const saved = await electron.fetch(`${pageOrigin}${fileAddress({ kind: 'attachment', id: attachmentId })}`)
    expect(saved.headers.get('content-disposition')).toBe(`attachment; filename*=UTF-8''it%27s%20%28a%29%20letter.txt`)
    for (const answer of [page, original, saved, await electron.fetch(`${pageOrigin}/x.y`)]) {
      expect(answer.headers.get('content-security-policy')).toMatch(/^default-src 'none'/)
      expect(answer.headers.get('x-content-type-options')).toBe('nosniff')
    }
    await saved.text()
  })

  it('gives a part of a file where a player asks for it (RFC 9110 section 14)', async () => {
    const address = `${pageOrigin}${fileAddress({ kind: 'original', id: photoId })}`
    const whole = await aPhoto({ shade: 0 })
    const part = await electron.fetch(address, 'GET', { range: 'bytes=10-19' })
    expect([part.status, part.headers.get('content-range'), part.headers.get('content-length')]).toEqual([
      206,
      `bytes 10-19/${whole.length}`,
      '10',
    ])
    expect(Buffer.from(await part.arrayBuffer()).equals(whole.subarray(10, 20))).toBe(true)
    const beyond = await electron.fetch(address, 'GET', { range: `bytes=${whole.length}-` })
    expect([beyond.status, beyond.headers.get('content-range')]).toEqual([416, `bytes */${whole.length}`])
  })

  it.each([
    'battenbook://app/files/original/..%2f..%2fbattenbook.db',
    'battenbook://app/files/original/../../battenbook.db',
    'battenbook://app/files/draft/..%2f..%2f..%2fbattenbook.db',
    'battenbook://app/files/database/battenbook.db',
    'battenbook://app/../battenbook.db',
    'battenbook://app/%2e%2e/%2e%2e/battenbook.db',
    'battenbook://app/..%5c..%5cbattenbook.db',
    'battenbook://app//etc/passwd.html',
    'battenbook://app/assets/../../package.json',
    'battenbook://app/files/original/gone',
  ])('%s leads nowhere', async (url) => {
    const answer = await electron.fetch(url)
    expect(answer.status).toBe(404)
    expect(await answer.text()).toBe('')
  })

  it('refuses other hosts and everything but reading', async () => {
    expect((await electron.fetch('battenbook://other/')).status).toBe(403)
    for (const method of ['POST', 'PUT', 'DELETE'])
      expect((await electron.fetch(`${pageOrigin}/`, method)).status).toBe(403)
  })
})

describe('the library that the window opens', () => {
  const documents = join('/', 'home', 'x', 'Documents')
  it.each([
    [['electron', '/program', '/library'], false, '/library'],
    [['electron', '/program'], false, join(documents, 'Battenbook')],
    [['electron', '--no-sandbox', '/program', '/library'], false, '/library'],
    [['/opt/battenbook'], true, join(documents, 'Battenbook')],
    [['/opt/battenbook', '/library'], true, '/library'],
    [['/opt/battenbook', '--disable-gpu'], true, join(documents, 'Battenbook')],
  ])('with %j (packaged: %s) is %s', (argv, isPackaged, expected) => {
    expect(libraryArgument(argv, { isPackaged, documents })).toBe(expected)
  })
})

/** Path of the Electron runtime; null where only the package is there. Loading the package would fetch the runtime. */
function electronRuntime(): string | null {
  const folder = join(programFolder, 'node_modules', 'electron')
  const named = join(folder, 'path.txt')
  if (!existsSync(named)) return null
  const path = join(folder, 'dist', readFileSync(named, 'utf8').trim())
  return existsSync(path) ? path : null
}

const runtime = electronRuntime()
const driver = join(programFolder, 'dist', 'electron-native', 'better_sqlite3.node')

describe('the real runtime', () => {
  it.skipIf(runtime === null || !existsSync(driver))(
    'opens the workstation and answers a call (needs the Electron runtime, its driver and a display)',
    async () => {
      await ensureBuilt()
      await ensurePagesBuilt()
      const library = scratch('library')
      const app = await _electron.launch({
        executablePath: runtime ?? '',
        args: ['--no-sandbox', programFolder, library],
      })
      const page = await app.firstWindow()
      const reply: unknown = await page.evaluate(`window.battenbook.call('library.info', {})`)
      expect(reply).toMatchObject({ ok: true, value: { folder: library, drop: 'paths' } })
      await app.close()
      expect(readdirSync(join(library, 'open-in'))).toEqual([])
    },
  )
})
