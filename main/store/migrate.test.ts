import { readdirSync } from 'node:fs'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { AppFailure } from '../../app/contract/app-error.ts'
import { findChainBreak } from '../../app/evidence/log-chain.ts'
import { aJob, aPlanImage } from '../../tests/builders/records.ts'
import { aStoredJob } from '../../tests/builders/store.ts'
import { connect, inTransaction, row, rows, run, type ReadDb } from './database.ts'
import { findJob } from './jobs.ts'
import { wholeLog } from './log.ts'
import { migrate } from './migrate.ts'
import { firstLibrary } from './migrations/0001-first-library.ts'
import { outlines } from './migrations/0002-outlines.ts'
import { recordEdit } from './record-edits.ts'
import { planImageTable } from './records/tables.ts'

let folder = ''
let db: ReadDb
const path = () => join(folder, 'battenbook.db')
const versionOf = (of: ReadDb) => of.connection.pragma('user_version', { simple: true })
const tableNames = () =>
  rows(db, "select name from sqlite_schema where type = 'table' order by name").map((found) => JSON.stringify(found))

beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'battenbook-store-'))
  db = connect(path())
})

afterEach(() => {
  db.connection.close()
  rmSync(folder, { recursive: true, force: true })
})

function failureOf(work: () => void): AppFailure['error'] | null {
  try {
    work()
    return null
  } catch (cause) {
    if (cause instanceof AppFailure) return cause.error
    throw cause
  }
}

/** Steps that a new library goes through: one for each file of migrations. */
const allSteps = readdirSync(new URL('migrations', import.meta.url)).length

describe('a new library', () => {
  it('gets its tables over an empty file, without a backup of nothing', () => {
    const backup = vi.fn<() => void>()
    migrate(db, { backup })
    expect(backup).not.toHaveBeenCalled()
    expect(versionOf(db)).toBe(allSteps)
    for (const name of [
      'narrations',
      'draft_decisions',
      'jobs',
      'photos',
      'outlines',
      'facets',
      'findings',
      'readings',
      'field_surveys',
      'scopes',
      'price_books',
      'log',
      'steps',
      'search_words',
    ])
      expect(tableNames()).toContain(JSON.stringify({ name }))
  })

  it('is left alone when it is opened again', () => {
    const backup = vi.fn<() => void>()
    migrate(db, { backup })
    inTransaction(db, (write) => run(write, "insert into settings (name, value) values ('operator', 'Ada')"))
    migrate(db, { backup })
    expect(backup).not.toHaveBeenCalled()
    expect(row(db, 'select value from settings')).toEqual({ value: 'Ada' })
  })

  it('has strict tables that refuse a value of another type', () => {
    migrate(db, { backup: () => undefined })
    const wrong = "insert into log (job_id, seq, at_ms, actor, event, hash) values ('j', 'one', 1, 'a', '{}', 'h')"
    expect(() => inTransaction(db, (write) => run(write, wrong))).toThrow('cannot store TEXT value in INTEGER column')
  })
})

