import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { decisionOf } from '../../app/narration/decisions.ts'
import { draftedFinding } from '../../app/narration/drafted-finding.ts'
import { readNarration } from '../../app/narration/read-narration.ts'
import { type TestJob, withJob } from '../../tests/library/a-job.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { decodeSubtitles } from './decode-subtitles.ts'

const scratch = useScratch()

const SUBTITLES = [
  'WEBVTT',
  '00:00:01.000 --> 00:00:04.000\nThree ridge caps are loose.',
  '00:00:xx.000 --> 00:00:06.000\nThis one is lost.',
  '00:00:10.000 --> 00:00:14.000\nOne cracked tile, the crack goes to the nail.',
].join('\n\n')

const open = ({ desk, jobId }: TestJob) => desk.ask('jobs.open', { jobId })

/** A job with a subtitle file among its attachments, and its narration imported. */
async function withNarration(work: (job: TestJob, attachmentId: string) => Promise<void>) {
  await withJob(scratch, async (job) => {
    writeFileSync(join(job.card, 'walk.vtt'), SUBTITLES)
    await job.desk.takeIn(job.jobId, job.card)
    const [attachment] = (await open(job)).attachments
    const attachmentId = attachment?.id ?? ''
    await job.desk.ask('narrations.import', { jobId: job.jobId, attachmentId })
    await work(job, attachmentId)
  })
}

async function draftsOf(job: TestJob) {
  const { narrations, draftDecisions, findings } = await open(job)
  const [narration] = narrations
  if (narration === undefined) return []
  const house = { facets: [], outlines: [], upAzimuthDeg: 0, frontAzimuthDeg: null }
  const { drafts } = readNarration(narration.cues, { house, covering: 'concrete-tile' })
  return drafts.map((draft) => ({
    draft: { key: draft.key, startMs: draft.startMs },
    finding: draftedFinding(draft, narration.id),
    decision: decisionOf(draft, draftDecisions),
    accepted: findings.filter(({ spoken }) => spoken.some(({ cue }) => draft.cues.includes(cue))),
  }))
}

describe('narration of a job', () => {
  it('is imported from an attachment, the damaged block named by its line, and only once', () =>
    withNarration(async (job, attachmentId) => {
      const { narrations, log } = await open(job)
      expect(narrations).toMatchObject([
        { name: 'walk.vtt', format: 'webvtt', problems: [{ line: 6 }], start: { kind: 'not-known' } },
      ])
      expect(narrations[0]?.cues.map(({ startMs }) => startMs)).toEqual([1000, 10_000])
      expect(log.entries).toBeGreaterThan(1)
      await expect(job.desk.ask('narrations.import', { jobId: job.jobId, attachmentId })).rejects.toMatchObject({
        error: { code: 'conflict' },
      })
    }))

  it('is set in time, and back by undo', () =>
    withNarration(async (job) => {
      const { jobId, desk } = job
      const [narration] = (await open(job)).narrations
      const id = narration?.id ?? ''
      const start = { kind: 'clock', cue: 1, instantMs: 50_000 } as const
      await desk.ask('narrations.align', { jobId, id, start })
      expect((await open(job)).narrations[0]?.start).toEqual(start)
      await desk.ask('history.undo', { jobId })
      expect((await open(job)).narrations[0]?.start).toEqual({ kind: 'not-known' })
      const beyond = { kind: 'clock', cue: 2, instantMs: 0 } as const
      await expect(desk.ask('narrations.align', { jobId, id, start: beyond })).rejects.toMatchObject({
        error: { code: 'not-found', about: 'start.cue' },
      })
      const elsewhere = { kind: 'video', videoId: 'no-such-video' } as const
      await expect(desk.ask('narrations.align', { jobId, id, start: elsewhere })).rejects.toMatchObject({
        error: { code: 'not-found', about: 'start.videoId' },
      })
    }))

  it('gives a finding for an accepted draft in one step that undo takes back whole', () =>
    withNarration(async (job) => {
      const { jobId, desk } = job
      const [first] = await draftsOf(job)
      if (first === undefined) throw new Error('There are two drafts.')
      const { number } = await desk.ask('drafts.accept', { jobId, draft: first.draft, finding: first.finding })
      const [accepted] = await draftsOf(job)
      expect(accepted?.accepted).toMatchObject([
        { number, component: 'ridge-tile', condition: 'cap-loose', extent: { kind: 'exactly', count: 3 } },
      ])
      expect(accepted?.decision?.findingId).toBe(accepted?.accepted[0]?.id)
      expect(await desk.ask('history.undo', { jobId })).toEqual({
        summary: `Add finding F-${number} from the narration`,
      })
      const [undone] = await draftsOf(job)
      expect(undone).toMatchObject({ decision: null, accepted: [] })
    }))

  it('does not bring dropped drafts back when it is imported anew', () =>
    withNarration(async (job, attachmentId) => {
      const { jobId, desk } = job
      const drafts = await draftsOf(job)
      await desk.ask('drafts.drop', { jobId, drafts: drafts.map(({ draft }) => draft) })
      const [narration] = (await open(job)).narrations
      await desk.ask('narrations.remove', { jobId, id: narration?.id ?? '' })
      expect((await open(job)).narrations).toEqual([])
      await desk.ask('narrations.import', { jobId, attachmentId })
      expect((await draftsOf(job)).map(({ decision }) => decision?.findingId)).toEqual([null, null])
      const [first] = drafts
      if (first !== undefined) await desk.ask('drafts.reopen', { jobId, draft: first.draft })
      expect((await draftsOf(job)).map(({ decision }) => decision)).toEqual([null, expect.anything()])
    }))

  it('refuses a file without cues', () =>
    withJob(scratch, async (job) => {
      writeFileSync(join(job.card, 'letter.txt'), 'Dear sir')
      await job.desk.takeIn(job.jobId, job.card)
      const [attachment] = (await open(job)).attachments
      await expect(
        job.desk.ask('narrations.import', { jobId: job.jobId, attachmentId: attachment?.id ?? '' }),
      ).rejects.toMatchObject({ error: { code: 'unreadable-file', about: 'letter.txt' } })
    }))
})

describe('decodeSubtitles', () => {
  it('reads UTF-8, UTF-16 and the old Windows code page', () => {
    expect(decodeSubtitles(Buffer.from('Märket'))).toBe('Märket')
    expect(decodeSubtitles(Buffer.concat([Buffer.from([0xff, 0xfe]), Buffer.from('Märket', 'utf16le')]))).toBe('Märket')
    expect(decodeSubtitles(Buffer.from('Märket', 'latin1'))).toBe('Märket')
  })
})
