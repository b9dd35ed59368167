import { createHash } from 'node:crypto'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { open } from 'yauzl'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import type { JobId, PhotoId } from '../../app/job/ids.ts'
import { openTestDesk, type TestDesk } from '../../tests/library/a-desk.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { verifyBundle } from '../publish/verify-bundle.ts'

const scratch = useScratch()

const at = (xPx: number, yPx: number) => ({ xPx, yPx })
const words = { kind: 'text', id: 't', at: at(40, 60), text: 'Nailhole elongated' } as const
const face = { kind: 'obscured', id: 'o', corner: at(100, 80), widthPx: 60, heightPx: 60, what: 'face' } as const

async function withPhoto(work: (desk: TestDesk, jobId: JobId, photoId: PhotoId) => Promise<void>): Promise<void> {
  const desk = openTestDesk(scratch('library'))
  try {
    const card = scratch('card')
    for (const [shade, name] of ['a.jpg', 'b.jpg'].entries()) {
      const picture = sharp({
        create: { width: 400, height: 300, channels: 3, background: { r: 90, g: shade, b: 60 } },
      })
      writeFileSync(join(card, name), await picture.jpeg().toBuffer())
    }
    const jobId = await desk.newJob('M-1')
    await desk.takeIn(jobId, card)
    const { photos } = await desk.ask('jobs.open', { jobId })
    const [photo] = photos
    if (photo === undefined) return expect.fail('photos are taken in')
    await work(desk, jobId, photo.id)
  } finally {
    await desk.close()
  }
}

/** Issues the packet, every problem overruled, and answers the bundle's path. */
async function issued(desk: TestDesk, jobId: JobId, obscuredOriginals: 'keep-back' | 'include'): Promise<string> {
  const { problems } = await desk.ask('packet.problems', { jobId })
  const overrules = problems.map(({ id }) => ({ problemId: id, reason: 'test' }))
  const { taskId } = await desk.ask('packet.issue', { jobId, options: { obscuredOriginals }, overrules })
  const task = await desk.desk.tasks.ended(taskId)
  expect(task.state).toBe('done')
  const [packet] = (await desk.ask('packet.list', { jobId })).packets.toSorted((a, b) => b.revision - a.revision)
  const bundle = await desk.desk.file({ kind: 'bundle', id: packet?.id ?? '' })
  return bundle?.path ?? expect.fail('there is a bundle')
}

function namesIn(path: string): Promise<string[]> {
  return new Promise((resolve, reject) => {
    open(path, (cause, zip) => {
      if (zip === undefined) return reject(cause ?? new Error('no zip'))
      const names: string[] = []
      zip.on('entry', (entry: { fileName: string }) => names.push(entry.fileName))
      zip.on('end', () => resolve(names))
    })
  })
}

describe('marks of a photo', () => {
  it('are one edit: in the log by digest, undone and done again', () =>
    withPhoto(async ({ ask }, jobId, photoId) => {
      await ask('marks.save', { jobId, photoId, marks: [words] })
      const after = await ask('jobs.open', { jobId })
      expect(after.markups).toMatchObject([{ photoId, marks: [{ text: 'Nailhole elongated', colour: 'vermilion' }] }])
      expect(after.history.undo).toBe('Add text on photo P-001')
      const { entries } = await ask('log.page', { jobId, afterSeq: after.log.entries - 1, limit: 1 })
      expect(entries[0]?.event).toMatchObject({
        type: 'edited',
        changes: [{ record: 'markup', id: photoId, before: null, after: expect.stringMatching(/^[0-9a-f]{64}$/) }],
      })
      await ask('history.undo', { jobId })
      expect((await ask('jobs.open', { jobId })).markups).toEqual([])
      await ask('history.redo', { jobId })
      expect((await ask('jobs.open', { jobId })).markups).toEqual(after.markups)
    }))

  it('leave the original as it came', () =>
    withPhoto(async ({ ask, desk }, jobId, photoId) => {
      const { photos } = await ask('jobs.open', { jobId })
      await ask('marks.save', { jobId, photoId, marks: [face] })
      const original = await desk.file({ kind: 'original', id: photoId })
      const sha256 = createHash('sha256')
        .update(readFileSync(original?.path ?? ''))
        .digest('hex')
      expect(sha256).toBe(photos[0]?.file.sha256)
    }))

  it('are found by the words written over a photo, as long as they are there', () =>
    withPhoto(async ({ ask }, jobId, photoId) => {
      await ask('marks.save', { jobId, photoId, marks: [words] })
      const found = async () =>
        (await ask('search.find', { text: 'elongated', jobId, limit: 5 })).hits.map(({ id }) => id)
      expect(await found()).toEqual([photoId])
      await ask('marks.save', { jobId, photoId, marks: [] })
      expect(await found()).toEqual([])
    }))

  it('are refused beside their picture and on a photo of another job', () =>
    withPhoto(async ({ ask, newJob }, jobId, photoId) => {
      const far = { ...words, at: at(401, 60) }
      await expect(ask('marks.save', { jobId, photoId, marks: [far] })).rejects.toThrow('outside its picture')
      const other = await newJob('M-2')
      await expect(ask('marks.save', { jobId: other, photoId, marks: [words] })).rejects.toThrow('not in the job')
    }))
})

describe('the evidence bundle of marked photos', () => {
  it('keeps the original of an obscured photo back, lists its hash, and verifies', () =>
    withPhoto(async (desk, jobId, photoId) => {
      await desk.ask('marks.save', { jobId, photoId, marks: [words, face] })
      const bundle = await issued(desk, jobId, 'keep-back')
      const names = await namesIn(bundle)
      expect(names.filter((name) => name.startsWith('originals/'))).toHaveLength(1)
      expect(names).toEqual(expect.arrayContaining(['marked/P-001.jpg', 'kept-back.txt']))
      expect(names).not.toContain('marked/P-002.jpg')
      expect((await verifyBundle(bundle)).problems).toEqual([])
    }))

  it('holds every original where the office chose so', () =>
    withPhoto(async (desk, jobId, photoId) => {
      await desk.ask('marks.save', { jobId, photoId, marks: [face] })
      const names = await namesIn(await issued(desk, jobId, 'include'))
      expect(names.filter((name) => name.startsWith('originals/'))).toHaveLength(2)
      expect(names).not.toContain('kept-back.txt')
    }))
})