describe('an older library', () => {
  const steps = [firstLibrary, 'create table later (id text primary key) strict']

  beforeEach(() => migrate(db, { backup: () => undefined, steps: [firstLibrary] }))

  it('of the first version gets a place for outlines and narration and keeps its rows', () => {
    inTransaction(db, (write) => run(write, "insert into settings (name, value) values ('operator', 'Ada')"))
    const backup = vi.fn<() => void>()
    migrate(db, { backup })
    expect(backup).toHaveBeenCalledTimes(1)
    expect(versionOf(db)).toBe(allSteps)
    expect(row(db, 'select value from settings')).toEqual({ value: 'Ada' })
    for (const table of ['outlines', 'narrations', 'draft_decisions']) {
      expect(rows(db, `select * from ${table}`)).toEqual([])
    }
  })

  it('keeps its photos and files, which are no stills and have no description yet, and gets room for videos', () => {
    inTransaction(db, (write) => {
      run(write, "insert into jobs values ('j', '1', '1', 'one', 0, 0, '{}', '{}', null)")
      run(write, "insert into photos values ('p', 'j', 1, 'aa', 'aa-1.jpg', null, '{}', '{}', 'ready', 0)")
      run(write, "insert into attachments values ('a', 'j', 'bb', 'bb-1.pdf', '{}', 'PDF document', '', 0)")
    })
    migrate(db, { backup: () => undefined })
    expect(rows(db, 'select id, stored_name, still from photos')).toEqual([
      { id: 'p', stored_name: 'aa-1.jpg', still: null },
    ])
    expect(rows(db, 'select id, tags from attachments')).toEqual([{ id: 'a', tags: '{}' }])
    expect(rows(db, 'select * from videos')).toEqual([])
  })

  it('of the second version, with a job in it, gets a place for images under the plan and loses nothing', () => {
    migrate(db, { backup: () => undefined, steps: [firstLibrary, outlines] })
    const job = aStoredJob(db, aJob())
    inTransaction(db, (write) => {
      const outline = "insert into outlines (id, job_id, name, data) values ('o', :id, 'Main roof', '{}')"
      run(write, outline, { id: job.id })
      run(write, "insert into cameras values ('c', :id, 'Example', 'One', '', '{}')", { id: job.id })
    })
    const before = ['cameras', 'outlines', 'log', 'steps'].map((name) => rows(db, `select * from ${name}`))
    migrate(db, { backup: () => undefined })
    expect(versionOf(db)).toBe(allSteps)
    expect(['cameras', 'outlines', 'log', 'steps'].map((name) => rows(db, `select * from ${name}`))).toEqual(before)
    expect(findJob(db, job.id)?.job).toEqual(job)
    expect(planImageTable.list(db, job.id)).toEqual([])
    const image = aPlanImage()
    inTransaction(db, (write) =>
      recordEdit(write, job.id, {
        actor: 'Ada',
        atMs: 2,
        summary: 'Lay',
        writes: [{ record: 'plan-image', id: image.id, after: image }],
      }),
    )
    expect(planImageTable.list(db, job.id)).toEqual([image])
    expect(findChainBreak(wholeLog(db, job.id))).toBeNull()
  })

  it('gets a place for assessments and keeps its rows', () => {
    inTransaction(db, (write) => run(write, "insert into settings (name, value) values ('operator', 'Ada')"))
    migrate(db, { backup: () => undefined })
    expect(row(db, 'select value from settings')).toEqual({ value: 'Ada' })
    expect(rows(db, 'select * from assessments')).toEqual([])
  })

  it('of the second version gets a place for field surveys and keeps its rows', () => {
    migrate(db, { backup: () => undefined, steps: [firstLibrary, outlines] })
    inTransaction(db, (write) => run(write, "insert into settings (name, value) values ('operator', 'Ada')"))
    const backup = vi.fn<() => void>()
    migrate(db, { backup })
    expect(backup).toHaveBeenCalledTimes(1)
    expect(row(db, 'select value from settings')).toEqual({ value: 'Ada' })
    expect(rows(db, 'select * from field_surveys')).toEqual([])
  })

  it('is backed up as it stands before anything changes', () => {
    const backup = vi.fn<() => void>(() => {
      expect(versionOf(db)).toBe(1)
      expect(tableNames()).not.toContain(JSON.stringify({ name: 'later' }))
    })
    migrate(db, { backup, steps })
    expect(backup).toHaveBeenCalledTimes(1)
    expect(versionOf(db)).toBe(2)
    expect(tableNames()).toContain(JSON.stringify({ name: 'later' }))
  })

  it('stays as it was when the backup fails', () => {
    const backup = () => {
      throw new Error('The disk is full.')
    }
    expect(() => migrate(db, { backup, steps })).toThrow('The disk is full.')
    expect(versionOf(db)).toBe(1)
    expect(tableNames()).not.toContain(JSON.stringify({ name: 'later' }))
  })

  it('stays as it was when a later step fails: all steps or none', () => {
    expect(() => migrate(db, { backup: () => undefined, steps: [...steps, 'this is no SQL'] })).toThrow('syntax error')
    expect(versionOf(db)).toBe(1)
    expect(tableNames()).not.toContain(JSON.stringify({ name: 'later' }))
  })
})

