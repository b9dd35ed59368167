import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../app/contract/contract.ts'
import type { Facet } from '../../app/roof/facet.ts'
import { roofEdges } from '../../app/roof/edges.ts'
import { edgeOfFacet } from '../../app/roof/kinds-by-hand.ts'
import { aHouse, badOutlines, unusualOutlines } from '../../tests/builders/house-outlines.ts'
import { withJob, type TestJob } from '../../tests/library/a-job.ts'
import { photosIn } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'

const scratch = useScratch()
type Given = CallInput<'outlines.save'>['outline']

const main = aHouse('Main roof', '0,0 40,0 40,30 0,30', { eaveHeightFt: 18 })
const garage = aHouse('Garage', '40,5 60,5 60,25 40,25', { pitches: [4, 4, 4, 0], eaveHeightFt: 9 })

const open = (job: TestJob) => job.desk.ask('jobs.open', { jobId: job.jobId })
const save = async ({ desk, jobId }: TestJob, outline: Given, id: string | null = null) =>
  (await desk.ask('outlines.save', { jobId, id, outline })).id
const edgesOf = async (job: TestJob) => roofEdges((await open(job)).facets, 0)

/** Saves what cannot stand, and expects that nothing changed. */
async function refused(job: TestJob, name: string, input: object) {
  const before = await open(job)
  const reply = await job.desk.desk.call(name, { jobId: job.jobId, ...input })
  expect(await open(job)).toEqual(before)
  return reply
}

describe('an outline', () => {
  it.each(badOutlines)('that %s is refused, and the last good roof stays', (_what, outline, says) =>
    withJob(scratch, async (job) => {
      const id = await save(job, main)
      for (const to of [null, id]) {
        expect(await refused(job, 'outlines.save', { id: to, outline })).toMatchObject({
          error: { code: 'invalid', about: 'outline', message: expect.stringMatching(says) },
        })
      }
    }),
  )

  it.each(unusualOutlines)('that %s has its roof', (_what, outline, count) =>
    withJob(scratch, async (job) => {
      await save(job, outline)
      expect((await open(job)).facets).toHaveLength(count)
    }),
  )

  it('that covers the same place as another is refused by both names and the place', () =>
    withJob(scratch, async (job) => {
      await save(job, main)
      const id = await save(job, garage)
      const message = '"Garage" and "Main roof" cover the same place, at 40.0 ft across, 5.0 ft up.'
      const moved = aHouse('Garage', '35,5 60,5 60,25 35,25', { pitches: [4, 4, 4, 0], eaveHeightFt: 9 })
      expect(await refused(job, 'outlines.save', { id, outline: moved })).toMatchObject({
        error: { code: 'conflict', about: 'outline', message: expect.stringContaining(message) },
      })
      const porch = aHouse('Porch', '10,10 20,10 20,20 10,20')
      expect(await refused(job, 'outlines.save', { id: null, outline: porch })).toMatchObject({
        error: { code: 'conflict', message: expect.stringContaining('"Porch" and "Main roof" cover the same place') },
      })
    }))
})

describe('a lower roof at the wall of a higher one', () => {
  it('ends in steps of its own true length; the higher one keeps its eave', () =>
    withJob(scratch, async (job) => {
      await save(job, main)
      await save(job, garage)
      const edges = await edgesOf(job)
      const steps = edges.filter(({ kind }) => kind === 'step')
      // The garage's ridge runs to the wall: two slopes of 10 ft run end there. 4:12 makes 10 ft of plan 10.541 ft
      // (sqrt(1 + (4/12)^2) = 1.0541, construction-handbook slope tables).
      expect(steps.map(({ trueLengthFt }) => trueLengthFt.toFixed(2))).toEqual(['10.54', '10.54'])
      const eave = edges.filter(({ kind }) => kind === 'eave').reduce((sum, { planLengthFt }) => sum + planLengthFt, 0)
      expect(eave).toBeCloseTo(140 + 60, 6)
    }))

  it('has no step where both eaves are of one height and the slopes meet there', () =>
    withJob(scratch, async (job) => {
      await save(job, aHouse('Main roof', '0,0 40,0 40,30 0,30', { pitches: [6, 0, 6, 0] }))
      await save(job, aHouse('Wing', '40,0 70,0 70,30 40,30', { pitches: [6, 6, 6, 0] }))
      expect((await edgesOf(job)).filter(({ kind }) => kind === 'step')).toEqual([])
    }))
})

