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
const finding = { kind: 'damage', component: 'field-tile', condition: 'slipped' } as const

describe('the assessment at the desk', () => {
  it('changes a part and leaves the others; each change is a step of undo and an entry of the log', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const entries = async () => (await desk.ask('jobs.open', { jobId })).log.entries
      const before = await entries()
      await desk.ask('assessment.save', { jobId, set: { breakage: { fromPercent: 5, toPercent: 10 } } })
      await desk.ask('assessment.save', { jobId, set: { bond: 'staggered', workDate: '2026-03-01' } })
      const { assessment, history } = await desk.ask('jobs.open', { jobId })
      expect(assessment).toMatchObject({
        breakage: { fromPercent: 5, toPercent: 10 },
        bond: 'staggered',
        workDate: '2026-03-01',
      })
      expect(history.undo).toBe('Change the day of the work, how courses lie of the assessment')
      expect(await entries()).toBe(before + 2)
      await desk.ask('history.undo', { jobId })
      expect((await desk.ask('jobs.open', { jobId })).assessment).toMatchObject({
        breakage: { fromPercent: 5, toPercent: 10 },
        bond: 'straight',
        workDate: null,
      })
    }))

  it('states what was looked at of a facet and leaves the rest of the facet alone', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const { id } = await desk.ask('facets.save', { jobId, id: null, facet })
      const facetNow = async () => (await desk.ask('jobs.open', { jobId })).facets[0]
      const before = await facetNow()
      const inspected = { percent: 60, note: 'Wet below.' }
      await desk.ask('assessment.state-inspected', { jobId, facetId: id, inspected })
      expect(await facetNow()).toEqual({ ...before, inspected })
      await desk.ask('history.undo', { jobId })
      expect(await facetNow()).toEqual(before)
    }))

  it('refuses a facet in two sections, work stated twice, and breakage the wrong way round', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const { id } = await desk.ask('facets.save', { jobId, id: null, facet })
      const codeOf = async (set: object) => {
        const reply = await desk.desk.call('assessment.save', { jobId, set })
        return reply.ok ? 'taken' : reply.error.code
      }
      const section = (name: string) => ({ id: name, name, facetIds: [id] })
      expect(await codeOf({ sections: [section('main'), section('porch')] })).toBe('invalid')
      const whole = { facetId: id, extent: { kind: 'whole' } }
      expect(await codeOf({ planned: [whole, whole] })).toBe('invalid')
      expect(await codeOf({ breakage: { fromPercent: 10, toPercent: 5 } })).toBe('invalid')
      expect(await codeOf({ sections: [section('main')], planned: [whole] })).toBe('taken')
    }))

  it('refuses facets and documents that are not in the job', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const planned = [{ facetId: 'no-such-facet', extent: { kind: 'whole' } }]
      const profile = { statement: 'No longer made.', attachmentIds: ['no-such-file'] }
      for (const set of [{ planned }, { profile }]) {
        const reply = await desk.desk.call('assessment.save', { jobId, set })
        expect(reply).toMatchObject({ ok: false, error: { code: 'not-found' } })
      }
    }))

  it('lets go of a facet that is removed, and takes it back with undo', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const { id } = await desk.ask('facets.save', { jobId, id: null, facet })
      const set = {
        sections: [{ id: 's1', name: 'Main', facetIds: [id] }],
        planned: [{ facetId: id, extent: { kind: 'whole' as const } }],
        earlier: [{ id: 'e1', date: '2025-06-01', areaSqFt: 90, facetId: id }],
      }
      await desk.ask('assessment.save', { jobId, set })
      const named = async () => {
        const { sections, planned, earlier } = (await desk.ask('jobs.open', { jobId })).assessment
        return [sections[0]?.facetIds, planned.map(({ facetId }) => facetId), earlier[0]?.facetId]
      }
      await desk.ask('facets.remove', { jobId, id })
      expect(await named()).toEqual([[], [], null])
      await desk.ask('history.undo', { jobId })
      expect(await named()).toEqual([[id], [id], id])
    }))

  it('forgets what was said of a finding that is gone, with the next change', () =>
    withJob(scratch, async ({ desk, jobId }) => {
      const { id } = await desk.ask('findings.save', { jobId, id: null, finding })
      const treatments = [{ findingId: id, treatment: 'replace' as const }]
      await desk.ask('assessment.save', { jobId, set: { treatments } })
      expect((await desk.ask('jobs.open', { jobId })).assessment.treatments).toEqual(treatments)
      await desk.ask('findings.remove', { jobId, id })
      await desk.ask('assessment.save', { jobId, set: { lockFrom: 'right' } })
      expect((await desk.ask('jobs.open', { jobId })).assessment.treatments).toEqual([])
    }))
})
