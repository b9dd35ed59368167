import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { deskEventSchema, type DeskEvent } from '../../app/contract/events.ts'
import { localCall } from '../../main/desk/desk.ts'
import { throughJson } from '../../main/desk/through-json.ts'
import { serveDesk } from '../../main/hosts/browser/serve-desk.ts'
import { pageOrigin } from '../../main/hosts/electron/scheme.ts'
import { channels, openWindow } from '../../main/hosts/electron/window-host.ts'
import { openTestDesk, type TestDesk } from '../library/a-desk.ts'
import { photosIn } from '../library/a-photo.ts'
import { useScratch } from '../library/scratch.ts'
import { visit } from './browser-visit.ts'
import { electronStandIn } from './electron-stand-in.ts'
import { smallPages } from './pages.ts'

const scratch = useScratch()

/** A way to the desk: calls in, events out. */
interface Way {
  readonly call: (name: string, input: unknown) => Promise<unknown>
  readonly heard: readonly DeskEvent[]
  readonly close: () => Promise<void>
}

async function inProcess({ desk }: TestDesk): Promise<Way> {
  const heard: DeskEvent[] = []
  const stop = desk.listen((event) => heard.push(event))
  return {
    call: (name, input) => Reflect.apply(localCall(desk), null, [name, input]),
    heard,
    close: async () => stop(),
  }
}

async function overLoopback({ desk }: TestDesk): Promise<Way> {
  const served = await serveDesk(desk, { port: 0, pagesFolder: smallPages(scratch('pages')) })
  const visitor = await visit(served)
  const heard: DeskEvent[] = []
  const leave = new AbortController()
  const stream = await fetch(`${served.address}events`, { headers: visitor.headers, signal: leave.signal })
  const reading = (async () => {
    let rest = ''
    for await (const part of stream.body ?? []) {
      const lines = (rest + Buffer.from(part).toString('utf8')).split('\n\n')
      rest = lines.pop() ?? ''
      for (const line of lines)
        if (line.startsWith('data: ')) heard.push(deskEventSchema.parse(JSON.parse(line.slice('data: '.length))))
    }
  })().catch(() => undefined)
  return {
    call: visitor.call,
    heard,
    close: async () => {
      leave.abort()
      await reading
      await served.close()
    },
  }
}

async function throughTheWindow({ desk }: TestDesk): Promise<Way> {
  const electron = electronStandIn()
  openWindow(electron.parts, { desk, pagesFolder: smallPages(scratch('pages')), preload: 'preload.cjs' })
  const [window] = electron.windows
  return {
    call: (name, input) => electron.invoke(channels.call, { from: `${pageOrigin}/`, name, input }),
    get heard() {
      return (window?.sent ?? []).map(({ value }) => deskEventSchema.parse(value))
    },
    close: async () => window?.emit('closed'),
  }
}

const ways: [string, (desk: TestDesk) => Promise<Way>][] = [
  ['in the same process', inProcess],
  ['over the loopback address', overLoopback],
  ['through the window', throughTheWindow],
]

/** What differs from one library to the next: identities, moments, and the digests over them. The rest has to be the same. */
const OWN_TO_A_LIBRARY = /^(atMs|\w+AtMs|hash|headHash|previous|before|after)$/

function comparable(value: unknown): unknown {
  const names = new Map<string, string>()
  const text = JSON.stringify(value, (key, inner: unknown) =>
    OWN_TO_A_LIBRARY.test(key) && inner !== null ? `some ${typeof inner}` : inner,
  )
  const named = text.replaceAll(/[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}/g, (id) => {
    const name = names.get(id) ?? `id-${names.size + 1}`
    names.set(id, name)
    return name
  })
  return JSON.parse(named)
}

const square = [
  { xFt: 0, yFt: 0 },
  { xFt: 10, yFt: 0 },
  { xFt: 10, yFt: 10 },
  { xFt: 0, yFt: 10 },
]
const facet = { letter: 'A', outline: square, pitchRise: 5, downslopeAzimuthDeg: 180 }

