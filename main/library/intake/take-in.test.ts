import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { countedNames, takeInDirectly, waiting, withJob } from '../../../tests/library/a-job.ts'
import { aPhoto, photosIn } from '../../../tests/library/a-photo.ts'
import { useScratch } from '../../../tests/library/scratch.ts'
import { findAttachment } from '../../store/records/attachments.ts'
import { findPhoto } from '../../store/records/photos.ts'
import { verifyLibrary } from '../verify-library.ts'

const scratch = useScratch()

describe('taking photos in', () => {
  it('numbers them in the order of the files, whatever takes longest', () =>
    withJob(scratch, async ({ desk, jobId, card }) => {
      const names = countedNames(23)
      await photosIn(card, names)
      // The first one is by far the largest.
      const large = await aPhoto({ shade: 999 })
      writeFileSync(join(card, 'IMG_1.jpg'), Buffer.concat([large, Buffer.alloc(8_000_000)]))
      const task = await desk.takeIn(jobId, card)
      expect(task).toMatchObject({ state: 'done', done: 23, total: 23, intake: { photosAdded: 23, failed: [] } })
      const { photos } = await desk.ask('jobs.open', { jobId })
      expect(photos.map((photo) => photo.file.fileName)).toEqual(names)
      expect(photos.map((photo) => photo.number)).toEqual(names.map((_, i) => i + 1))
    }))

  it('keeps them byte for byte, read-only, under their hash and name, with previews beside', () =>
    withJob(scratch, async ({ desk, jobId, card, places }) => {
      const names = ['plain.jpg', 'it\'s 12".jpg', 'صورة.jpg', '屋根.jpg', '🏠.jpg', `${'n'.repeat(240)}.jpg`]
      const written = await photosIn(card, names)
      await desk.takeIn(jobId, card)
      const { photos } = await desk.ask('jobs.open', { jobId })
      expect(photos.map((photo) => photo.file.fileName).toSorted()).toEqual(names.toSorted())
      for (const photo of photos) {
        const { storedName } = findPhoto(desk.library.db, photo.id) ?? { storedName: '' }
        const path = join(places.originals, storedName)
        expect(readFileSync(path).equals(written.get(photo.file.fileName) ?? Buffer.alloc(0))).toBe(true)
        expect(storedName.startsWith(photo.file.sha256.slice(0, 12))).toBe(true)
        expect(statSync(path).mode & 0o222).toBe(0)
        expect(photo.preview).toBe('ready')
      }
      expect(readdirSync(places.originals)).toHaveLength(names.length)
      expect(readdirSync(places.derived)).toHaveLength(names.length * 2)
    }))

  it('never changes what it takes from', () =>
    withJob(scratch, async ({ desk, jobId, card }) => {
      const written = await photosIn(card, countedNames(3))
      await desk.takeIn(jobId, card)
      expect(readdirSync(card)).toHaveLength(3)
      for (const [name, bytes] of written) expect(readFileSync(join(card, name)).equals(bytes)).toBe(true)
    }))

  it('adds only what is new when it is run again', () =>
    withJob(scratch, async ({ desk, jobId, card }) => {
      await photosIn(card, countedNames(4))
      await desk.takeIn(jobId, card)
      writeFileSync(join(card, 'IMG_0.jpg'), await aPhoto({ shade: 500 }))
      const again = await desk.takeIn(jobId, card)
      expect(again.intake).toMatchObject({ photosAdded: 1, failed: [] })
      expect(again.intake?.doubles).toEqual([1, 2, 3, 4].map((n) => ({ fileName: `IMG_${n}.jpg`, sameAs: `P-00${n}` })))
      const { photos, log } = await desk.ask('jobs.open', { jobId })
      expect(photos.map((photo) => photo.file.fileName)).toEqual([
        'IMG_1.jpg',
        'IMG_2.jpg',
        'IMG_3.jpg',
        'IMG_4.jpg',
        'IMG_0.jpg',
      ])
      // Handing over the very same files is no event: the job's opening and five photos.
      expect(log.entries).toBe(6)
    }))

  it('takes the same bytes once and says which photo has them; another name for them is logged once', () =>
    withJob(scratch, async ({ desk, jobId, card, places }) => {
      const bytes = await aPhoto({ shade: 1 })
      for (const name of ['a.jpg', 'b.jpg', 'c.jpg']) writeFileSync(join(card, name), bytes)
      const first = await desk.takeIn(jobId, card)
      expect(first.intake).toMatchObject({
        photosAdded: 1,
        failed: [],
        doubles: [
          { fileName: 'b.jpg', sameAs: 'P-001' },
          { fileName: 'c.jpg', sameAs: 'P-001' },
        ],
      })
      await desk.takeIn(jobId, card)
      const { entries } = await desk.ask('log.page', { jobId })
      expect(entries.map((entry) => entry.event.type)).toEqual([
        'job-opened',
        'photo-taken-in',
        'double-seen',
        'double-seen',
      ])
      expect(readdirSync(places.originals)).toHaveLength(1)
    }))

  it('takes the first of the same bytes in the order of the files, also when a later copy is read sooner', () =>
    withJob(scratch, async (job) => {
      const { card } = job
      // Many rounds: which of two readings at the same time ends first is up to the machine.
      for (let round = 0; round < 12; round++) {
        const bytes = await aPhoto({ shade: 100 + round })
        const names = [`r${round}-a.jpg`, `r${round}-b.jpg`, `r${round}-c.jpg`]
        for (const name of names) writeFileSync(join(card, name), bytes)
        const outcomes = await takeInDirectly(job, { files: waiting(card, ...names) })
        expect(outcomes).toMatchObject([{ kind: 'photo', fileName: names[0] }, { kind: 'double' }, { kind: 'double' }])
      }
    }))

  it('keeps what is no picture among the attachments, with the reason, and drops nothing', () =>
    withJob(scratch, async ({ desk, jobId, card, places }) => {
      writeFileSync(join(card, 'permit.pdf'), '%PDF-1.4\n%%EOF\n')
      writeFileSync(join(card, 'notes.txt'), 'ridge, third tile')
      writeFileSync(join(card, 'empty.jpg'), '')
      writeFileSync(join(card, 'z.jpg'), await aPhoto())
      const task = await desk.takeIn(jobId, card)
      expect(task.intake).toMatchObject({ photosAdded: 1, attachmentsAdded: 3, failed: [] })
      expect(task.intake?.attached.map((note) => note.fileName)).toEqual(['empty.jpg', 'notes.txt', 'permit.pdf'])
      for (const { reason } of task.intake?.attached ?? []) expect(reason).toMatch(/\w+/)
      const { attachments } = await desk.ask('jobs.open', { jobId })
      for (const attachment of attachments) {
        const kept = findAttachment(desk.library.db, attachment.id)
        const path = join(places.attachments, kept?.storedName ?? '')
        expect(readFileSync(path).equals(readFileSync(join(card, attachment.file.fileName)))).toBe(true)
      }
      const again = await desk.takeIn(jobId, card)
      expect(again.intake?.doubles).toContainEqual({ fileName: 'permit.pdf', sameAs: 'permit.pdf' })
    }))

  it('takes a file of 40 MB whole', () =>
    withJob(scratch, async ({ desk, jobId, card }) => {
      const path = join(card, 'large.jpg')
      writeFileSync(path, await aPhoto())
      truncateSync(path, 40 * 1024 * 1024)
      const task = await desk.takeIn(jobId, card)
      expect(task.intake).toMatchObject({ photosAdded: 1, failed: [] })
      expect((await desk.ask('jobs.open', { jobId })).photos[0]?.file.bytes).toBe(40 * 1024 * 1024)
      expect(await verifyLibrary(desk.library)).toMatchObject({ filesChecked: 1, differences: [] })
    }))
})

