import { mkdirSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { withJob } from '../../tests/library/a-job.ts'
import { aPhoto, photosIn } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()
const square = (atFt: number) => [
  { xFt: atFt, yFt: 0 },
  { xFt: atFt + 30, yFt: 0 },
  { xFt: atFt + 30, yFt: 30 },
  { xFt: atFt, yFt: 30 },
]

describe('photos that find their facet', () => {
  it('are suggested nothing without a facet', async () => {
    await withJob(scratch, async ({ desk, jobId, card }) => {
      await photosIn(card, ['a.jpg'])
      await desk.takeIn(jobId, card)
      expect(await desk.ask('placement.suggest', { jobId })).toEqual({ suggestions: [], frames: [] })
      expect(await desk.ask('placement.accept', { jobId, leastProbability: 0.5 })).toEqual({ tagged: 0 })
    })
  })

  it('are tagged by one step and one log entry, which one undo takes back; left-out photos and sure tags stay', async () => {
    await withJob(scratch, async ({ desk, jobId, card }) => {
      mkdirSync(card, { recursive: true })
      for (const shade of [1, 2, 3, 4])
        writeFileSync(join(card, `${shade}.jpg`), await aPhoto({ shade, offset: '-04:00' }))
      await desk.takeIn(jobId, card)
      const facet = { letter: 'A', outline: square(0), pitchRise: 5, downslopeAzimuthDeg: 180 }
      const { id } = await desk.ask('facets.save', { jobId, id: null, facet })
      await desk.ask('facets.save', { jobId, id: null, facet: { ...facet, letter: 'B', outline: square(30) } })
      const [one, two, three, four] = (await desk.ask('jobs.open', { jobId })).photos.map((photo) => photo.id)
      if (one === undefined || two === undefined || three === undefined || four === undefined)
        throw new Error('4 photos')
      await desk.ask('photos.tag', { jobId, photoIds: [one], set: { facetId: id } })
      await desk.ask('photos.tag', { jobId, photoIds: [four], set: { leftOutBecause: 'blurred' } })
      const before = await desk.ask('jobs.open', { jobId })
      const { suggestions } = await desk.ask('placement.suggest', { jobId })
      expect(suggestions.map(({ photoId }) => photoId).toSorted()).toEqual([two, three].toSorted())
      // All were taken in the same second as the one that somebody tagged.
      expect(suggestions.map(({ ranking }) => ranking[0]?.place)).toEqual([id, id])
      expect(await desk.ask('placement.accept', { jobId, leastProbability: 0.5 })).toEqual({ tagged: 2 })
      const after = await desk.ask('jobs.open', { jobId })
      expect(after.photos.map(({ tags }) => tags.facetId)).toEqual([id, id, id, null])
      expect(after.log.entries).toBe(before.log.entries + 1)
      expect(after.history.undo).toBe('Take over the suggested facets of 2 photos, 50 % or surer')
      await desk.ask('history.undo', { jobId })
      expect((await desk.ask('jobs.open', { jobId })).photos).toEqual(before.photos)
    })
  })

  it('are never tagged below even odds', async () => {
    await withJob(scratch, async ({ desk, jobId }) => {
      const reply = await desk.desk.call('placement.accept', { jobId, leastProbability: 0.2 })
      expect(reply).toMatchObject({ ok: false, error: { code: 'invalid' } })
    })
  })
})
