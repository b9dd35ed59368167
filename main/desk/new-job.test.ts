import { describe, expect, it } from 'vitest'
import { withJob } from '../../tests/library/a-job.ts'
import { photosIn } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()

describe('a job number', () => {
  it('is the next free one of the year when none is given', () =>
    withJob(scratch, async ({ desk }) => {
      const numbers = (await desk.ask('jobs.list', {})).jobs.map((job) => job.number)
      expect(numbers).toEqual(['2026-0001'])
      expect((await desk.ask('jobs.new', {})).number).toBe('2026-0002')
      await desk.newJob('2026-0003')
      expect((await desk.ask('jobs.new', {})).number).toBe('2026-0004')
    }))

  it.each(['Roof-7', 'ROOF-7', 'roof-7', '  roof-7  '])('%j is in use once Roof-7 is', (number) =>
    withJob(scratch, async ({ desk }) => {
      await desk.newJob('Roof-7')
      expect(await desk.desk.call('jobs.new', { number })).toMatchObject({
        error: { code: 'conflict', about: 'number' },
      })
      expect((await desk.ask('jobs.list', {})).jobs).toHaveLength(2)
    }),
  )

  it.each(['', '   ', '../x', 'a/b', '.hidden', 'x'.repeat(41), 'a\nb'])('%j is refused', (number) =>
    withJob(scratch, async ({ desk }) => {
      expect(await desk.desk.call('jobs.new', { number })).toMatchObject({
        error: { code: 'invalid', about: 'number' },
      })
    }),
  )

  it.each(['CON', 'nul', 'A.', 'عمل-٧', '仕事 1'])('%j gets a folder that every system takes', (number) =>
    withJob(scratch, async ({ desk, card }) => {
      const jobId = await desk.newJob(number)
      await photosIn(card, ['a.jpg'])
      expect((await desk.takeIn(jobId, card)).intake).toMatchObject({ photosAdded: 1 })
      expect((await desk.ask('library.verify', {})).differences).toEqual([])
    }),
  )
})
