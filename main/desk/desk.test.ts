import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../app/contract/contract.ts'
import type { DeskEvent } from '../../app/contract/events.ts'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { withJob, type TestJob } from '../../tests/library/a-job.ts'
import { photosIn } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()

const square = (atFt: number) => [
  { xFt: atFt, yFt: 0 },
  { xFt: atFt + 10, yFt: 0 },
  { xFt: atFt + 10, yFt: 10 },
  { xFt: atFt, yFt: 10 },
]
const aFacet = (letter: string): CallInput<'facets.save'>['facet'] => ({
  letter,
  outline: square(letter.charCodeAt(0)),
  pitchRise: 5,
  downslopeAzimuthDeg: 180,
})
const aFinding: CallInput<'findings.save'>['finding'] = {
  kind: 'damage',
  component: 'field-tile',
  condition: 'missing',
  observation: 'Three tiles are gone.',
}

/** What people edit: everything but history and log, which grow with every step. */
const records = ({ job, facets, photos, cameras, findings, readings }: JobSnapshot) => ({
  job,
  facets,
  photos,
  cameras,
  findings,
  readings,
})

const open = (job: TestJob) => job.desk.ask('jobs.open', { jobId: job.jobId })

/** A facet that a photo, a finding and a reading belong to. */
async function withTiedFacet(work: (job: TestJob, tied: { facetId: string; before: JobSnapshot }) => Promise<void>) {
  await withJob(scratch, async (job) => {
    const { desk, jobId, card } = job
    await photosIn(card, ['a.jpg', 'b.jpg'])
    await desk.takeIn(jobId, card)
    const [photo] = (await open(job)).photos
    const { id } = await desk.ask('facets.save', { jobId, id: null, facet: aFacet('A') })
    await desk.ask('photos.tag', {
      jobId,
      photoIds: photo === undefined ? [] : [photo.id],
      set: { facetId: id, caption: 'eave' },
    })
    const finding = await desk.ask('findings.save', { jobId, id: null, finding: { ...aFinding, facetId: id } })
    await desk.ask('readings.save', { jobId, id: null, reading: { facetId: id, findingId: finding.id, liftIn: 1.5 } })
    await work(job, { facetId: id, before: await open(job) })
  })
}

describe('every call, in the course of a job', () => {
  it('gives an answer that fits the contract', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId, card } = job
      const { ask } = desk
      expect(await ask('library.info', {})).toMatchObject({
        jobs: 1,
        photos: 0,
        operator: 'Test operator',
        drop: 'upload',
      })
      await ask('library.set-operator', { operator: '  Ida Operator  ' })
      expect((await ask('library.info', {})).operator).toBe('Ida Operator')
      await ask('sheet.save', {
        jobId,
        sheet: { owner: { name: 'Ada Owner' }, loss: { date: '2026-03-10', cause: 'wind' } },
      })
      await ask('frame.save', { jobId, frame: { upAzimuthDeg: 15 } })
      await photosIn(card, ['a.jpg', 'b.jpg'])
      writeFileSync(join(card, 'letter.txt'), 'text')
      await desk.takeIn(jobId, card)
      const { tasks } = await ask('tasks.list', {})
      expect(await ask('tasks.show', { taskId: tasks[0]?.taskId ?? '' })).toMatchObject({ state: 'done', done: 3 })
      await ask('tasks.cancel', { taskId: tasks[0]?.taskId ?? '' })
      const { photos, cameras } = await open(job)
      const facet = await ask('facets.save', { jobId, id: null, facet: aFacet('A') })
      await ask('facets.save', { jobId, id: facet.id, facet: { ...aFacet('A'), name: 'front' } })
      await ask('photos.tag', {
        jobId,
        photoIds: photos.map((photo) => photo.id),
        set: { facetId: facet.id, role: 'close' },
      })
      const [camera] = cameras
      if (camera !== undefined)
        await ask('cameras.set-clock', { jobId, id: camera.id, clock: { correctionMs: 60_000, why: 'Phone clock' } })
      const finding = await ask('findings.save', { jobId, id: null, finding: { ...aFinding, facetId: facet.id } })
      expect(finding.number).toBe(1)
      const reading = await ask('readings.save', { jobId, id: null, reading: { liftIn: 2, facetId: facet.id } })
      expect((await ask('search.find', { text: 'ada' })).hits).toMatchObject([{ kind: 'job', jobId }])
      expect((await ask('search.find', { text: 'three til', jobId })).hits).toMatchObject([
        { kind: 'finding', label: 'F-1' },
      ])
      const [listed] = (await ask('jobs.list', {})).jobs
      expect(listed).toMatchObject({ owner: 'Ada Owner', photos: 2, findings: 1, facets: 1, lacks: expect.any(Number) })
      await ask('readings.remove', { jobId, id: reading.id })
      await ask('findings.remove', { jobId, id: finding.id })
      expect(await ask('history.undo', { jobId })).toEqual({ summary: 'Remove finding F-1' })
      expect(await ask('history.redo', { jobId })).toEqual({ summary: 'Remove finding F-1' })
      expect(await ask('history.redo', { jobId })).toEqual({ summary: null })
      // A number is given once: the next finding is F-2.
      expect(await ask('findings.save', { jobId, id: null, finding: aFinding })).toMatchObject({ number: 2 })
      const { entries, total } = await ask('log.page', { jobId, limit: 5 })
      expect(entries.map((entry) => entry.seq)).toEqual([1, 2, 3, 4, 5])
      expect(await ask('log.verify', { jobId })).toMatchObject({ entries: total, brokenAtSeq: null })
      expect(entries.map((entry) => entry.actor)).toEqual([
        'Test operator',
        ...Array.from({ length: 4 }, () => 'Ida Operator'),
      ])
      expect((await ask('library.verify', {})).differences).toEqual([])
      expect(desk.reports).toEqual([])
    }))
})

