import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { findChainBreak } from '../../app/evidence/log-chain.ts'
import { aFacet, aFinding, aPhoto, aReading } from '../../tests/builders/records.ts'
import { anEmptyStore, aStoredJob, aStoredPhoto } from '../../tests/builders/store.ts'
import { inTransaction, rows, type ReadDb } from './database.ts'
import { findJob } from './jobs.ts'
import { lastEntry, wholeLog } from './log.ts'
import { historyState, recordEdit, redoStep, undoStep, type Write } from './record-edits.ts'
import { listCameras } from './records/cameras.ts'
import { listPhotos } from './records/photos.ts'
import { facetTable, findingTable, readingTable } from './records/tables.ts'

const author = { actor: 'Ada', atMs: 1_000 }
const facets = ['A', 'B', 'C'].map((letter) => aFacet({ letter }))
const findings = [1, 2, 3].map((number) => aFinding({ number }))
const readings = [1, 2].map((number) => aReading({ number }))
const pick = fc.nat(5)
const words = fc.constantFrom('', 'ridge', 'slipped tile', 'café', 'قرميد', '"quoted" AND NOT')

/** One write of a record of any kind; it may repeat what is there, or ask for a letter that is taken. */
const aWrite = fc.oneof(
  fc
    .record({ at: pick, letter: fc.constantFrom('A', 'B', 'C', 'D'), name: words })
    .map(({ at, ...set }) => ({ kind: 'facet' as const, at, set })),
  fc.record({ at: pick, observation: words }).map(({ at, ...set }) => ({ kind: 'finding' as const, at, set })),
  fc.record({ at: pick, liftIn: fc.nat(4) }).map(({ at, ...set }) => ({ kind: 'reading' as const, at, set })),
  fc.record({ at: pick }).map(({ at }) => ({ kind: 'facet' as const, at, set: null })),
  fc.record({ at: pick }).map(({ at }) => ({ kind: 'finding' as const, at, set: null })),
  fc.record({ at: pick }).map(({ at }) => ({ kind: 'reading' as const, at, set: null })),
  fc.record({ at: pick, caption: words }).map(({ at, ...set }) => ({ kind: 'photo' as const, at, set })),
  fc.record({ at: pick, correctionMs: fc.nat(3) }).map(({ at, ...set }) => ({ kind: 'camera' as const, at, set })),
  fc.record({ upAzimuthDeg: fc.nat(3) }).map((set) => ({ kind: 'frame' as const, at: 0, set })),
  fc.record({ notes: words }).map((set) => ({ kind: 'sheet' as const, at: 0, set })),
)
type AWrite = typeof aWrite extends fc.Arbitrary<infer T> ? T : never

const action = fc.oneof(
  {
    arbitrary: fc.array(aWrite, { minLength: 1, maxLength: 4 }).map((writes) => ({ do: 'edit' as const, writes })),
    weight: 4,
  },
  { arbitrary: fc.constant({ do: 'undo' as const }), weight: 2 },
  { arbitrary: fc.constant({ do: 'redo' as const }), weight: 1 },
)

function aBook() {
  const db = anEmptyStore()
  const job = aStoredJob(db)
  const photos = [1, 2].map((number) => {
    const file = { camera: { make: 'Example', model: 'Field 1', serial: String(number) } }
    return aStoredPhoto(db, job, aPhoto({ number, file }))
  })
  const chosen = <T>(list: readonly T[], at: number): T => list[at % list.length] ?? expect.unreachable('an empty list')
  const toWrite = ({ kind, at, set }: AWrite): Write => {
    const owners = { facet: facets, finding: findings, reading: readings, photo: photos }
    switch (kind) {
      case 'frame':
        return { record: kind, id: job.id, after: { ...job.frame, ...set } }
      case 'sheet':
        return { record: kind, id: job.id, after: { ...job.sheet, ...set } }
      case 'camera':
        return { record: kind, id: chosen(photos, at).cameraId ?? '', after: { why: '', ...set } }
      case 'photo':
        return { record: kind, id: chosen(photos, at).id, after: { ...chosen(photos, at).tags, ...set } }
      case 'facet':
      case 'finding':
      case 'reading': {
        const record = chosen<{ id: string }>(owners[kind], at)
        return { record: kind, id: record.id, after: set === null ? null : { ...record, ...set } }
      }
    }
  }
  return {
    db,
    job,
    edit: (writes: readonly AWrite[]) =>
      inTransaction(db, (write) =>
        recordEdit(write, job.id, { ...author, summary: 'Edit', writes: writes.map(toWrite) }),
      ),
    undo: () => inTransaction(db, (write) => undoStep(write, job.id, author)),
    redo: () => inTransaction(db, (write) => redoStep(write, job.id, author)),
    entries: () => lastEntry(db, job.id)?.seq ?? 0,
    state: () => everything(db, job.id),
  }
}

