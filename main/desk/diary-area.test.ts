import ICAL from 'ical.js'
import { describe, expect, it } from 'vitest'
import type { CallInput } from '../../app/contract/contract.ts'
import { withJob, type TestJob } from '../../tests/library/a-job.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { holidaysOf } from './holidays.ts'

const scratch = useScratch()
const at = (date: string, time = '09:30', timeZone = 'America/New_York') => ({ date, time, timeZone })
const call: CallInput<'diary.save'>['content'] = {
  kind: 'call',
  at: at('2026-03-14'),
  person: 'Ada Owner',
  direction: 'they-called',
  text: 'She heard water over the hall; a very private remark.',
}
const given: CallInput<'diary.save'>['content'] = {
  kind: 'handed-over',
  at: at('2026-03-16'),
  from: 'Ida Inspector',
  to: 'Ada Owner',
  items: [{ what: 'bound copy' }],
  medium: 'by hand',
  signedBy: 'A. Owner',
}
const add = ({ desk, jobId }: TestJob, content: CallInput<'diary.save'>['content']) =>
  desk.ask('diary.save', { jobId, id: null, content })
const diaryOf = async ({ desk, jobId }: TestJob) => (await desk.ask('jobs.open', { jobId })).diary

describe('the diary of a job', () => {
  it('numbers entries for good, also after one was taken back', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      expect((await add(job, call)).number).toBe(1)
      await desk.ask('history.undo', { jobId })
      expect((await diaryOf(job)).entries).toEqual([])
      expect((await add(job, given)).number).toBe(2)
    }))

  it('keeps what an entry said before a correction, by whom and why; saving it unchanged is no correction', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const { id } = await add(job, call)
      const content = { ...call, person: 'Ada M. Owner' }
      await desk.ask('diary.save', { jobId, id, content, because: 'Her name in full.' })
      await desk.ask('diary.save', { jobId, id, content })
      const [entry] = (await diaryOf(job)).entries
      expect(entry?.content).toMatchObject({ person: 'Ada M. Owner' })
      expect(entry?.earlier).toEqual([
        expect.objectContaining({
          content: expect.objectContaining({ person: 'Ada Owner' }),
          because: 'Her name in full.',
          replacedBy: 'Test operator',
        }),
      ])
    }))

  it('strikes out instead of removing, with a reason, and takes that back', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const { id } = await add(job, call)
      await expect(desk.ask('diary.strike', { jobId, id, because: '' })).rejects.toThrow('Say why')
      await desk.ask('diary.strike', { jobId, id, because: 'Belongs to another job.' })
      expect((await diaryOf(job)).entries[0]?.struck).toMatchObject({ because: 'Belongs to another job.' })
      await desk.ask('diary.strike', { jobId, id, because: null })
      expect((await diaryOf(job)).entries[0]?.struck).toBeNull()
    }))

  it('tells the log that there is an entry, and none of its words', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const { id } = await add(job, call)
      await desk.ask('diary.save', { jobId, id, content: { ...call, text: 'Another private remark.' } })
      await desk.ask('diary.strike', { jobId, id, because: 'A third private remark.' })
      const { entries } = await desk.ask('log.page', { jobId })
      const words = JSON.stringify(entries)
      expect(words).toContain('Add diary entry D-1, call')
      expect(words).toContain('Strike out diary entry D-1')
      expect(words).not.toMatch(/private|Ada Owner/)
    }))

  it('finds entries by their words', () =>
    withJob(scratch, async (job) => {
      await add(job, call)
      const { hits } = await job.desk.ask('search.find', { text: 'water hall' })
      expect(hits.map(({ kind, label }) => [kind, label])).toEqual([['diary', 'D-1']])
    }))

  it('refuses what lacks its point, files that are not kept, and packets that were not issued', () =>
    withJob(scratch, async (job) => {
      await expect(add(job, { ...call, person: '' })).rejects.toThrow('Say who was on the line.')
      await expect(add(job, { ...call, attachmentIds: ['elsewhere'] })).rejects.toThrow('not kept with the job')
      const packet = { id: 'p', revision: 1, pdfSha256: 'a'.repeat(64), headHash: 'b'.repeat(64) }
      await expect(add(job, { ...given, items: [{ packet }] })).rejects.toThrow('not issued in this job')
    }))

  it('prints handovers on their own list', () =>
    withJob(scratch, async (job) => {
      await add(job, given)
      const { desk, jobId } = job
      const { draftId, pages } = await desk.ask('diary.handover-list', { jobId, paper: 'a4' })
      expect(pages).toBe(1)
      expect(await desk.desk.file({ kind: 'draft', id: draftId })).toMatchObject({ mediaType: 'application/pdf' })
    }))
})