/** Reads a text field of an answer's value. */
function field(reply: unknown, name: string): string {
  const value: unknown = Object.getOwnPropertyDescriptor(reply, 'value')?.value
  return String(Object.getOwnPropertyDescriptor(value, name)?.value)
}

/** The same story, told to every way: answers in order, good ones and errors. */
async function story(way: Way, { desk, card }: { desk: TestDesk; card: string }): Promise<readonly unknown[]> {
  const answers: unknown[] = []
  const call = async (name: string, input: unknown) => {
    const reply = await way.call(name, input)
    answers.push([name, reply])
    return reply
  }
  const begun = await call('jobs.new', { number: 'T-1', sheet: { owner: { name: 'Ada Owner صورة 🏠' } } })
  const jobId = field(begun, 'jobId')
  await call('jobs.new', { number: 't-1' })
  await call('jobs.new', {})
  await call('facets.save', { jobId, id: null, facet })
  await call('facets.save', { jobId, id: null, facet })
  await call('facets.save', { jobId, id: null, facet: { ...facet, pitchRise: -1 } })
  const started = await call('intake.start', { jobId, from: { kind: 'paths', paths: [card] } })
  await desk.desk.tasks.ended(field(started, 'taskId'))
  await call('intake.start', { jobId, from: { kind: 'paths', paths: ['/no/such/folder'] } })
  const reply = await way.call('jobs.open', { jobId })
  const photoIds = [...JSON.stringify(reply).matchAll(/"id":"([^"]+)","number"/g)].map((match) => match[1])
  await call('photos.tag', { jobId, photoIds: photoIds.slice(-2), set: { caption: 'eave', role: undefined } })
  // A field that is given as undefined is one that is not given, whichever way it comes.
  await call('photos.tag', { jobId, photoIds: photoIds.slice(-2), set: { caption: undefined, role: 'close' } })
  await call('history.undo', { jobId })
  await call('log.page', { jobId, afterSeq: 1, limit: 3 })
  await call('search.find', { text: 'صورة' })
  await call('jobs.list', {})
  for (const rubbish of [undefined, null, 'text', 7, Number.NaN, [], { jobId: 1e300 }]) await call('jobs.open', rubbish)
  await call('no.such.call', {})
  const opened = await way.call('jobs.open', { jobId })
  answers.push(['jobs.open', opened])
  return answers
}

describe.each(ways)('a desk reached %s', (_, reach) => {
  let desk: TestDesk
  let way: Way
  let answers: readonly unknown[]
  let expected: readonly unknown[]

  beforeAll(async () => {
    const card = scratch('card')
    await photosIn(card, ['a.jpg', 'b.jpg', 'c.jpg'])
    const plain = openTestDesk(scratch('library'))
    const direct: Way = {
      call: (name, input) => plain.desk.call(name, throughJson(input)),
      heard: [],
      close: async () => undefined,
    }
    expected = await story(direct, { desk: plain, card })
    await plain.close()
    desk = openTestDesk(join(scratch('library'), 'beside'))
    way = await reach(desk)
    answers = await story(way, { desk, card })
  })

  afterAll(async () => {
    await way.close()
    await desk.close()
  })

  it('gives the answers that the desk itself gives', () => {
    expect(expected.length).toBeGreaterThan(20)
    expect(comparable(answers)).toEqual(comparable(expected))
  })

  it('gives errors as values: none of them is thrown, each has words', () => {
    const errors = answers.filter((answer) => JSON.stringify(answer).includes('"ok":false'))
    expect(errors.length).toBeGreaterThanOrEqual(11)
    for (const error of errors)
      expect(error).toMatchObject([expect.any(String), { ok: false, error: { message: /\w/, help: /\w/ } }])
  })

  it('hears of changes and of the work that was done', async () => {
    await expect.poll(() => way.heard.some((event) => event.type === 'task' && event.task.state === 'done')).toBe(true)
    expect(way.heard.map((event) => event.type)).toEqual(
      expect.arrayContaining(['jobs-changed', 'job-changed', 'task']),
    )
  })
})
