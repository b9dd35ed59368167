import { mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { DescribedJobInput } from '../../app/job/described-job.ts'
import { openTestDesk, type TestDesk } from '../../tests/library/a-desk.ts'
import { aPhoto } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()

const outline = [
  { xFt: 0, yFt: 0 },
  { xFt: 20, yFt: 0 },
  { xFt: 20, yFt: 12 },
  { xFt: 0, yFt: 12 },
]
const facet = { letter: 'A', outline, pitchRise: 5, downslopeAzimuthDeg: 180 }
const finding = { kind: 'damage', component: 'field-tile', condition: 'missing' } as const

const good: DescribedJobInput = {
  format: 'battenbook-job',
  version: 1,
  number: 'D-1',
  sheet: { owner: { name: 'Ada Owner' }, loss: { date: '2026-03-10', cause: 'wind' } },
  frame: { upAzimuthDeg: 12 },
  facets: [facet, { ...facet, letter: 'B', name: 'rear' }],
  cameras: [{ make: 'Example', model: 'Model One', clock: { correctionMs: 90_000, why: 'Compared with a phone' } }],
  photos: [
    { file: 'a.jpg', facet: 'A', caption: 'eave', role: 'overview' },
    { file: 'b.jpg', leftOutBecause: 'blurred' },
  ],
  findings: [{ ...finding, number: 7, facet: 'B', observation: 'Gone.', photos: [{ file: 'a.jpg', role: 'close' }] }],
  readings: [{ number: 3, facet: 'A', liftIn: 1.25, photos: ['b.jpg'], finding: 7 }],
}

/** Writes a job folder; `described` is text, or a value to be written as JSON. */
async function jobFolder(described: unknown, photos: Record<string, Buffer> | null = null): Promise<string> {
  const folder = scratch('described')
  writeFileSync(join(folder, 'job.json'), typeof described === 'string' ? described : JSON.stringify(described))
  mkdirSync(join(folder, 'photos'))
  const files = photos ?? {
    'a.jpg': await aPhoto({ shade: 1, takenAt: '2026:03:14 09:26:53', offset: '-04:00' }),
    'b.jpg': await aPhoto({ shade: 2, takenAt: '2026:03:14 09:30:00', offset: '-04:00' }),
    'c.jpg': await aPhoto({ shade: 3, takenAt: '2026:03:14 09:31:00', camera: { make: 'Other', model: 'Two' } }),
  }
  for (const [name, bytes] of Object.entries(files)) writeFileSync(join(folder, 'photos', name), bytes)
  return folder
}

async function withDesk(work: (desk: TestDesk) => Promise<void>): Promise<void> {
  const desk = openTestDesk(scratch('library'))
  await work(desk).finally(() => desk.close())
}

async function made(desk: TestDesk, folder: string) {
  const { jobId, taskId } = await desk.ask('jobs.new-from-folder', { folder })
  return { jobId, task: await desk.desk.tasks.ended(taskId), snapshot: await desk.ask('jobs.open', { jobId }) }
}

describe('a described job', () => {
  it('comes in with photos, tags, facets, findings, readings, clocks and times, as one step', () =>
    withDesk(async (desk) => {
      const { jobId, task, snapshot } = await made(desk, await jobFolder(good))
      expect(task).toMatchObject({ state: 'done', intake: { photosAdded: 3, failed: [] } })
      const { job, facets, photos, cameras, findings, readings, history } = snapshot
      const [a, b, c] = photos
      const [front, rear] = facets
      expect(job).toMatchObject({ number: 'D-1', sheet: { owner: { name: 'Ada Owner' } }, frame: { upAzimuthDeg: 12 } })
      expect(facets).toMatchObject([
        { letter: 'A', outline },
        { letter: 'B', name: 'rear' },
      ])
      expect(a?.tags).toMatchObject({ facetId: front?.id, caption: 'eave', role: 'overview', leftOutBecause: null })
      expect(b?.tags).toMatchObject({ facetId: null, leftOutBecause: 'blurred' })
      expect(c?.tags).toMatchObject({ caption: '', facetId: null })
      expect(findings).toMatchObject([
        { number: 7, facetId: rear?.id, observation: 'Gone.', photos: [{ photoId: a?.id, role: 'close' }] },
      ])
      expect(readings).toMatchObject([
        { number: 3, facetId: front?.id, findingId: findings[0]?.id, photoIds: [b?.id], liftIn: 1.25 },
      ])
      expect(cameras.map((camera) => camera.clock.correctionMs)).toEqual([90_000, 0])
      // 09:26:53 four hours behind UTC, with a clock that was a minute and a half slow.
      expect(a?.time).toMatchObject({ basis: 'camera-offset', correctionMs: 90_000 })
      expect(new Date(a?.time.instantMs ?? 0).toISOString()).toBe('2026-03-14T13:28:23.000Z')
      expect(c?.time).toMatchObject({ basis: 'unknown', instantMs: null })
      expect(history.undo).toBe('Take over the records of job.json')
      expect(await desk.ask('log.verify', { jobId })).toMatchObject({ brokenAtSeq: null })
      // Numbers given in the description are never given again.
      const next = await desk.ask('findings.save', { jobId, id: null, finding })
      expect(next.number).toBe(8)
      expect((await desk.ask('readings.save', { jobId, id: null, reading: {} })).number).toBe(4)
    }))

  it('may begin with a byte order mark', () =>
    withDesk(async (desk) => {
      const { task } = await made(desk, await jobFolder(`\uFEFF${JSON.stringify(good)}`))
      expect(task.state).toBe('done')
    }))

  it('needs no more than its number', () =>
    withDesk(async (desk) => {
      const { snapshot } = await made(desk, await jobFolder({ format: 'battenbook-job', version: 1, number: 'bare' }))
      expect(snapshot.photos).toHaveLength(3)
    }))

  it('may call the same bytes by two names: both lead to one photo', () =>
    withDesk(async (desk) => {
      const bytes = await aPhoto({ shade: 5 })
      const described = {
        ...good,
        photos: [
          { file: 'a.jpg', caption: 'first' },
          { file: 'b.jpg', caption: 'second' },
        ],
        findings: [{ ...finding, number: 1, photos: [{ file: 'b.jpg', role: 'close' }] }],
        readings: [],
      }
      const { jobId, snapshot } = await made(desk, await jobFolder(described, { 'a.jpg': bytes, 'b.jpg': bytes }))
      expect(snapshot.photos).toMatchObject([{ tags: { caption: 'first' } }])
      expect(snapshot.findings[0]?.photos).toMatchObject([{ photoId: snapshot.photos[0]?.id }])
      expect((await desk.ask('history.undo', { jobId })).summary).toBe('Take over the records of job.json')
    }))

  it('goes on where an earlier run was stopped', () =>
    withDesk(async (desk) => {
      const folder = await jobFolder(good)
      const { jobId, taskId } = await desk.ask('jobs.new-from-folder', { folder })
      await desk.ask('tasks.cancel', { taskId })
      expect(await desk.desk.tasks.ended(taskId)).toMatchObject({ state: 'cancelled' })
      expect((await desk.ask('jobs.open', { jobId })).findings).toEqual([])
      const again = await made(desk, folder)
      expect(again.jobId).toBe(jobId)
      expect(again.snapshot).toMatchObject({ photos: { length: 3 }, findings: [{ number: 7 }] })
      expect((await desk.ask('jobs.list', {})).jobs).toHaveLength(1)
    }))

  it.each(['D-1', 'd-1'])('is refused when its number is in use, as %s', (number) =>
    withDesk(async (desk) => {
      await made(desk, await jobFolder(good))
      const reply = await desk.desk.call('jobs.new-from-folder', { folder: await jobFolder({ ...good, number }) })
      expect(reply).toMatchObject({ error: { code: 'conflict', about: 'number' } })
      expect((await desk.ask('jobs.list', {})).jobs).toHaveLength(1)
    }),
  )
})

describe('a described job that cannot be made', () => {
  it.each<[string, unknown, { about: string | null; says: RegExp }]>([
    ['no JSON', '{ "format": ', { about: null, says: /job\.json is not JSON/ }],
    ['an empty file', '', { about: null, says: /job\.json is not JSON/ }],
    ['a list', [], { about: '', says: /as a whole/ }],
    ['another format', { ...good, format: 'something' }, { about: 'format', says: /format/ }],
    ['a later version', { ...good, version: 2 }, { about: 'version', says: /version/ }],
    ['no number', { ...good, number: undefined }, { about: 'number', says: /number/ }],
    ['an unknown field', { ...good, fotos: [] }, { about: '', says: /There is no field called "fotos"/ }],
    [
      'an unknown field of a facet',
      { ...good, facets: [{ ...facet, pitch: 5 }] },
      { about: 'facets.0', says: /There is no field called "pitch"/ },
    ],
    [
      'a date that the calendar has not',
      { ...good, sheet: { loss: { date: '2026-02-30' } } },
      { about: 'sheet.loss.date', says: /not a date in the calendar/ },
    ],
    [
      'an unknown facet',
      { ...good, photos: [{ file: 'a.jpg', facet: 'Z' }] },
      { about: 'photos.0.facet', says: /no facet "Z"/ },
    ],
    [
      'an unknown photo',
      { ...good, photos: [{ file: 'x.jpg' }] },
      { about: 'photos.0.file', says: /no photo "x\.jpg"/ },
    ],
    [
      'an unknown photo of a finding',
      { ...good, findings: [{ ...finding, number: 1, photos: [{ file: 'x.jpg', role: 'close' }] }], readings: [] },
      { about: 'findings.0.photos.0.file', says: /no photo "x\.jpg"/ },
    ],
    [
      'an unknown photo of a reading',
      { ...good, readings: [{ number: 1, photos: ['x.jpg'] }] },
      { about: 'readings.0.photos.0', says: /x\.jpg/ },
    ],
    [
      'an unknown finding',
      { ...good, readings: [{ number: 1, finding: 9 }] },
      { about: 'readings.0.finding', says: /no finding 9/ },
    ],
    ['a letter twice', { ...good, facets: [facet, facet] }, { about: 'facets.1.letter', says: /A is used twice/ }],
    [
      'a finding number twice',
      {
        ...good,
        findings: [
          { ...finding, number: 2 },
          { ...finding, number: 2 },
        ],
        readings: [],
      },
      { about: 'findings.1.number', says: /2 is used twice/ },
    ],
    [
      'a reading number twice',
      { ...good, readings: [{ number: 2 }, { number: 2 }] },
      { about: 'readings.1.number', says: /2 is used twice/ },
    ],
    [
      'a photo twice',
      { ...good, photos: [{ file: 'a.jpg' }, { file: 'a.jpg' }] },
      { about: 'photos.1.file', says: /a\.jpg is used twice/ },
    ],
    [
      'an outline that crosses itself',
      {
        ...good,
        facets: [{ ...facet, outline: [outline[0], outline[2], outline[1], outline[3]] }],
        photos: [],
        findings: [],
        readings: [],
      },
      { about: 'facets.0.outline', says: /cross/i },
    ],
  ])('%s is named, and nothing is begun', (_, described, { about, says }) =>
    withDesk(async (desk) => {
      const reply = await desk.desk.call('jobs.new-from-folder', { folder: await jobFolder(described) })
      expect(reply).toMatchObject({
        ok: false,
        error: { code: 'invalid', about, message: expect.stringMatching(says) },
      })
      expect((await desk.ask('jobs.list', {})).jobs).toEqual([])
      expect(desk.reports).toEqual([])
    }),
  )

  it('two photos of one name in different folders are named when the description means one of them', () =>
    withDesk(async (desk) => {
      const folder = await jobFolder(good)
      mkdirSync(join(folder, 'photos', 'more'))
      writeFileSync(join(folder, 'photos', 'more', 'a.jpg'), await aPhoto({ shade: 9 }))
      const reply = await desk.desk.call('jobs.new-from-folder', { folder })
      expect(reply).toMatchObject({
        error: { code: 'invalid', message: expect.stringContaining('2 files called "a.jpg"') },
      })
    }))

  it.each(['job.json', 'photos'])('a folder without %s is named', (missing) =>
    withDesk(async (desk) => {
      const folder = await jobFolder(good)
      rmSync(join(folder, missing), { recursive: true })
      const reply = await desk.desk.call('jobs.new-from-folder', { folder })
      expect(reply).toMatchObject({ error: { code: 'missing-folder', about: join(folder, missing) } })
    }),
  )
})
