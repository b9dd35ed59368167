import { describe, expect, it } from 'vitest'
import { withJob } from '../../tests/library/a-job.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()
const facet = {
  letter: 'A',
  outline: [
    { xFt: 0, yFt: 0 },
    { xFt: 10, yFt: 0 },
    { xFt: 10, yFt: 10 },
  ],
  pitchRise: 5,
  downslopeAzimuthDeg: 180,
}

describe('field tests at the desk', () => {
  it('take many readings in one step, numbered in order, and one undo takes them all back', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const { ids } = await desk.ask('readings.add', { jobId, readings: [{ liftIn: 1 }, { liftIn: 2, forceLbf: 30 }] })
      expect(ids).toHaveLength(2)
      const { readings, history } = await desk.ask('jobs.open', { jobId })
      expect(readings.map(({ number, liftIn }) => [number, liftIn])).toEqual([
        [1, 1],
        [2, 2],
      ])
      expect(history.undo).toBe('Add 2 readings')
      await desk.ask('history.undo', { jobId })
      expect((await desk.ask('jobs.open', { jobId })).readings).toEqual([])
    }))

  it('change a part of the survey and leave the others, undoably', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const checks = [{ id: 'c1', area: 'edge' as const, checked: 20, loose: 1, tested: 0 }]
      await desk.ask('survey.save', { jobId, set: { checks } })
      await desk.ask('survey.save', { jobId, set: { listedResistanceLbf: 50 } })
      const { survey, history } = await desk.ask('jobs.open', { jobId })
      expect(survey).toMatchObject({ checks, listedResistanceLbf: 50, criterionKey: 'hand-lift' })
      expect(history.undo).toBe('Change the listed resistance of the field tests')
      await desk.ask('history.undo', { jobId })
      await desk.ask('history.undo', { jobId })
      expect((await desk.ask('jobs.open', { jobId })).survey.checks).toEqual([])
    }))

  it('refuse counts that do not fit together', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const reply = await desk.desk.call('survey.save', {
        jobId,
        set: { checks: [{ id: 'c1', checked: 2, loose: 3 }] },
      })
      expect(reply).toMatchObject({
        ok: false,
        error: { code: 'invalid', message: expect.stringContaining('3 loose of 2 checked') },
      })
    }))

  it('let go of a facet that is removed, and take it back with undo', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const { id } = await desk.ask('facets.save', { jobId, id: null, facet })
      const checks = [
        { id: 'c1', facetId: id, checked: 20, loose: 1 },
        { id: 'c2', facetId: id, checked: 5, loose: 0 },
      ]
      await desk.ask('survey.save', { jobId, set: { checks } })
      await desk.ask('facets.remove', { jobId, id })
      const facetIds = async () => (await desk.ask('jobs.open', { jobId })).survey.checks.map((check) => check.facetId)
      expect(await facetIds()).toEqual([null, null])
      await desk.ask('history.undo', { jobId })
      expect(await facetIds()).toEqual([id, id])
    }))
})

describe('a file of readings at the desk', () => {
  it('is read with a byte order mark, semicolons and decimal commas', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      await desk.ask('facets.save', { jobId, id: null, facet })
      const text = '\uFEFFfacet;lift in;force lbf;note\r\nA;2,25;24,5;"held; then rose"\r\nA;-1;10;\r\n'
      const { rows } = await desk.ask('field-files.read-csv', { jobId, text })
      expect(rows.map(({ line, needs }) => [line, needs])).toEqual([
        [2, 'nothing'],
        [3, 'mending'],
      ])
      expect(rows[0]?.reading).toMatchObject({ liftIn: 2.25, forceLbf: 24.5, note: 'held; then rose' })
      expect((await desk.ask('jobs.open', { jobId })).readings).toEqual([])
    }))

  it('is read with commas, quoted cells and rows of uneven length', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const text = 'lift,force,note\n"2,5",20,"a, b"\n1\n'
      const { rows } = await desk.ask('field-files.read-csv', { jobId, text })
      expect(rows.map(({ reading }) => [reading?.liftIn, reading?.forceLbf, reading?.note])).toEqual([
        [2.5, 20, 'a, b'],
        [1, null, ''],
      ])
    }))

  it('is refused in words where it is no table', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const reply = await desk.desk.call('field-files.read-csv', { jobId, text: 'lift,force\n"2,3\n4,5' })
      expect(reply).toMatchObject({ ok: false, error: { code: 'invalid' } })
    }))
})
