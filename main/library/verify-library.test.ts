import Database from 'better-sqlite3'
import { chmodSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { openTestDesk, type TestDesk } from '../../tests/library/a-desk.ts'
import { photosIn } from '../../tests/library/a-photo.ts'
import { useScratch } from '../../tests/library/scratch.ts'
import { findJob } from '../store/jobs.ts'
import { jobLayout, type JobLayout } from './layout.ts'
import { verifyLibrary } from './verify-library.ts'

const scratch = useScratch()

async function withPhotos(work: (at: { desk: TestDesk; places: JobLayout }) => Promise<void>) {
  const desk = openTestDesk(scratch('library'))
  try {
    const jobId = await desk.newJob('2026-7')
    const card = scratch('card')
    await photosIn(card, ['a.jpg', 'b.jpg', 'c.jpg'])
    writeFileSync(join(card, 'letter.txt'), 'a letter')
    await desk.takeIn(jobId, card)
    await work({ desk, places: jobLayout(desk.library.layout, findJob(desk.library.db, jobId)?.folder ?? '') })
  } finally {
    await desk.close()
  }
}

/** Changes the database behind the program's back, as somebody with a database tool would. */
function tamper(desk: TestDesk, sql: string): void {
  const raw = new Database(desk.library.layout.database)
  raw.exec('drop trigger if exists log_is_append_only_update; drop trigger if exists log_is_append_only_delete')
  raw.pragma('foreign_keys = OFF')
  raw.exec(sql)
  raw.close()
}

const original = (places: JobLayout, name: string) =>
  join(places.originals, readdirSync(places.originals).find((stored) => stored.endsWith(name)) ?? 'none')

describe('checking a library', () => {
  it('finds nothing where nothing was touched, and counts what it looked at', () =>
    withPhotos(async ({ desk }) => {
      // The opening, three photos and a letter.
      expect(await verifyLibrary(desk.library)).toEqual({ filesChecked: 4, entriesChecked: 5, differences: [] })
    }))

  it('names the file in which one byte changed', () =>
    withPhotos(async ({ desk, places }) => {
      const path = original(places, 'b.jpg')
      const bytes = readFileSync(path)
      bytes[bytes.length - 10] = (bytes[bytes.length - 10] ?? 0) ^ 1
      chmodSync(path, 0o644)
      writeFileSync(path, bytes)
      expect((await verifyLibrary(desk.library)).differences).toEqual([
        { job: '2026-7', what: 'b.jpg', problem: 'The file has changed since it was taken in.' },
      ])
    }))

  it('names a missing photo and a missing attachment', () =>
    withPhotos(async ({ desk, places }) => {
      rmSync(original(places, 'c.jpg'))
      renameSync(places.attachments, `${places.attachments}-elsewhere`)
      const { differences } = await verifyLibrary(desk.library)
      expect(differences.map(({ what }) => what)).toEqual(['c.jpg', 'letter.txt'])
      expect(differences[0]?.problem).toBe('The file is missing or cannot be read.')
    }))

  it.each([
    ['another actor', "update log set actor = 'Somebody else' where seq = 3", 3],
    ['another moment', 'update log set at_ms = at_ms + 1 where seq = 2', 2],
    ['another file name', `update log set event = replace(event, 'b.jpg', 'x.jpg') where seq = 3`, 3],
    ['something that is no event', `update log set event = '{"type":"nothing"}' where seq = 4`, 4],
    ['something that is not JSON', `update log set event = 'nothing' where seq = 4`, 4],
    ['no hash', `update log set hash = '' where seq = 2`, 2],
    ['a missing entry', 'delete from log where seq = 3', 3],
    ['a missing first entry', 'delete from log where seq = 1', 1],
  ])('names the entry of the log that has %s', (_, sql, seq) =>
    withPhotos(async ({ desk }) => {
      tamper(desk, sql)
      const { differences } = await verifyLibrary(desk.library)
      expect(differences).toHaveLength(1)
      expect(differences[0]).toMatchObject({ job: '2026-7', what: `evidence log, entry ${seq}`, problem: /./ })
      const jobId = (await desk.ask('jobs.list', {})).jobs[0]?.id ?? ''
      const reply = await desk.desk.call('log.verify', { jobId })
      expect(reply).toMatchObject({ ok: true, value: { brokenAtSeq: seq } })
    }),
  )

  it('names what the log lost at its end', () =>
    withPhotos(async ({ desk }) => {
      tamper(desk, 'delete from log where seq = 5')
      expect((await verifyLibrary(desk.library)).differences).toEqual([
        { job: '2026-7', what: 'letter.txt', problem: 'The evidence log has no entry of its taking in.' },
      ])
    }))

  it('names a photo whose record was taken away or swapped for another, file and all', () =>
    withPhotos(async ({ desk, places }) => {
      const other = 'f'.repeat(64)
      tamper(
        desk,
        `delete from photos where number = 1; update photos set file = json_set(file, '$.sha256', '${other}') where number = 2`,
      )
      const { differences } = await verifyLibrary(desk.library)
      expect(differences).toContainEqual({
        job: '2026-7',
        what: 'a.jpg',
        problem: 'The evidence log says it was taken in; the job has no record of it.',
      })
      expect(differences).toContainEqual({
        job: '2026-7',
        what: 'b.jpg',
        problem: 'The evidence log has another hash for it.',
      })
      expect(readdirSync(places.originals)).toHaveLength(3)
    }))

  it('names a job whose records cannot be read', () =>
    withPhotos(async ({ desk }) => {
      tamper(desk, `update photos set file = '{}' where number = 1`)
      const { differences } = await verifyLibrary(desk.library)
      expect(differences).toMatchObject([{ job: '2026-7', what: 'records', problem: /photo 1/ }])
    }))
})
