import { createHash } from 'node:crypto'
import { chmodSync, existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../app/contract/contract.ts'
import { withJob, type TestJob } from '../../tests/library/a-job.ts'
import { aPhoto } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()
const about: CallInput<'plan-images.add'>['about'] = {
  kind: 'rendered',
  label: 'Site model',
  source: 'rendered for this test',
}
const knownLine = { from: { x: 0, y: 0 }, to: { x: 60, y: 0 }, lengthFt: 30 }

const open = ({ desk, jobId }: TestJob) => desk.ask('jobs.open', { jobId })

function addFile({ desk, jobId, card }: TestJob, name: string, bytes: Buffer) {
  writeFileSync(join(card, name), bytes)
  return desk.ask('plan-images.add', { jobId, about, from: { kind: 'paths', paths: [join(card, name)] } })
}

async function firstImage(job: TestJob) {
  const [image] = (await open(job)).planImages
  if (image === undefined) throw new Error('No image lies under the plan.')
  return image
}

describe('an image taken in to be laid under the plan', () => {
  it('is kept byte for byte, hashed and logged, but is no photo', () =>
    withJob(scratch, async (job) => {
      const bytes = await aPhoto()
      const { id } = await addFile(job, 'site.jpg', bytes)
      const { photos, attachments, planImages } = await open(job)
      expect(photos).toEqual([])
      expect(planImages).toMatchObject([{ id, ...about, isShown: true, knownLine: null, widthPx: 64, heightPx: 48 }])
      const [kept] = attachments
      const sha256 = createHash('sha256').update(bytes).digest('hex')
      expect(kept).toMatchObject({
        file: { fileName: 'site.jpg', sha256 },
        typeLabel: 'JPEG picture, supporting picture',
      })
      const [stored = ''] = readdirSync(job.places.attachments)
      expect(readFileSync(join(job.places.attachments, stored)).equals(bytes)).toBe(true)
      const { entries } = await job.desk.ask('log.page', { jobId: job.jobId })
      expect(entries.slice(1).map(({ event }) => event)).toMatchObject([
        { type: 'attachment-taken-in', sha256 },
        { type: 'edited', summary: 'Lay the image "Site model" under the plan' },
      ])
      expect(await job.desk.ask('library.verify', {})).toMatchObject({ filesChecked: 1, differences: [] })
      expect(existsSync(job.places.originals) ? readdirSync(job.places.originals) : []).toEqual([])
    }))

  it.each(['jpeg', 'png', 'tiff', 'webp'] as const)('can be a %s', (format) =>
    withJob(scratch, async (job) => {
      await addFile(
        job,
        `site.${format}`,
        await sharp(await aPhoto())
          .toFormat(format)
          .toBuffer(),
      )
      const { id } = await firstImage(job)
      const served = await job.desk.desk.file({ kind: 'underlay', id })
      expect(served).toMatchObject({ mediaType: 'image/jpeg', saveAs: null })
      expect(await sharp(served?.path).metadata()).toMatchObject({ format: 'jpeg', width: 64, height: 48 })
    }),
  )

  it('is shown upright and at most 4096 px long, and its marks count in pixels of the original', () =>
    withJob(scratch, async (job) => {
      const long = sharp({ create: { width: 5000, height: 20, channels: 3, background: '#808080' } })
      await addFile(job, 'long.jpg', await long.withMetadata({ orientation: 6 }).jpeg().toBuffer())
      const { id, widthPx, heightPx } = await firstImage(job)
      expect([widthPx, heightPx]).toEqual([20, 5000])
      const served = await job.desk.desk.file({ kind: 'underlay', id })
      expect(await sharp(served?.path).metadata()).toMatchObject({ height: 4096 })
    }))

  it('uses the photo where the job has the same bytes as one', () =>
    withJob(scratch, async (job) => {
      const bytes = await aPhoto()
      writeFileSync(join(job.card, 'IMG_1.jpg'), bytes)
      await job.desk.takeIn(job.jobId, job.card)
      await addFile(job, 'copy.jpg', bytes)
      const { photos, attachments } = await open(job)
      expect(attachments).toEqual([])
      const image = await firstImage(job)
      expect(image.file).toEqual({ kind: 'photo', id: photos[0]?.id })
      expect(await job.desk.desk.file({ kind: 'underlay', id: image.id })).not.toBeNull()
    }))

  it('is refused a second time, and taken again after it was taken off', () =>
    withJob(scratch, async (job) => {
      const bytes = await aPhoto()
      const { id } = await addFile(job, 'site.jpg', bytes)
      await expect(addFile(job, 'again.jpg', bytes)).rejects.toThrow(
        'This picture is under the plan already, as "Site model".',
      )
      await job.desk.ask('plan-images.remove', { jobId: job.jobId, id })
      await addFile(job, 'site.jpg', bytes)
      expect((await open(job)).attachments).toHaveLength(1)
    }))
})

describe('what can not be laid under the plan is refused in words, and nothing of it is kept', () => {
  it.each([
    ['letter.pdf', Buffer.from('%PDF-1.4 a letter'), "is not a picture, so it can't be laid under the plan"],
    ['empty.jpg', Buffer.alloc(0), "is not a picture, so it can't be laid under the plan"],
    ['header.jpg', Buffer.from('ffd8ffe000104a46494600010100000100010000', 'hex'), "can't be shown"],
  ])('%s', (name, bytes, words) =>
    withJob(scratch, async (job) => {
      await expect(addFile(job, name, bytes)).rejects.toThrow(words)
      const { attachments, planImages, log } = await open(job)
      expect([attachments, planImages, log.entries]).toEqual([[], [], 1])
      expect(readdirSync(job.places.attachments)).toEqual([])
      expect(readdirSync(job.places.originals)).toEqual([])
    }),
  )

  it('a picture that claims to be 60,000 pixels wide and high', () =>
    withJob(scratch, async (job) => {
      const png = await sharp({ create: { width: 8, height: 8, channels: 3, background: '#fff' } })
        .png()
        .toBuffer()
      png.writeUInt32BE(60_000, 16)
      png.writeUInt32BE(60_000, 20)
      await expect(addFile(job, 'huge.png', png)).rejects.toThrow("can't be shown")
      expect((await open(job)).planImages).toEqual([])
    }))

  it('two files at once, and a file that is not there', () =>
    withJob(scratch, async ({ desk, jobId, card }) => {
      for (const [shade, name] of ['a.jpg', 'b.jpg'].entries()) writeFileSync(join(card, name), await aPhoto({ shade }))
      const add = (path: string) =>
        desk.ask('plan-images.add', { jobId, about, from: { kind: 'paths', paths: [path] } })
      await expect(add(card)).rejects.toThrow('Choose one picture at a time.')
      await expect(add(join(card, 'gone.jpg'))).rejects.toThrow('is not there')
    }))
})

describe('laying an image', () => {
  it('refuses a length of nothing and two marks on one place, and the image stays as it was', () =>
    withJob(scratch, async (job) => {
      const { id } = await addFile(job, 'site.jpg', await aPhoto())
      const before = await firstImage(job)
      const scale = (line: typeof knownLine) =>
        job.desk.ask('plan-images.save', { jobId: job.jobId, id, set: { knownLine: line } })
      await expect(scale({ ...knownLine, lengthFt: 0 })).rejects.toThrow('has to be above zero')
      await expect(scale({ ...knownLine, to: knownLine.from })).rejects.toThrow('The two marks are too close together.')
      expect(await firstImage(job)).toEqual(before)
    }))

  it('is one step of undo for each thing that is set, named in the log', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const { id } = await addFile(job, 'site.jpg', await aPhoto())
      const before = await firstImage(job)
      await desk.ask('plan-images.save', { jobId, id, set: { knownLine } })
      await desk.ask('plan-images.save', { jobId, id, set: { imageUpAzimuthDeg: 12.5 } })
      await desk.ask('plan-images.save', {
        jobId,
        id,
        set: { held: { image: { x: 1, y: 2 }, plan: { xFt: 3, yFt: 4 } } },
      })
      expect(await firstImage(job)).toMatchObject({ knownLine, imageUpAzimuthDeg: 12.5, held: { plan: { xFt: 3 } } })
      const undone = []
      for (let times = 0; times < 4; times += 1) undone.push((await desk.ask('history.undo', { jobId })).summary)
      expect(undone).toEqual([
        'Move the image "Site model"',
        'Turn the image "Site model"',
        'Scale the image "Site model"',
        'Lay the image "Site model" under the plan',
      ])
      expect((await open(job)).planImages).toEqual([])
      expect((await open(job)).attachments).toHaveLength(1)
      await desk.ask('history.redo', { jobId })
      expect(await firstImage(job)).toEqual(before)
      expect(await desk.ask('log.verify', { jobId })).toMatchObject({ brokenAtSeq: null })
    }))

  it('shows one image at a time', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const one = await addFile(job, 'one.jpg', await aPhoto({ shade: 1 }))
      const two = await addFile(job, 'two.jpg', await aPhoto({ shade: 2 }))
      const shown = async () => (await open(job)).planImages.filter(({ isShown }) => isShown).map(({ id }) => id)
      expect(await shown()).toEqual([two.id])
      await desk.ask('plan-images.save', { jobId, id: one.id, set: { isShown: true } })
      expect(await shown()).toEqual([one.id])
      await desk.ask('history.undo', { jobId })
      expect(await shown()).toEqual([two.id])
    }))

  it('stays under what was drawn over it when the sheet is turned', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const { id } = await addFile(job, 'site.jpg', await aPhoto())
      await desk.ask('plan-images.save', { jobId, id, set: { imageUpAzimuthDeg: 350 } })
      await desk.ask('frame.save', { jobId, frame: { upAzimuthDeg: 30 } })
      expect(await firstImage(job)).toMatchObject({ imageUpAzimuthDeg: 20 })
      await desk.ask('history.undo', { jobId })
      expect(await firstImage(job)).toMatchObject({ imageUpAzimuthDeg: 350 })
    }))
})