describe('removing a facet', () => {
  it('lets go of photos, findings and readings in the same step, and undo brings all of it back', () =>
    withTiedFacet(async (job, { facetId, before }) => {
      const { desk, jobId } = job
      expect(before.photos[0]?.tags.facetId).toBe(facetId)
      await desk.desk.call('facets.remove', { jobId, id: facetId })
      const without = await open(job)
      expect(without.facets).toEqual([])
      expect(without.photos.map((photo) => photo.tags)).toMatchObject([
        { facetId: null, caption: 'eave' },
        { facetId: null },
      ])
      expect(without.findings[0]).toMatchObject({ facetId: null, observation: 'Three tiles are gone.' })
      expect(without.readings[0]).toMatchObject({ facetId: null, liftIn: 1.5 })
      expect(without.history.undo).toBe('Remove facet A')
      await desk.ask('history.undo', { jobId })
      expect(records(await open(job))).toEqual(records(before))
      await desk.ask('history.redo', { jobId })
      expect(records(await open(job))).toEqual(records(without))
      expect(await desk.ask('log.verify', { jobId })).toMatchObject({ brokenAtSeq: null })
    }))

  it('of a finding lets go of its readings, and undo ties them again', () =>
    withTiedFacet(async (job, { before }) => {
      const { desk, jobId } = job
      await desk.desk.call('findings.remove', { jobId, id: before.findings[0]?.id })
      expect((await open(job)).readings[0]?.findingId).toBeNull()
      await desk.ask('history.undo', { jobId })
      expect(records(await open(job))).toEqual(records(before))
    }))

  it('and everything before it can be taken back to the empty job, and done again', () =>
    withTiedFacet(async (job, { before }) => {
      const { desk, jobId } = job
      while ((await desk.ask('history.undo', { jobId })).summary !== null);
      expect(await open(job)).toMatchObject({ facets: [], findings: [], readings: [] })
      while ((await desk.ask('history.redo', { jobId })).summary !== null);
      expect(records(await open(job))).toEqual(records(before))
    }))
})