describe('photos that were there before changes were counted', () => {
  it('keep everything, and count from the next change on', () => {
    migrate(db, { backup: () => undefined, steps: [firstLibrary] })
    inTransaction(db, (write) => {
      run(
        write,
        "insert into jobs (id, number, number_key, folder, created_at_ms, changed_at_ms, sheet, frame) values ('j', '1', '1', 'f', 1, 1, '{}', '{}')",
      )
      for (const [id, number] of [
        ['p', 1],
        ['q', 2],
      ] as const)
        run(
          write,
          "insert into photos (id, job_id, number, sha256, stored_name, file, tags, preview, taken_in_at_ms) values (:id, 'j', :number, :id, 's', '{}', '{}', 'ready', 1)",
          { id, number },
        )
    })
    migrate(db, { backup: () => undefined })
    expect(rows(db, 'select id, changed_in, brightness from photos order by number')).toEqual([
      { id: 'p', changed_in: 0, brightness: null },
      { id: 'q', changed_in: 0, brightness: null },
    ])
    inTransaction(db, (write) => run(write, `update photos set tags = '{"caption":"x"}' where id = 'q'`))
    expect(rows(db, 'select id, changed_in from photos order by number')).toEqual([
      { id: 'p', changed_in: 0 },
      { id: 'q', changed_in: 1 },
    ])
    expect(row(db, 'select revision from jobs')).toEqual({ revision: 1 })
  })
})

describe('a database that this program cannot use', () => {
  it('is refused when a newer program wrote it, before anything changes', () => {
    migrate(db, { backup: () => undefined })
    db.connection.pragma('user_version = 99')
    const backup = vi.fn<() => void>()
    expect(failureOf(() => migrate(db, { backup }))).toMatchObject({ code: 'newer-library' })
    expect(backup).not.toHaveBeenCalled()
    expect(versionOf(db)).toBe(99)
  })

  it("is refused when it is somebody else's: nothing is added to it", () => {
    db.connection.exec('create table recipes (id integer primary key)')
    expect(failureOf(() => migrate(db, { backup: () => undefined }))).toMatchObject({ code: 'damaged-library' })
    expect(tableNames()).toEqual([JSON.stringify({ name: 'recipes' })])
  })

  it('is refused when it is no database', () => {
    const other = join(folder, 'other.db')
    writeFileSync(other, 'Not a database, but long enough to be looked at as one.'.repeat(50))
    expect(() => connect(other)).toThrow('file is not a database')
  })
})

describe('a connection', () => {
  it('is set up for evidence: write-ahead log, every commit synced, foreign keys', () => {
    expect(db.connection.pragma('journal_mode', { simple: true })).toBe('wal')
    // 2 is FULL (SQLite documentation, PRAGMA synchronous).
    expect(db.connection.pragma('synchronous', { simple: true })).toBe(2)
    expect(db.connection.pragma('foreign_keys', { simple: true })).toBe(1)
  })

  it('writes all of a transaction or, when it throws, nothing', () => {
    migrate(db, { backup: () => undefined })
    const add = (name: string) => `insert into settings (name, value) values ('${name}', '1')`
    expect(() =>
      inTransaction(db, (write) => {
        run(write, add('first'))
        throw new Error('Stop.')
      }),
    ).toThrow('Stop.')
    expect(() => inTransaction(db, (write) => Promise.resolve(run(write, add('second'))))).toThrow(
      'cannot wait for a promise',
    )
    expect(rows(db, 'select name from settings')).toEqual([])
    inTransaction(db, (write) => run(write, add('third')))
    expect(rows(db, 'select name from settings')).toEqual([{ name: 'third' }])
  })
})