/** Every record that can be edited, and what a search would find, as a value to compare. */
function everything(db: ReadDb, jobId: string) {
  return {
    job: findJob(db, jobId),
    facets: facetTable.list(db, jobId),
    findings: findingTable.list(db, jobId),
    readings: readingTable.list(db, jobId),
    photos: listPhotos(db, jobId),
    cameras: listCameras(db, jobId),
    searched: rows(db, 'select kind, record_id, label, words from search_words order by kind, record_id, words'),
  }
}

/** Edits; answers whether it changed anything. Taken letters are refused by the database, which is as good as no edit. */
function tryEdit(book: ReturnType<typeof aBook>, writes: readonly AWrite[]): boolean {
  const before = { state: book.state(), entries: book.entries(), history: historyState(book.db, book.job.id) }
  let changed = false
  try {
    changed = book.edit(writes) !== null
  } catch (cause) {
    expect(String(cause)).toContain('UNIQUE')
  }
  if (!changed) {
    const after = { state: book.state(), entries: book.entries(), history: historyState(book.db, book.job.id) }
    expect(after).toEqual(before)
  }
  return changed
}

describe('any sequence of edits', () => {
  it('taken back step by step leads through every state to the first, and done again to the last', () => {
    fc.assert(
      fc.property(fc.array(fc.array(aWrite, { minLength: 1, maxLength: 4 }), { maxLength: 12 }), (edits) => {
        const book = aBook()
        const states = [book.state()]
        for (const writes of edits) if (tryEdit(book, writes)) states.push(book.state())
        for (const state of states.slice(0, -1).toReversed()) {
          expect(book.undo()).toBe('Edit')
          expect(book.state()).toEqual(state)
        }
        expect(book.undo()).toBeNull()
        for (const state of states.slice(1)) {
          expect(book.redo()).toBe('Edit')
          expect(book.state()).toEqual(state)
        }
        expect(book.redo()).toBeNull()
        expect(book.entries()).toBe(3 * (states.length - 1))
        expect(findChainBreak(wholeLog(book.db, book.job.id))).toBeNull()
        book.db.connection.close()
      }),
      { numRuns: 60 },
    )
  })

  it('mixed with undo and redo behaves like a list of states and a place in it', () => {
    fc.assert(
      fc.property(fc.array(action, { maxLength: 25 }), (actions) => {
        const book = aBook()
        let states = [book.state()]
        let at = 0
        let entries = 0
        for (const one of actions) {
          if (one.do === 'edit' && tryEdit(book, one.writes)) {
            states = [...states.slice(0, at + 1), book.state()]
            at += 1
            entries += 1
          } else if (one.do === 'undo' && book.undo() !== null) {
            at -= 1
            entries += 1
          } else if (one.do === 'redo' && book.redo() !== null) {
            at += 1
            entries += 1
          }
          expect(book.state()).toEqual(states[at])
          expect(book.entries()).toBe(entries)
          expect(historyState(book.db, book.job.id)).toEqual({
            undo: at === 0 ? null : 'Edit',
            redo: at === states.length - 1 ? null : 'Edit',
          })
        }
        expect(findChainBreak(wholeLog(book.db, book.job.id))).toBeNull()
        book.db.connection.close()
      }),
      { numRuns: 60 },
    )
  })
})
