import { describe, expect, it, vi } from 'vitest'
import { z } from 'zod'
import { aFacet, aFinding, aReading } from '../../tests/builders/records.ts'
import { anEmptyStore, aStoredJob, aStoredPhoto } from '../../tests/builders/store.ts'
import { nextNumber } from './counters.ts'
import { inTransaction, type ReadDb } from './database.ts'
import { allJobs, findJob, jobByNumber, jobTallies } from './jobs.ts'
import { lastEntry, logPage, wholeLog } from './log.ts'
import { listPackets } from './packets.ts'
import { recordEdit, redoStep, undoStep } from './record-edits.ts'
import { attachmentByHash, listAttachments } from './records/attachments.ts'
import { listCameras } from './records/cameras.ts'
import { findPhoto, listPhotos, photoByHash } from './records/photos.ts'
import { facetTable, findingTable, readingTable } from './records/tables.ts'
import { findWords } from './search.ts'

const author = { actor: 'Ada', atMs: 1_000 }
const stepSchema = z.array(z.object({ detail: z.string() }))

/** How SQLite goes about every statement that `work` prepares: the lines of its query plans, by statement. */
function plansOf(db: ReadDb, work: () => void): ReadonlyMap<string, readonly string[]> {
  const prepare = vi.spyOn(db.connection, 'prepare')
  work()
  const statements = new Set(prepare.mock.calls.map(([sql]) => sql))
  prepare.mockRestore()
  return new Map(
    [...statements].map((sql) => {
      const names = Object.fromEntries([...sql.matchAll(/:(\w+)/g)].map(([, name = '']) => [name, null]))
      const plan = stepSchema.parse(db.connection.prepare(`explain query plan ${sql}`).all(names))
      return [sql, plan.map((step) => step.detail)]
    }),
  )
}

/** Statements that read a whole table, or sort rows by hand that an index could give in order. */
function slowOnes(plans: ReadonlyMap<string, readonly string[]>, slow: RegExp): readonly string[] {
  return [...plans]
    .filter(([, plan]) => plan.some((line) => slow.test(line)))
    .map(([sql, plan]) => `${sql}: ${plan.join('; ')}`)
}

describe('queries of a large library', () => {
  it('go through an index for everything that is asked about one job or one record', () => {
    const db = anEmptyStore()
    const job = aStoredJob(db)
    const plans = plansOf(db, () => {
      const photo = aStoredPhoto(db, job)
      findJob(db, job.id)
      jobByNumber(db, job.number)
      listPhotos(db, job.id)
      findPhoto(db, photo.id)
      photoByHash(db, job.id, photo.file.sha256)
      listCameras(db, job.id)
      listAttachments(db, job.id)
      attachmentByHash(db, job.id, photo.file.sha256)
      listPackets(db, job.id)
      for (const table of [facetTable, findingTable, readingTable]) table.list(db, job.id)
      lastEntry(db, job.id)
      logPage(db, job.id, { afterSeq: 0, limit: 10 })
      expect([...wholeLog(db, job.id)]).toEqual([])
      inTransaction(db, (write) => {
        const [facet, finding, reading] = [
          aFacet(),
          aFinding({ number: nextNumber(write, job.id, 'finding') }),
          aReading(),
        ]
        recordEdit(write, job.id, {
          ...author,
          summary: 'Edit',
          writes: [
            { record: 'facet', id: facet.id, after: facet },
            { record: 'finding', id: finding.id, after: finding },
            { record: 'reading', id: reading.id, after: reading },
            { record: 'photo', id: photo.id, after: { ...photo.tags, caption: 'x' } },
          ],
        })
        undoStep(write, job.id, author)
        redoStep(write, job.id, author)
      })
    })
    expect(plans.size).toBeGreaterThan(20)
    expect(slowOnes(plans, /^SCAN (?!search_words VIRTUAL TABLE INDEX 0:=)/)).toEqual([])
  })

  it('give photos, findings, facets, readings and log entries in order without sorting them', () => {
    const db = anEmptyStore()
    const job = aStoredJob(db)
    const plans = plansOf(db, () => {
      listPhotos(db, job.id)
      for (const table of [facetTable, findingTable, readingTable]) table.list(db, job.id)
      expect([...wholeLog(db, job.id)]).toEqual([])
    })
    expect(plans.size).toBe(5)
    expect(slowOnes(plans, /TEMP B-TREE/)).toEqual([])
  })

  it('read the table of jobs once for the list of jobs, and count the rest through indexes', () => {
    const db = anEmptyStore()
    const plans = plansOf(db, () => {
      allJobs(db)
      jobTallies(db)
    })
    expect(slowOnes(plans, /^SCAN (?!jobs)/)).toEqual([])
    expect([...plans.values()].flat().filter((line) => line.includes('USING COVERING INDEX'))).toHaveLength(4)
  })

  it('search words through the full-text index and name their jobs by key', () => {
    const db = anEmptyStore()
    const plans = plansOf(db, () => findWords(db, { text: 'ridge', jobId: null, limit: 5 }))
    const [plan = []] = [...plans.values()]
    expect(plan.some((line) => /^SCAN w VIRTUAL TABLE INDEX \d+:M/.test(line))).toBe(true)
    expect(plan.some((line) => line.startsWith('SEARCH j USING INDEX'))).toBe(true)
  })
})
