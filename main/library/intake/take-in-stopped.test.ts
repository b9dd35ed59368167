import { readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { openTestDesk } from '../../../tests/library/a-desk.ts'
import { countedNames, takeInDirectly, waiting, withJob } from '../../../tests/library/a-job.ts'
import { photosIn } from '../../../tests/library/a-photo.ts'
import { useScratch } from '../../../tests/library/scratch.ts'
import { verifyLibrary } from '../verify-library.ts'
import { ARRIVING } from '../write-file.ts'

const scratch = useScratch()

describe('when a whole intake stops', () => {
  it('a cancelled one keeps what is committed, and running it again finishes it', () =>
    withJob(scratch, async (job) => {
      const { desk, jobId, card, places } = job
      const names = countedNames(20)
      await photosIn(card, names)
      const stop = new AbortController()
      const outcomes = await takeInDirectly(job, {
        files: waiting(card, ...names),
        signal: stop.signal,
        onOutcome: (outcome) => outcome.fileName === 'IMG_5.jpg' && stop.abort(),
      })
      expect(outcomes.length).toBeGreaterThanOrEqual(5)
      expect(outcomes.length).toBeLessThan(20)
      const kept = (await desk.ask('jobs.open', { jobId })).photos
      expect(kept.map((photo) => photo.file.fileName)).toEqual(names.slice(0, outcomes.length))
      expect(readdirSync(places.originals)).toHaveLength(outcomes.length)
      const rest = await desk.takeIn(jobId, card)
      expect(rest.intake).toMatchObject({ photosAdded: 20 - outcomes.length, failed: [] })
      expect((await desk.ask('jobs.open', { jobId })).photos.map((photo) => photo.file.fileName)).toEqual(names)
    }))

  it('one cancelled through the desk ends as cancelled, without an error', () =>
    withJob(scratch, async ({ desk, jobId, card }) => {
      await photosIn(card, countedNames(30))
      const { taskId } = await desk.ask('intake.start', { jobId, from: { kind: 'paths', paths: [card] } })
      await desk.ask('tasks.cancel', { taskId })
      const task = await desk.desk.tasks.ended(taskId)
      expect(task).toMatchObject({ state: 'cancelled', error: null })
      expect(task.intake?.photosAdded ?? 0).toBeLessThan(30)
    }))

  it('one whose rows cannot be written leaves no file behind that no row knows', () =>
    withJob(scratch, async ({ desk, jobId, card, places }) => {
      await photosIn(card, countedNames(6))
      const { connection } = desk.library.db
      connection.exec(
        "create trigger no_room before insert on photos when new.number = 3 begin select raise(abort, 'no room'); end",
      )
      const failed = await desk.takeIn(jobId, card)
      expect(failed.state).toBe('failed')
      const { photos } = await desk.ask('jobs.open', { jobId })
      expect(photos.length).toBeLessThan(3)
      expect(readdirSync(places.originals)).toHaveLength(photos.length)
      connection.exec('drop trigger no_room')
      expect(await desk.takeIn(jobId, card)).toMatchObject({ state: 'done' })
      expect((await desk.ask('jobs.open', { jobId })).photos).toHaveLength(6)
      expect(readdirSync(places.originals).filter((name) => name.endsWith(ARRIVING))).toEqual([])
      expect((await verifyLibrary(desk.library)).differences).toEqual([])
    }))

  it('one whose commit fails at the very end leaves no file behind either', () =>
    withJob(scratch, async ({ desk, jobId, card, places }) => {
      await photosIn(card, countedNames(4))
      const { connection } = desk.library.db
      // A constraint that is only looked at when the transaction commits: every row is written and every file renamed by then.
      connection.exec(`create table late (id text references jobs (id) deferrable initially deferred);
        create trigger too_late after insert on photos when new.number = 2 begin insert into late values ('nobody'); end`)
      expect((await desk.takeIn(jobId, card)).state).toBe('failed')
      const { photos } = await desk.ask('jobs.open', { jobId })
      expect(photos.length).toBeLessThan(2)
      expect(readdirSync(places.originals)).toHaveLength(photos.length)
      connection.exec('drop trigger too_late')
      expect(await desk.takeIn(jobId, card)).toMatchObject({ state: 'done' })
      expect(readdirSync(places.originals)).toHaveLength(4)
      expect((await verifyLibrary(desk.library)).differences).toEqual([])
    }))

  it('two programs taking the same folder in at once end with every photo once', () =>
    withJob(scratch, async ({ desk, jobId, card, places }) => {
      const names = countedNames(16)
      await photosIn(card, names)
      const other = openTestDesk(desk.library.layout.folder)
      const both = await Promise.all([desk.takeIn(jobId, card), other.takeIn(jobId, card)])
      await other.close()
      const added = both.map((task) => task.intake?.photosAdded ?? 0)
      const doubles = both.map((task) => task.intake?.doubles.length ?? 0)
      expect(both.map((task) => task.state)).toEqual(['done', 'done'])
      expect(added.reduce((a, b) => a + b)).toBe(16)
      expect(doubles.reduce((a, b) => a + b)).toBe(16)
      expect(readdirSync(places.originals)).toHaveLength(16)
      expect((await verifyLibrary(desk.library)).differences).toEqual([])
    }))
})