describe('an image whose file is gone from the disk', () => {
  it('is not served any more, is reported by the check, and the plan stays', () =>
    withJob(scratch, async (job) => {
      const { id } = await addFile(job, 'site.jpg', await aPhoto())
      const [stored = ''] = readdirSync(job.places.attachments)
      chmodSync(join(job.places.attachments, stored), 0o644)
      rmSync(join(job.places.attachments, stored))
      expect(await job.desk.desk.file({ kind: 'underlay', id })).toBeNull()
      expect((await open(job)).planImages).toHaveLength(1)
      const { differences } = await job.desk.ask('library.verify', {})
      expect(differences).toMatchObject([{ what: 'site.jpg', problem: 'The file is missing or cannot be read.' }])
    }))
})

describe('the mark of the front door', () => {
  it('is a part of the sheet that the plan sets by itself, one step of undo each time', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const door = async () => (await open(job)).job.sheet.property.doorAt
      await desk.ask('sheet.save', { jobId, sheet: { owner: { name: 'Ada' } } })
      await desk.ask('sheet.mark-door', { jobId, doorAt: { xFt: 1, yFt: -2 } })
      await desk.ask('sheet.mark-door', { jobId, doorAt: { xFt: 3, yFt: -2 } })
      await desk.ask('sheet.mark-door', { jobId, doorAt: null })
      expect(await door()).toBeNull()
      const undone = []
      for (let times = 0; times < 3; times += 1) undone.push((await desk.ask('history.undo', { jobId })).summary)
      expect(undone).toEqual([
        "Take the front door's mark off the plan",
        'Move the front door on the plan',
        'Mark the front door on the plan',
      ])
      expect((await open(job)).job.sheet.owner.name).toBe('Ada')
    }))
})
