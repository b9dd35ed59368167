import fc from 'fast-check'
import { afterAll, describe, expect, it } from 'vitest'
import { openTestDesk } from '../../tests/library/a-desk.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { appErrorSchema, errorCodeSchema, errorHelp } from '../../app/contract/app-error.ts'
import { contract } from '../../app/contract/contract.ts'
import { localCall } from './desk.ts'

const scratch = useScratch()
const test = openTestDesk(scratch('library'))
afterAll(() => test.close())

/** Packets have tests of their own. */
const names = Object.keys(contract).filter((name) => !name.startsWith('packet.'))

/** Fields that calls have, so that rubbish gets past the first door now and then. */
const fields = [
  'jobId',
  'id',
  'sheet',
  'frame',
  'facet',
  'finding',
  'reading',
  'photoIds',
  'set',
  'clock',
  'number',
  'folder',
  'from',
  'kind',
  'paths',
  'uploadId',
  'taskId',
  'text',
  'limit',
  'afterSeq',
  'operator',
  'outline',
  'letter',
]

const oddNumber = fc.oneof(
  fc.constantFrom(0, -0, -1, 1e308, -1e308, 2 ** 53, 2 ** 63, Number.NaN, Infinity, -Infinity, 0.1),
  fc.double(),
)
const oddText = fc.oneof(
  fc.string({ unit: 'binary' }),
  fc.constantFrom(
    '',
    ' ',
    '\0',
    '\ud800',
    '__proto__',
    '../../etc/passwd',
    "'; drop table jobs; --",
    '"*',
    'a'.repeat(100_000),
  ),
)
const rubbish = fc.letrec((tie) => ({
  any: fc.oneof(
    { depthSize: 'small' },
    fc.constantFrom(undefined, null, true, false),
    oddNumber,
    oddText,
    fc.array(tie('any'), { maxLength: 4 }),
    fc.dictionary(fc.oneof(fc.constantFrom(...fields), fc.string()), tie('any'), { maxKeys: 6 }),
  ),
})).any

/** Things that only code in the same process could hand over. */
function unheardOf(): unknown[] {
  const round: { self?: unknown } = {}
  round.self = round
  return [10n, Symbol('x'), () => 1, round, new Map([[1, 2]]), new Date(Number.NaN), /x/, Object.create(null)]
}

function expectAnErrorValue(reply: unknown): void {
  expect(reply).toMatchObject({ ok: false })
  const error = appErrorSchema.parse(Object.getOwnPropertyDescriptor(reply, 'error')?.value)
  expect(error.message).toMatch(/\w.*[.!?]$/su)
  expect(error.help).toMatch(/\w/)
  expect(`${error.message}\n${error.help}`).not.toMatch(/\bat .*:\d+:\d+|node_modules|ZodError|SqliteError|TypeError/)
  expect(error.code).not.toBe('internal')
}

describe('whatever a call is given', () => {
  it.each(names)('%s answers with a value or with an error in words, and never throws', async (name) => {
    await fc.assert(
      fc.asyncProperty(rubbish, fc.boolean(), async (given, withJob) => {
        const job = withJob ? { jobId: 'no-such-job' } : {}
        const input =
          typeof given === 'object' && given !== null && !Array.isArray(given) ? { ...job, ...given } : given
        const reply = await test.desk.call(name, input)
        if (!reply.ok) expectAnErrorValue(reply)
      }),
      { numRuns: 60 },
    )
    expect(test.reports).toEqual([])
  })

  it.each(names)('%s copes with what is no JSON', async (name) => {
    for (const input of unheardOf()) {
      const reply = await test.desk.call(name, input)
      if (!reply.ok) expectAnErrorValue(reply)
      await expect(localCall(test.desk)('jobs.open', Object(input))).resolves.toHaveProperty('ok')
    }
  })

  it('a call without any input is an error value in the same process too', async () => {
    const reply: unknown = await Reflect.apply(localCall(test.desk), null, ['jobs.open', undefined])
    expect(reply).toMatchObject({ ok: false, error: { code: 'invalid' } })
  })

  it.each(['', 'nothing', 'jobs', 'toString', '__proto__', 'constructor', 'jobs.open ', 'JOBS.OPEN'])(
    '%j is no call',
    async (name) => {
      const reply = await test.desk.call(name, {})
      expectAnErrorValue(reply)
      expect(reply).toMatchObject({ error: { code: 'not-found' } })
    },
  )

  it.each([
    ['jobs.open', {}],
    ['sheet.save', { sheet: {} }],
    ['frame.save', { frame: {} }],
    ['facets.remove', { id: 'x' }],
    ['photos.tag', { photoIds: ['x'], set: {} }],
    ['cameras.set-clock', { id: 'x', clock: {} }],
    ['findings.remove', { id: 'x' }],
    ['readings.remove', { id: 'x' }],
    ['history.undo', {}],
    ['history.redo', {}],
    ['intake.start', { from: { kind: 'paths', paths: ['.'] } }],
    ['log.page', {}],
    ['log.verify', {}],
  ])('%s says so when the job is not there', async (name, more) => {
    const reply = await test.desk.call(name, { jobId: 'no-such-job', ...more })
    expectAnErrorValue(reply)
    expect(reply).toMatchObject({ error: { code: 'not-found' } })
  })
})

describe('every kind of error', () => {
  it.each(errorCodeSchema.options)('%s has words on what to do', (code) => {
    expect(errorHelp[code]).toMatch(/^[A-Z].*\.$/)
  })
})

describe('what nobody foresaw', () => {
  it('is told plainly, and only the log file gets the stack', async () => {
    const broken = openTestDesk(scratch('broken'))
    broken.library.db.connection.exec('alter table settings rename to elsewhere')
    const reply = await broken.desk.call('library.info', {})
    expect(reply).toEqual({
      ok: false,
      error: {
        code: 'internal',
        message: 'Something went wrong inside the program.',
        help: errorHelp.internal,
        about: null,
      },
    })
    expect(broken.reports.join('\n')).toMatch(/no such table: settings\n\s+at /)
    await broken.close()
  })
})
