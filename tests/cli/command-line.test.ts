import { chmodSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it } from 'vitest'
import { ensureBuilt } from '../built-program.ts'
import { aPhoto, photosIn } from '../library/a-photo.ts'
import { useScratch } from '../library/scratch.ts'
import { battenbook, type Run } from './command.ts'

const scratch = useScratch()
let library: string
let card: string

beforeAll(async () => {
  await ensureBuilt()
  library = join(scratch('library'), 'made', 'by new')
  card = scratch('card')
  await photosIn(card, ['a.jpg', 'صورة.jpg'])
  writeFileSync(join(card, 'letter.txt'), 'a letter')
})

/** Every JSON answer is one line that parses. */
function json(run: Run): unknown {
  expect(run.stdout.trimEnd().split('\n')).toHaveLength(1)
  return JSON.parse(run.stdout)
}

/** Nothing of the program's inside on the terminal. */
function expectPlain(run: Run): void {
  expect(`${run.stdout}${run.stderr}`).not.toMatch(/\bat .*:\d+:\d+|node:internal|Error:|undefined|\[object/)
}

describe('the commands, one after another', () => {
  it('begin a job in a library that is made with it', async () => {
    const run = await battenbook('new', library, '--number', 'C-1')
    expect(run).toEqual({ code: 0, stdout: 'Job C-1 begun.\n', stderr: '' })
    const next = await battenbook('--json', 'new', library)
    expect(next.code).toBe(0)
    expect(json(next)).toEqual({ ok: true, jobId: expect.any(String), number: expect.stringMatching(/^\d{4}-0001$/) })
  })

  it('take photos in, and tell doubles and what was kept aside', async () => {
    const run = await battenbook('take-in', library, 'c-1', card)
    expect(run).toMatchObject({ code: 0, stderr: '' })
    expect(run.stdout).toMatch(
      /^2 photos taken in, 1 other files kept, 0 doubles, 0 failed\.\n  kept among the attachments: letter\.txt: .+\n$/,
    )
    const again = await battenbook('take-in', library, 'C-1', card, join(card, 'a.jpg'), '--json')
    expect(again.code).toBe(0)
    expect(json(again)).toEqual({
      ok: true,
      intake: {
        photosAdded: 0,
        videosAdded: 0,
        videos: [],
        attachmentsAdded: 0,
        failed: [],
        attached: [],
        doubles: [
          { fileName: 'a.jpg', sameAs: 'P-001' },
          { fileName: 'letter.txt', sameAs: 'letter.txt' },
          { fileName: 'صورة.jpg', sameAs: 'P-002' },
        ],
      },
    })
  })

  it('list the jobs', async () => {
    const run = await battenbook('list', library)
    expect(run).toMatchObject({ code: 0, stderr: '' })
    expect(run.stdout).toMatch(/^C-1 {2}\| {2}owner not stated {2}\| {2}address not stated {2}\| {2}2 photos/m)
    const listed = json(await battenbook('list', '--json', library))
    expect(listed).toMatchObject({
      ok: true,
      jobs: [{ number: 'C-1', photos: 2, findings: 0, packets: 0 }, { photos: 0 }],
    })
  })

  it('find a library sound, and then not', async () => {
    // Three files; two openings and three that came in.
    expect(await battenbook('verify', library)).toEqual({
      code: 0,
      stdout: 'Sound: 3 files and 5 log entries checked.\n',
      stderr: '',
    })
    const originals = join(library, 'jobs', 'C-1', 'originals')
    const [name = ''] = readdirSync(originals)
    const path = join(originals, name)
    const bytes = readFileSync(path)
    chmodSync(path, 0o644)
    writeFileSync(path, Buffer.concat([bytes, Buffer.from(' ')]))
    const run = await battenbook('verify', library)
    expect(run.code).toBe(1)
    expect(run.stdout).toMatch(/^Job C-1, .+\.jpg: The file has changed since it was taken in\.\n$/)
    const told = await battenbook('verify', library, '--json')
    expect(told.code).toBe(1)
    expect(json(told)).toMatchObject({ ok: false, problems: [expect.stringContaining('has changed')] })
    writeFileSync(path, bytes)
    expect((await battenbook('verify', library)).code).toBe(0)
  })

  it('make a job from a folder that describes it', async () => {
    const described = scratch('described')
    mkdirSync(join(described, 'photos'))
    writeFileSync(join(described, 'photos', 'x.jpg'), await aPhoto({ shade: 50 }))
    writeFileSync(join(described, 'job.json'), JSON.stringify({ format: 'battenbook-job', version: 1, number: 'F-1' }))
    const made = await battenbook('new', library, '--from', described, '--json')
    expect(made.code).toBe(0)
    expect(json(made)).toMatchObject({ ok: true, number: 'F-1', intake: { photosAdded: 1 } })
    writeFileSync(join(described, 'job.json'), '{ "format": 1 }')
    const refused = await battenbook('new', library, '--from', described)
    expect(refused).toMatchObject({ code: 1, stdout: '', stderr: expect.stringContaining('job.json, format:') })
    expectPlain(refused)
  })
})

describe('the end of a command', () => {
  it('is 1 where it failed and 2 where it was not understood, with words on the one stream and JSON on the other', async () => {
    const gone = join(scratch('other'), 'gone')
    const [failed, failedJson, misused, misusedJson] = await Promise.all([
      battenbook('list', gone),
      battenbook('list', gone, '--json'),
      battenbook('list'),
      battenbook('list', '--json'),
    ])
    expect(failed).toMatchObject({
      code: 1,
      stdout: '',
      stderr: expect.stringContaining(`There is no library in "${gone}".`),
    })
    expectPlain(failed)
    expect(failedJson).toMatchObject({ code: 1, stderr: '' })
    expect(json(failedJson)).toMatchObject({ ok: false, error: { code: 'missing-folder', help: /new LIBRARY/ } })
    expect(misused).toEqual({ code: 2, stdout: '', stderr: "error: missing required argument 'library'\n" })
    expect(misusedJson).toMatchObject({ code: 2, stderr: '' })
    expect(json(misusedJson)).toMatchObject({ ok: false, error: { code: 'invalid' } })
  })
})
