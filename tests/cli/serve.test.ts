import { spawn, type ChildProcess } from 'node:child_process'
import { createServer } from 'node:net'
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterEach, beforeAll, describe, expect, it } from 'vitest'
import { isKept } from '../../main/library/keeper.ts'
import { commandPath, ensureBuilt, ensurePagesBuilt } from '../built-program.ts'
import { visit } from '../hosts/browser-visit.ts'
import { useScratch } from '../library/scratch.ts'
import { battenbook } from './command.ts'

const scratch = useScratch()
const running: ChildProcess[] = []

beforeAll(async () => {
  await ensureBuilt()
  await ensurePagesBuilt()
})

afterEach(() => {
  for (const child of running.splice(0)) child.kill('SIGKILL')
})

interface Serving {
  readonly entrance: string
  readonly address: string
  /** Sends a signal and answers how the process ended. */
  readonly stop: (signal: NodeJS.Signals) => Promise<{ code: number | null; signal: NodeJS.Signals | null }>
}

/** Starts `battenbook serve` and waits for the address it prints. */
function serving(library: string, ...more: string[]): Promise<Serving> {
  const child = spawn(process.execPath, [commandPath, 'serve', library, ...more], {
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  running.push(child)
  const ended = new Promise<{ code: number | null; signal: NodeJS.Signals | null }>((resolve) =>
    child.once('exit', (code, signal) => resolve({ code, signal })),
  )
  return new Promise((resolve, reject) => {
    let text = ''
    child.stdout.on('data', (part: Buffer) => {
      text += part.toString('utf8')
      const [entrance, address] = /(http:\/\/127\.0\.0\.1:\d+\/)enter\?token=[\w-]+/.exec(text) ?? []
      if (entrance === undefined || address === undefined) return
      resolve({
        entrance,
        address,
        stop: (signal) => {
          child.kill(signal)
          return ended
        },
      })
    })
    void ended.then(({ code }) => reject(new Error(`It ended with ${code}: ${text}`)))
  })
}

/** True when the port can be bound, and so is nobody's. */
function isFree(address: string): Promise<boolean> {
  const server = createServer()
  return new Promise((resolve) => {
    server.once('error', () => resolve(false))
    server.listen(Number(new URL(address).port), '127.0.0.1', () => server.close(() => resolve(true)))
  })
}

describe('serve', () => {
  it.each(['SIGTERM', 'SIGINT', 'SIGHUP'] as const)(
    'prints an address that answers, stops on %s with 0, and gives port and library free',
    async (signal) => {
      const library = scratch('library')
      const { address, entrance, stop } = await serving(library)
      const page = await visit({ address, entrance })
      expect(await page.ask({ path: '/' })).toMatchObject({ status: 200, text: expect.stringContaining('<div id=') })
      expect(await page.call('jobs.new', { number: 'S-1' })).toMatchObject({ ok: true })
      // A page that listens must not keep the program from stopping.
      const leave = new AbortController()
      const stream = await fetch(`${address}events`, { headers: page.headers, signal: leave.signal })
      expect(stream.status).toBe(200)
      expect(isKept(library)).toBe(true)
      expect(await stop(signal)).toEqual({ code: 0, signal: null })
      leave.abort()
      expect(await isFree(address)).toBe(true)
      expect(isKept(library)).toBe(false)
      const token = new URL(entrance).searchParams.get('token') ?? 'none'
      for (const name of readdirSync(join(library, 'logs')))
        expect(readFileSync(join(library, 'logs', name), 'utf8')).not.toContain(token)
    },
  )

  it('stops when it is told to right after it has printed the address', async () => {
    const { stop } = await serving(scratch('library'), '--json')
    expect(await stop('SIGTERM')).toEqual({ code: 0, signal: null })
  })

  it('says so when the port is in use, and gives the library free', async () => {
    const { address, stop } = await serving(scratch('library'))
    const library = scratch('library')
    const { port } = new URL(address)
    const run = await battenbook('serve', library, '--port', port, '--json')
    expect(run).toMatchObject({ code: 1, stderr: '' })
    expect(JSON.parse(run.stdout)).toMatchObject({
      ok: false,
      error: { code: 'conflict', message: `Port ${port} is in use.` },
    })
    expect(isKept(library)).toBe(false)
    await stop('SIGTERM')
  })

  it('works on a library beside other programs', async () => {
    const library = scratch('library')
    const { address, entrance, stop } = await serving(library)
    const page = await visit({ address, entrance })
    expect((await battenbook('new', library, '--number', 'beside')).code).toBe(0)
    expect(await page.call('jobs.list', {})).toMatchObject({ ok: true, value: { jobs: [{ number: 'beside' }] } })
    await stop('SIGTERM')
  })
})
