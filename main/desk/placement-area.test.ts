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
      expect(await desk.ask('placement.suggest', { jobId })).toEqual({ suggestions: [], asked: [], frames: [] })
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

  it('listen to a narration once its recording is on the clock, and follow the plan that its words are read against', async () => {
    await withJob(scratch, async ({ desk, jobId, card }) => {
      mkdirSync(card, { recursive: true })
      writeFileSync(join(card, 'a.jpg'), await aPhoto({ offset: '-04:00' }))
      writeFileSync(join(card, 'walk.vtt'), 'WEBVTT\n\n00:10.000 --> 00:14.000\nNow I am on the north slope.\n')
      await desk.takeIn(jobId, card)
      const facet = { letter: 'A', outline: square(0), pitchRise: 5, downslopeAzimuthDeg: 180 }
      const north = { ...facet, letter: 'B', outline: square(30), downslopeAzimuthDeg: 0 }
      const { id: first } = await desk.ask('facets.save', { jobId, id: null, facet })
      const { id: second } = await desk.ask('facets.save', { jobId, id: null, facet: north })
      const [photo] = (await desk.ask('jobs.open', { jobId })).photos
      const takenMs = photo?.time.instantMs ?? null
      const [attachment] = (await desk.ask('jobs.open', { jobId })).attachments
      if (takenMs === null || attachment === undefined) throw new Error('A photo with a time, and subtitles.')
      const oddsOf = async (place: string) =>
        (await desk.ask('placement.suggest', { jobId })).suggestions[0]?.ranking.find((one) => one.place === place)
          ?.probability ?? 0
      const unheard = await oddsOf(second)
      const { id } = await desk.ask('narrations.import', { jobId, attachmentId: attachment.id })
      expect(await oddsOf(second)).toBe(unheard)
      await desk.ask('narrations.align', { jobId, id, start: { kind: 'clock', cue: 0, instantMs: takenMs - 2000 } })
      expect(unheard).toBeLessThan(0.6)
      expect(await oddsOf(second)).toBeGreaterThan(0.8)
      await desk.ask('facets.save', { jobId, id: second, facet: { ...north, downslopeAzimuthDeg: 180 } })
      await desk.ask('facets.save', { jobId, id: first, facet: { ...facet, downslopeAzimuthDeg: 0 } })
      expect(await oddsOf(first)).toBeGreaterThan(0.8)
    })
  })

  it('are never tagged below even odds', async () => {
    await withJob(scratch, async ({ desk, jobId }) => {
      const reply = await desk.desk.call('placement.accept', { jobId, leastProbability: 0.2 })
      expect(reply).toMatchObject({ ok: false, error: { code: 'invalid' } })
    })
  })
})