describe('an edit that cannot stand', () => {
  const refused = async (job: TestJob, name: string, input: object) => {
    const before = await open(job)
    const reply = await job.desk.desk.call(name, { jobId: job.jobId, ...input })
    // Nothing is half done: neither a record nor an entry of the log.
    expect(await open(job)).toEqual(before)
    return reply
  }

  it('names the field: a letter that is taken, an outline that crosses itself, a pitch that is a wall', () =>
    withTiedFacet(async (job) => {
      const bow = [square(0)[0], square(0)[2], square(0)[1], square(0)[3]]
      expect(await refused(job, 'facets.save', { id: null, facet: aFacet('A') })).toMatchObject({
        error: { code: 'conflict', about: 'letter', message: 'Facet A is there already.' },
      })
      expect(await refused(job, 'facets.save', { id: null, facet: { ...aFacet('B'), outline: bow } })).toMatchObject({
        error: { code: 'invalid', about: 'outline' },
      })
      expect(await refused(job, 'facets.save', { id: null, facet: { ...aFacet('B'), pitchRise: 40 } })).toMatchObject({
        error: { code: 'invalid', about: 'facet.pitchRise', message: 'A pitch above 36:12 is not a roof slope.' },
      })
    }))

  it.each([
    ['findings.save', { id: null, finding: { ...aFinding, facetId: 'gone' } }, 'facetId'],
    ['findings.save', { id: null, finding: { ...aFinding, photos: [{ photoId: 'gone', role: 'close' }] } }, 'photos'],
    ['findings.save', { id: 'gone', finding: aFinding }, null],
    ['readings.save', { id: null, reading: { facetId: 'gone' } }, 'facetId'],
    ['readings.save', { id: null, reading: { findingId: 'gone' } }, 'findingId'],
    ['readings.save', { id: null, reading: { photoIds: ['gone'] } }, 'photos'],
    ['readings.save', { id: 'gone', reading: {} }, null],
    ['facets.save', { id: 'gone', facet: aFacet('C') }, null],
    ['facets.remove', { id: 'gone' }, null],
    ['photos.tag', { photoIds: ['gone'], set: { caption: 'x' } }, null],
    ['cameras.set-clock', { id: 'gone', clock: {} }, null],
  ])('%s refuses %j, which points to nothing', (name, input, about) =>
    withTiedFacet(async (job) => {
      expect(await refused(job, name, input)).toMatchObject({ error: { code: 'not-found', about } })
    }),
  )

  it('takes no photo or facet of another job', () =>
    withTiedFacet(async (job, { facetId, before }) => {
      const other = await job.desk.newJob()
      const photoIds = before.photos.map((photo) => photo.id)
      const { call } = job.desk.desk
      expect(await call('photos.tag', { jobId: other, photoIds, set: {} })).toMatchObject({
        error: { code: 'not-found' },
      })
      expect(await call('facets.remove', { jobId: other, id: facetId })).toMatchObject({ error: { code: 'not-found' } })
    }))

  it('that names a photo twice counts it once, and can be taken back', () =>
    withTiedFacet(async (job, { before }) => {
      const { desk, jobId } = job
      const id = before.photos[1]?.id ?? before.photos[0]?.id
      await desk.desk.call('photos.tag', { jobId, photoIds: [id, id], set: { caption: 'twice' } })
      expect((await open(job)).history.undo).toBe('Tag photo P-002')
      await desk.ask('history.undo', { jobId })
      expect(records(await open(job))).toEqual(records(before))
    }))
})

describe('text of any script', () => {
  it.each(['صورة', '🏠👩‍🔧', 'e\u0301', '"; drop table jobs; --', '\u0000', 'half \ud83c of a pair', '\u2028\u2029'])(
    '%j is kept as it is, and the log still follows',
    (text) =>
      withJob(scratch, async ({ desk, jobId }) => {
        await desk.ask('sheet.save', { jobId, sheet: { notes: text, owner: { name: text } } })
        await desk.ask('findings.save', { jobId, id: null, finding: { ...aFinding, observation: text } })
        const { job, findings } = await desk.ask('jobs.open', { jobId })
        expect([job.sheet.notes, job.sheet.owner.name, findings[0]?.observation]).toEqual([text, text, text])
        expect(await desk.ask('log.verify', { jobId })).toMatchObject({ brokenAtSeq: null })
        await desk.ask('history.undo', { jobId })
        await desk.ask('search.find', { text: text.slice(0, 200) })
      }),
  )
})

describe('those who listen', () => {
  it('hear of what changed, and one that fails stops nobody', () =>
    withJob(scratch, async ({ desk, jobId, card }) => {
      const heard: DeskEvent[] = []
      desk.desk.listen(() => {
        throw new Error('the window is gone')
      })
      const stop = desk.desk.listen((event) => heard.push(event))
      await desk.ask('frame.save', { jobId, frame: { upAzimuthDeg: 3 } })
      const { revision } = await desk.ask('jobs.open', { jobId })
      expect(heard).toEqual([{ type: 'job-changed', jobId, revision }, { type: 'jobs-changed' }])
      await photosIn(card, ['a.jpg'])
      expect(await desk.takeIn(jobId, card)).toMatchObject({ state: 'done' })
      expect(heard.at(-1)).toMatchObject({ type: 'task', task: { state: 'done' } })
      expect(desk.reports.join('\n')).toContain('the window is gone')
      stop()
      const count = heard.length
      await desk.ask('frame.save', { jobId, frame: { upAzimuthDeg: 4 } })
      expect(heard).toHaveLength(count)
      // Saving what is there already is no change.
      expect((await desk.ask('jobs.open', { jobId })).history.undo).not.toBeNull()
    }))
})

describe('closing', () => {
  it('stops what runs, keeps what is committed, and may be asked for twice', async () => {
    await withJob(scratch, async ({ desk, jobId, card }) => {
      await photosIn(
        card,
        Array.from({ length: 20 }, (_, i) => `${i}.jpg`),
      )
      const { taskId } = await desk.ask('intake.start', { jobId, from: { kind: 'paths', paths: [card] } })
      await desk.close()
      expect(desk.desk.tasks.show(taskId).state).toBe('cancelled')
      expect(desk.reports).toEqual([])
    })
  })
})
