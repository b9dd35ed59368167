import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { AppFailure } from '../../app/contract/app-error.ts'
import { connect, inTransaction, row, rows, run, type ReadDb } from './database.ts'
import { migrate } from './migrate.ts'
import { firstLibrary } from './migrations/0001-first-library.ts'

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

describe('a new library', () => {
  it('gets its tables over an empty file, without a backup of nothing', () => {
    const backup = vi.fn<() => void>()
    migrate(db, { backup })
    expect(backup).not.toHaveBeenCalled()
    expect(versionOf(db)).toBe(3)
    for (const name of ['jobs', 'photos', 'outlines', 'facets', 'findings', 'readings', 'log', 'steps', 'search_words'])
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

  it('of the first version gets a place for outlines and keeps its rows', () => {
    inTransaction(db, (write) => run(write, "insert into settings (name, value) values ('operator', 'Ada')"))
    const backup = vi.fn<() => void>()
    migrate(db, { backup })
    expect(backup).toHaveBeenCalledTimes(1)
    expect(versionOf(db)).toBe(3)
    expect(row(db, 'select value from settings')).toEqual({ value: 'Ada' })
    expect(rows(db, 'select * from outlines')).toEqual([])
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