describe('when something goes wrong with one file', () => {
  it('a photo that vanishes on the way fails with its reason, and the rest goes on', () =>
    withJob(scratch, async (job) => {
      const { card } = job
      const names = countedNames(8)
      await photosIn(card, names)
      const outcomes = await takeInDirectly(job, {
        files: waiting(card, ...names),
        onOutcome: (outcome) => outcome.fileName === 'IMG_1.jpg' && rmSync(join(card, 'IMG_8.jpg'), { force: true }),
      })
      expect(outcomes.map((outcome) => outcome.kind)).toEqual([...names.slice(1).map(() => 'photo'), 'failed'])
      expect(outcomes.at(-1)).toMatchObject({
        fileName: 'IMG_8.jpg',
        reason: expect.stringContaining('"IMG_8.jpg" is not there'),
      })
    }))

  it('a file that cannot be read fails with its reason, and the rest goes on', () =>
    withJob(scratch, async (job) => {
      const { card } = job
      await photosIn(card, ['a.jpg', 'c.jpg'])
      // A folder where a file was: reading it fails for everybody, root included.
      mkdirSync(join(card, 'b.jpg'))
      const outcomes = await takeInDirectly(job, { files: waiting(card, 'a.jpg', 'b.jpg', 'c.jpg') })
      expect(outcomes).toMatchObject([
        { kind: 'photo' },
        { kind: 'failed', reason: expect.stringContaining(`"b.jpg" can't be read`) },
        { kind: 'photo' },
      ])
    }))

  it('what nobody foresaw fails that file alone and is noted', () =>
    withJob(scratch, async (job) => {
      const { card } = job
      await photosIn(card, ['a.jpg', 'b.jpg'])
      const noted: unknown[] = []
      const odd = {
        fileName: 'odd.jpg',
        get path(): string {
          throw new RangeError('what nobody foresaw')
        },
      }
      const files = [...waiting(card, 'a.jpg'), odd, ...waiting(card, 'b.jpg')]
      const outcomes = await takeInDirectly(job, { files, onUnforeseen: (cause) => noted.push(cause) })
      expect(outcomes.map((outcome) => outcome.kind)).toEqual(['photo', 'failed', 'photo'])
      expect(noted).toEqual([new RangeError('what nobody foresaw')])
    }))
})