describe('statutory clocks', () => {
  const texas = {
    ruleKey: 'tx-decide',
    start: { date: '2026-11-13', time: null, timeZone: 'America/Chicago' },
  }

  it('are off until they are asked for', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      expect((await diaryOf(job)).clocks).toEqual({ jurisdictions: [], asked: [] })
      expect(await desk.ask('diary.clocks', { jobId })).toEqual({ clocks: [] })
    }))

  it('count business days by the holidays of the state, and can be dropped again', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const { id } = await desk.ask('diary.ask-clock', { jobId, id: null, clock: texas })
      const { clocks } = await desk.ask('diary.clocks', { jobId })
      expect(clocks[0]).toMatchObject({ end: { kind: 'day', date: '2026-12-08' }, jurisdiction: 'US-TX' })
      expect(clocks[0]?.sentence).toMatch(/^If this statute applies: /)
      await desk.ask('diary.drop-clock', { jobId, id })
      expect(await desk.ask('diary.clocks', { jobId })).toEqual({ clocks: [] })
    }))

  it('count by rules of the office too, and go on doing so after the rule was withdrawn', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const { key } = await desk.ask('rules.save-own', {
        key: null,
        rule: {
          kind: 'clock',
          title: 'Reply to an owner',
          jurisdiction: '',
          says: 'The office answers within two working days.',
          source: 'Own judgement',
          status: 'entered by the office',
          asOf: '2026-03-01',
          data: { trigger: 'a letter arrived', count: 2, unit: 'business-days' },
        },
      })
      await desk.ask('diary.ask-clock', { jobId, id: null, clock: { ...texas, ruleKey: key } })
      await desk.ask('rules.withdraw-own', { key })
      const { clocks } = await desk.ask('diary.clocks', { jobId })
      // Friday 13 November 2026: Monday and Tuesday.
      expect(clocks[0]?.end).toEqual({ kind: 'day', date: '2026-11-17' })
      expect(clocks[0]?.sentence).toMatch(/^If this rule of the office applies: /)
    }))

  it('refuse hours without a time of day, and rules that are not there', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const ask = (ruleKey: string) => desk.ask('diary.ask-clock', { jobId, id: null, clock: { ...texas, ruleKey } })
      await expect(ask('co-rescind')).rejects.toThrow('Write it as 14:30.')
      await expect(ask('own-nothing')).rejects.toThrow('no such clock')
    }))
})

describe('holidays', () => {
  it.each([
    // Texas state holidays: Thanksgiving, the fourth Thursday of November, and the day after (Tex. Gov't Code 662.003, from memory).
    ['US-TX', '2026-11-26', true],
    ['US-TX', '2026-11-27', true],
    ['US-TX', '2026-11-25', false],
    // Georgia, 4 July 2026 is a Saturday: kept on Friday the 3rd.
    ['US-GA', '2026-07-03', true],
    // Mardi Gras is a holiday in Louisiana only: 47 days before Easter, 5 April 2026.
    ['US-LA', '2026-02-17', true],
    ['US-FL', '2026-02-17', false],
    ['', '2026-12-25', false],
  ])('in "%s" on %s: %s', (jurisdiction, date, isOff) => {
    expect(holidaysOf(jurisdiction)(date) !== null).toBe(isOff)
  })
})

describe('the calendar of a job', () => {
  const eventsOf = (text: string) =>
    new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent').map((one) => new ICAL.Event(one))

  it('is an iCalendar file that another program reads back, word by word and to the minute (RFC 5545)', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const text =
        'Look at the tarp; bring: ladder, tape\n"Second" line \\ with a backslash, и кириллица ß 🛠 ' + 'x'.repeat(200)
      await add(job, { kind: 'reminder', at: at('2026-11-01', '01:30'), text })
      await desk.ask('diary.ask-clock', {
        jobId,
        id: null,
        clock: { ruleKey: 'fl-notice', start: { date: '2024-02-29', timeZone: 'America/New_York' } },
      })
      const file = await desk.ask('diary.calendar', { jobId })
      expect(file.fileName).toMatch(/-diary\.ics$/)
      const [reminder, clock] = eventsOf(file.text)
      // The first of two hours: -04:00.
      expect(reminder?.startDate.toJSDate().toISOString()).toBe('2026-11-01T05:30:00.000Z')
      expect(reminder?.description).toContain(text)
      expect(clock?.startDate.isDate).toBe(true)
      expect(clock?.startDate.toString()).toBe('2025-02-28')
      expect(clock?.summary).toMatch(/: if this statute applies: /)
      expect(clock?.description).toContain('General information, not legal advice.')
      expect(clock?.description).toContain('as of November 25, 2026')
    }))

  it('folds lines at 75 octets and ends every line in CRLF (RFC 5545 section 3.1)', () =>
    withJob(scratch, async (job) => {
      await add(job, { kind: 'reminder', at: at('2026-11-01'), text: 'ß🛠'.repeat(200) })
      const { text } = await job.desk.ask('diary.calendar', { jobId: job.jobId })
      const lines = text.split('\r\n')
      expect(lines.at(-1)).toBe('')
      expect(lines.join('')).not.toMatch(/[\r\n]/)
      expect(Math.max(...lines.map((line) => Buffer.byteLength(line)))).toBeLessThanOrEqual(75)
      expect(lines.some((line) => line.startsWith(' '))).toBe(true)
    }))

  it('names an entry the same after a correction, with a higher sequence', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      const content = { kind: 'reminder', at: at('2026-11-02'), text: 'Tarp' } as const
      const { id } = await add(job, content)
      const [before] = eventsOf((await desk.ask('diary.calendar', { jobId })).text)
      await desk.ask('diary.save', { jobId, id, content: { ...content, text: 'Tarp and ridge' } })
      const [after] = eventsOf((await desk.ask('diary.calendar', { jobId })).text)
      expect([after?.uid, after?.sequence]).toEqual([before?.uid, 1])
    }))

  it('leaves calls, notes and documents out unless they are asked for', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId } = job
      await add(job, call)
      expect((await desk.ask('diary.calendar', { jobId })).events).toBe(0)
      const { text, events } = await desk.ask('diary.calendar', { jobId, kinds: ['call'] })
      expect(events).toBe(1)
      expect(eventsOf(text)[0]?.summary).toMatch(/: Call from Ada Owner$/)
    }))
})
