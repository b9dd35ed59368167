import { copyFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { openTestDesk } from '../../tests/library/a-desk.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { inTransaction, run } from '../store/database.ts'
import { listLooks } from '../store/records/picture-looks.ts'

const scratch = useScratch()
const SAMPLE = 'sample-jobs/heron-spit/photos/'

/** A card with two tries at the same picture, the second out of focus, the first written again smaller, and another. */
async function card(): Promise<string> {
  const folder = scratch('card')
  for (const name of ['OSTK3410.jpg', 'OSTK3411.jpg', 'OSTK3412.jpg']) copyFileSync(SAMPLE + name, join(folder, name))
  const again = await sharp(`${SAMPLE}OSTK3410.jpg`).resize(900).keepMetadata().jpeg({ quality: 60 }).toBuffer()
  writeFileSync(join(folder, 'OSTK3410-small.jpg'), again)
  return folder
}

describe('near-doubles of a job', () => {
  it('are found on arrival, the sharpest proposed, and are left out only when a person says so', async () => {
    const desk = openTestDesk(scratch('library'))
    try {
      const jobId = await desk.newJob('N-1')
      await desk.takeIn(jobId, await card())
      const { photos } = await desk.ask('jobs.open', { jobId })
      const nameOf = (id: string) => photos.find((photo) => photo.id === id)?.file.fileName
      const found = await desk.ask('near-doubles.find', { jobId })
      expect(found.waiting).toBe(0)
      expect(found.groups).toHaveLength(1)
      const [group] = found.groups
      expect(new Set(group?.photos.map(({ photoId }) => nameOf(photoId)))).toEqual(
        new Set(['OSTK3410-small.jpg', 'OSTK3410.jpg', 'OSTK3411.jpg']),
      )
      expect(nameOf(group?.best ?? '')).toMatch(/^OSTK3410/)
      expect(photos.every(({ tags }) => tags.leftOutBecause === null)).toBe(true)
      const others = group?.photos.flatMap(({ photoId }) => (photoId === group.best ? [] : photoId)) ?? []
      await desk.ask('photos.tag', { jobId, photoIds: others, set: { leftOutBecause: 'near-double of P-001' } })
      expect((await desk.ask('near-doubles.find', { jobId })).groups).toEqual([])
      // One step of undo brings all of them back.
      await desk.ask('history.undo', { jobId })
      expect((await desk.ask('near-doubles.find', { jobId })).groups).toHaveLength(1)
    } finally {
      await desk.close()
    }
  })

  it('are found among photos that an older program took in: they are looked at when asked for', async () => {
    const desk = openTestDesk(scratch('library'))
    try {
      const jobId = await desk.newJob('N-2')
      await desk.takeIn(jobId, await card())
      const { db } = desk.library
      const onArrival = new Map(listLooks(db, jobId))
      expect(onArrival.size).toBe(4)
      inTransaction(db, (write) => run(write, 'update photos set look = null', {}))
      const found = await desk.ask('near-doubles.find', { jobId })
      expect(found.groups).toHaveLength(1)
      // From the preview the same is seen as from the picture, but for what its JPEG changed.
      for (const [id, look] of listLooks(db, jobId))
        expect(Math.abs(look.sharpness / (onArrival.get(id)?.sharpness ?? NaN) - 1)).toBeLessThan(0.1)
    } finally {
      await desk.close()
    }
  })
})