describe('an edge whose kind is stated by hand', () => {
  async function withShared(work: (job: TestJob, pair: { a: Facet; b: Facet; outlineId: string }) => Promise<void>) {
    await withJob(scratch, async (job) => {
      const outlineId = await save(job, main)
      const facetOf = async (edgeId: string) =>
        (await open(job)).facets.find(({ from }) => from?.edgeId === edgeId) ?? expect.fail(edgeId)
      await work(job, { a: await facetOf('e1'), b: await facetOf('e2'), outlineId })
    })
  }
  const between = async (job: TestJob, { a, b }: { a: Facet; b: Facet }) =>
    (await edgesOf(job)).filter(({ facetIds }) => facetIds.includes(a.id) && facetIds.includes(b.id))

  it('is that kind in every list, outlasts a change of the outline, can be taken back and set back', () =>
    withShared(async (job, { a, b, outlineId }) => {
      const { ask } = job.desk
      const { jobId } = job
      await ask('facets.set-edge', { jobId, id: a.id, edge: { at: 'shared', with: b.id }, kind: 'valley' })
      expect(await between(job, { a, b })).toMatchObject([{ kind: 'valley', foundKind: 'hip' }])
      expect((await open(job)).history.undo).toBe(`State that edge ${a.letter}-${b.letter} is a valley`)
      await save(job, aHouse('Main roof', '0,0 44,0 44,30 0,30', { eaveHeightFt: 18 }), outlineId)
      expect(await between(job, { a, b })).toMatchObject([{ kind: 'valley' }])
      await ask('history.undo', { jobId })
      await ask('history.undo', { jobId })
      expect(await between(job, { a, b })).toMatchObject([{ kind: 'hip' }])
      await ask('history.redo', { jobId })
      // Set back from the other facet's side.
      await ask('facets.set-edge', { jobId, id: b.id, edge: { at: 'shared', with: a.id }, kind: null })
      expect((await between(job, { a, b }))[0]?.foundKind).toBeUndefined()
      expect((await open(job)).facets.every(({ edgesByHand }) => edgesByHand === undefined)).toBe(true)
    }))

  it('may be an outer side, and stays on it when the roof is moved, turned and made larger', () =>
    withShared(async (job, { a, outlineId }) => {
      const { ask } = job.desk
      const { jobId } = job
      const eave = (await edgesOf(job)).find(({ kind, facetIds }) => kind === 'eave' && facetIds[0] === a.id)
      const edge = edgeOfFacet(eave ?? expect.fail('an eave'), a, 0)
      await ask('facets.set-edge', { jobId, id: a.id, edge, kind: 'rake' })
      const stated = async () => (await edgesOf(job)).filter(({ foundKind }) => foundKind !== undefined)
      expect(await stated()).toMatchObject([{ kind: 'rake', foundKind: 'eave', facetIds: [a.id] }])
      await save(job, aHouse('Main roof', '100,50 150,80 130,113.333333 80,83.333333'), outlineId)
      expect(await stated()).toMatchObject([{ kind: 'rake', foundKind: 'eave', facetIds: [a.id] }])
      // What else is changed of the facet leaves it alone.
      const { id, from: _from, setByHand: _set, edgesByHand: _edges, ...facet } = { ...a, name: 'front' }
      await ask('facets.save', { jobId, id, facet })
      expect(await stated()).toHaveLength(1)
    }))

  it('that is not there is refused', () =>
    withShared(async (job, { a }) => {
      const edge = { at: 'shared', with: 'gone' }
      expect(await refused(job, 'facets.set-edge', { id: a.id, edge, kind: 'hip' })).toMatchObject({
        error: { code: 'not-found', about: 'edge', message: `Facet ${a.letter} has no such edge any more.` },
      })
    }))
})

describe('a gable that becomes an eave again', () => {
  const withGable = aHouse('Main roof', '0,0 40,0 40,30 0,30', { pitches: [6, 0, 6, 6], eaveHeightFt: 18 })

  it('gets back its facet, and what pointed to it', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId, card } = job
      await photosIn(card, ['a.jpg', 'b.jpg'])
      await desk.takeIn(jobId, card)
      const outlineId = await save(job, main)
      const before = (await open(job)).facets.find(({ from }) => from?.edgeId === 'e2') ?? expect.fail('e2')
      const { id, from: _from, setByHand: _set, ...facet } = before
      await desk.ask('facets.save', { jobId, id, facet: { ...facet, name: 'right', inspected: { percent: 80 } } })
      const [first, second] = (await open(job)).photos.map((photo) => photo.id)
      await desk.ask('photos.tag', { jobId, photoIds: [first ?? '', second ?? ''], set: { facetId: id } })
      await save(job, withGable, outlineId)
      expect((await open(job)).facets.map((one) => one.id)).not.toContain(id)
      // One photo finds another facet meanwhile, and keeps it.
      const [other] = (await open(job)).facets
      await desk.ask('photos.tag', { jobId, photoIds: [second ?? ''], set: { facetId: other?.id ?? null } })
      await save(job, main, outlineId)
      const after = await open(job)
      expect(after.facets.find((one) => one.id === id)).toMatchObject({
        letter: before.letter,
        name: 'right',
        inspected: { percent: 80 },
        from: { edgeId: 'e2' },
      })
      expect(after.photos.map(({ tags }) => tags.facetId)).toEqual([id, other?.id])
    }))

  it('gets the next letter where another facet has taken its own', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const outlineId = await save(job, main)
      const before = (await open(job)).facets.find(({ from }) => from?.edgeId === 'e2') ?? expect.fail('e2')
      await save(job, withGable, outlineId)
      const drawn = { letter: before.letter, outline: aHouse('x', '80,0 90,0 90,10').outer.corners }
      await desk.ask('facets.save', { jobId, id: null, facet: { ...drawn, pitchRise: 3, downslopeAzimuthDeg: 0 } })
      await save(job, main, outlineId)
      expect((await open(job)).facets.find((one) => one.id === before.id)?.letter).toBe('E')
    }))
})
