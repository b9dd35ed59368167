import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { beforeAll, describe, expect, it, vi } from 'vitest'
import packageJson from '../../package.json' with { type: 'json' }
import { appErrorSchema } from '../../app/contract/app-error.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { runCommandLine } from './cli.ts'

const scratch = useScratch()
let library: string
let card: string

/** Runs the command line in this process; what it writes is kept from the terminal. */
async function battenbook(...args: string[]): Promise<{ code: number; stdout: string; stderr: string }> {
  const keep = (stream: NodeJS.WriteStream) => {
    const written: string[] = []
    const spy = vi.spyOn(stream, 'write').mockImplementation((part) => {
      written.push(String(part))
      return true
    })
    return { written, spy }
  }
  const [out, err] = [keep(process.stdout), keep(process.stderr)]
  try {
    const code = await runCommandLine(args)
    return { code, stdout: out.written.join(''), stderr: err.written.join('') }
  } finally {
    out.spy.mockRestore()
    err.spy.mockRestore()
  }
}

beforeAll(async () => {
  library = scratch('library')
  card = scratch('card')
  writeFileSync(join(card, 'letter.txt'), 'a letter')
  await battenbook('new', library, '--number', 'C-1')
})

/** Every JSON answer is one line that parses. */
function json({ stdout }: { stdout: string }): unknown {
  expect(stdout.trimEnd().split('\n')).toHaveLength(1)
  return JSON.parse(stdout)
}

/** Nothing of the program's inside on the terminal. */
function expectPlain({ stdout, stderr }: { stdout: string; stderr: string }): void {
  expect(`${stdout}${stderr}`).not.toMatch(/\bat .*:\d+:\d+|node:internal|Error:|undefined|\[object/)
}

describe('what fails', () => {
  const other = () => scratch('other')
  it.each<[string, () => string[], { code: string; says: RegExp }]>([
    ['list without a library', () => ['list', other()], { code: 'missing-folder', says: /There is no library in/ }],
    [
      'take-in without a library',
      () => ['take-in', join(other(), 'gone'), 'C-1', card],
      { code: 'missing-folder', says: /There is no library in/ },
    ],
    [
      'verify of nothing',
      () => ['verify', join(other(), 'gone')],
      { code: 'missing-folder', says: /gone" is not there/ },
    ],
    [
      'verify of a folder that is none',
      () => ['verify', other()],
      { code: 'missing-folder', says: /There is no library in/ },
    ],
    [
      'take-in into no job',
      () => ['take-in', library, 'nope', card],
      { code: 'not-found', says: /There is no job nope/ },
    ],
    [
      'take-in of a missing folder',
      () => ['take-in', library, 'C-1', '/no/such/card'],
      { code: 'missing-folder', says: /"\/no\/such\/card" is not there/ },
    ],
    [
      'take-in of an empty folder',
      () => ['take-in', library, 'C-1', other()],
      { code: 'missing-folder', says: /no files/ },
    ],
    ['a number in use', () => ['new', library, '--number', 'c-1'], { code: 'conflict', says: /c-1 is in use/ }],
    ['a number that is none', () => ['new', library, '--number', '../x'], { code: 'invalid', says: /A job number/ }],
    [
      'new from a missing folder',
      () => ['new', library, '--from', '/no/such/job'],
      { code: 'missing-folder', says: /job\.json" is not there/ },
    ],
    [
      'a number beside a description',
      () => ['new', library, '--from', card, '--number', 'X'],
      { code: 'invalid', says: /--number does not go with --from/ },
    ],
    [
      'a file where a library should be',
      () => ['new', join(card, 'letter.txt')],
      { code: 'conflict', says: /is there already/ },
    ],
    [
      'a port that is none',
      () => ['serve', library, '--port', '70000'],
      { code: 'invalid', says: /70000 is not a port/ },
    ],
    [
      'a port that is a word',
      () => ['serve', library, '--port', '1e3'],
      { code: 'invalid', says: /1e3 is not a port/ },
    ],
  ])('%s is told in words with exit code 1, and in JSON where that is asked for', async (_, args, { code, says }) => {
    const given = args()
    const run = await battenbook(...given)
    const told = await battenbook(...given, '--json')
    expect(run).toMatchObject({ code: 1, stdout: '', stderr: expect.stringMatching(says) })
    // What happened, then what to do.
    expect(run.stderr.trimEnd().split('\n')).toHaveLength(2)
    expectPlain(run)
    expect(told).toMatchObject({ code: 1, stderr: '' })
    const answer = json(told)
    expect(answer).toMatchObject({ ok: false, error: { code, message: expect.stringMatching(says) } })
    appErrorSchema.parse(Object.getOwnPropertyDescriptor(answer, 'error')?.value)
  })
})

describe('what is not understood', () => {
  it.each<[string, string[], RegExp]>([
    ['no command', [], /Usage: battenbook|No command was given/],
    ['an unknown command', ['frobnicate'], /unknown command 'frobnicate'/],
    ['an unknown option', ['list', 'x', '--loud'], /unknown option '--loud'/],
    ['a missing argument', ['list'], /missing required argument 'library'/],
    ['missing paths', ['take-in', 'x', 'y'], /missing required argument 'paths'/],
    ['too many arguments', ['list', 'x', 'y'], /too many arguments/],
    ['an option without its value', ['new', 'x', '--number'], /argument missing/],
    ['a packet without a place to go', ['packet', 'x', 'y'], /--out <folder>/],
  ])('%s is told with exit code 2, and in JSON where that is asked for', async (_, args, says) => {
    const run = await battenbook(...args)
    const told = await battenbook('--json', ...args)
    expect(run).toMatchObject({ code: 2, stdout: '', stderr: expect.stringMatching(says) })
    expectPlain({ ...run, stderr: run.stderr.replace(/^error: /, '') })
    expect(told).toMatchObject({ code: 2, stderr: '' })
    expect(json(told)).toMatchObject({
      ok: false,
      error: { code: 'invalid', message: expect.stringMatching(says), help: 'See: battenbook --help' },
    })
  })
})

describe('help and version', () => {
  it('are no failure', async () => {
    expect(await battenbook('--version')).toEqual({ code: 0, stderr: '', stdout: `${packageJson.version}\n` })
    const help = await battenbook('--help')
    expect(help).toMatchObject({ code: 0, stderr: '' })
    for (const command of ['list', 'new', 'take-in', 'packet', 'verify', 'serve', 'start'])
      expect(help.stdout).toContain(`  ${command} `)
    expect(await battenbook('take-in', '--help')).toMatchObject({ code: 0, stdout: expect.stringContaining('--json') })
  })
})
