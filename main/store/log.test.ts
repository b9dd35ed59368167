import { describe, expect, it } from 'vitest'
import { findChainBreak } from '../../app/evidence/log-chain.ts'
import type { LogEvent } from '../../app/evidence/log-entry.ts'
import { anEmptyStore, aStoredJob } from '../../tests/builders/store.ts'
import { inTransaction, run, type ReadDb } from './database.ts'
import { appendLog, lastEntry, logPage, wholeLog } from './log.ts'

const overruled = (reason: string): LogEvent => ({ type: 'problem-overruled', problem: 'Dark photo', reason })

function append(db: ReadDb, jobId: string, reasons: readonly string[]): void {
  inTransaction(db, (write) => {
    for (const [i, reason] of reasons.entries())
      appendLog(write, jobId, { actor: 'Ada Ø أدا 😀', atMs: i, event: overruled(reason) })
  })
}

describe('the evidence log of a job', () => {
  it('is a whole chain when it is read back, whatever people wrote', () => {
    const db = anEmptyStore()
    const { id } = aStoredJob(db)
    append(db, id, ['', 'plain', 'quote " and \\ and \u0000', 'قرميد', '😀\u2028', '\ud800 alone'])
    const entries = [...wholeLog(db, id)]
    expect(entries.map((entry) => entry.seq)).toEqual([1, 2, 3, 4, 5, 6])
    expect(findChainBreak(entries)).toBeNull()
    expect(lastEntry(db, id)).toEqual(entries.at(-1))
  })

  it('counts for itself in each job', () => {
    const db = anEmptyStore()
    const [one, two] = [aStoredJob(db), aStoredJob(db)]
    append(db, one.id, ['a', 'b'])
    append(db, two.id, ['c'])
    expect([...wholeLog(db, two.id)].map((entry) => entry.seq)).toEqual([1])
    expect(findChainBreak(wholeLog(db, one.id))).toBeNull()
    expect(findChainBreak(wholeLog(db, two.id))).toBeNull()
  })

  it('comes in pages, oldest first', () => {
    const db = anEmptyStore()
    const { id } = aStoredJob(db)
    append(db, id, ['a', 'b', 'c', 'd', 'e'])
    expect(logPage(db, id, { afterSeq: 0, limit: 2 }).map((entry) => entry.seq)).toEqual([1, 2])
    expect(logPage(db, id, { afterSeq: 2, limit: 10 }).map((entry) => entry.seq)).toEqual([3, 4, 5])
    expect(logPage(db, id, { afterSeq: 5, limit: 10 })).toEqual([])
  })

  it('is empty before anything happened', () => {
    const db = anEmptyStore()
    const { id } = aStoredJob(db)
    expect(lastEntry(db, id)).toBeNull()
    expect([...wholeLog(db, id)]).toEqual([])
  })

  it('can be added to and nothing else: the database itself refuses to change or delete an entry', () => {
    const db = anEmptyStore()
    const { id } = aStoredJob(db)
    append(db, id, ['a', 'b'])
    for (const sql of [
      "update log set actor = 'Nobody'",
      'update log set hash = hash where seq = 1',
      'delete from log where seq = 2',
      'delete from log',
    ])
      expect(() => inTransaction(db, (write) => run(write, sql))).toThrow('the evidence log is append-only')
    // Replacing a row is neither an update nor a delete to SQLite's triggers; a gap would be an entry that never was.
    const again =
      "insert or replace into log (job_id, seq, at_ms, actor, event, hash) values (:id, :seq, 0, 'x', '{}', 'h')"
    for (const seq of [0, 1, 2, 4])
      expect(() => inTransaction(db, (write) => run(write, again, { id, seq }))).toThrow(
        'the evidence log is append-only',
      )
    expect(findChainBreak(wholeLog(db, id))).toBeNull()
  })

  it('names the entry when someone takes the guards away and changes a stored value', () => {
    const db = anEmptyStore()
    const { id } = aStoredJob(db)
    append(db, id, ['a', 'b', 'c'])
    db.connection.exec('drop trigger log_is_append_only_update')
    db.connection.exec('update log set at_ms = at_ms + 1 where seq = 2')
    expect(findChainBreak(wholeLog(db, id))?.seq).toBe(2)
    db.connection.exec('update log set event = \'{"type":\' where seq = 2')
    expect(() => [...wholeLog(db, id)]).toThrow("The stored log entry 2 can't be read")
  })
})
