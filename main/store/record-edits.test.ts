import { describe, expect, it } from 'vitest'
import { findChainBreak } from '../../app/evidence/log-chain.ts'
import { aFacet, aFinding, aPhoto, aReading } from '../../tests/builders/records.ts'
import { anEmptyStore, aStoredJob, aStoredPhoto } from '../../tests/builders/store.ts'
import { inTransaction, row } from './database.ts'
import { findJob } from './jobs.ts'
import { lastEntry, wholeLog } from './log.ts'
import { historyState, recordEdit, redoStep, undoStep, type Write } from './record-edits.ts'
import { findPhoto } from './records/photos.ts'
import { facetTable, findingTable } from './records/tables.ts'

const author = { actor: 'Ada', atMs: 1_000 }

/** A store with one job, and the three ways to change it, each in a transaction of its own. */
function aDesk() {
  const db = anEmptyStore()
  const job = aStoredJob(db)
  return {
    db,
    job,
    edit: (summary: string, writes: readonly Write[]) =>
      inTransaction(db, (write) => recordEdit(write, job.id, { ...author, summary, writes })),
    undo: () => inTransaction(db, (write) => undoStep(write, job.id, author)),
    redo: () => inTransaction(db, (write) => redoStep(write, job.id, author)),
    letters: () => facetTable.list(db, job.id).map((facet) => facet.letter),
    entries: () => lastEntry(db, job.id)?.seq ?? 0,
  }
}

const written = (facet: ReturnType<typeof aFacet>): Write => ({ record: 'facet', id: facet.id, after: facet })
const removed = (facet: ReturnType<typeof aFacet>): Write => ({ record: 'facet', id: facet.id, after: null })

describe('one edit', () => {
  it('is one entry of the log, by digest before and after, and one step of undo', () => {
    const { db, job, edit } = aDesk()
    const facet = aFacet({ letter: 'A' })
    const entry = edit('Add facet A', [written(facet)])
    expect(entry).toMatchObject({
      seq: 1,
      actor: 'Ada',
      atMs: 1_000,
      event: { type: 'edited', summary: 'Add facet A' },
    })
    expect(entry?.event).toMatchObject({ changes: [{ record: 'facet', id: facet.id, before: null }] })
    expect(facetTable.get(db, { jobId: job.id, id: facet.id })).toEqual(facet)
    expect(historyState(db, job.id)).toEqual({ undo: 'Add facet A', redo: null })
  })

  it('that changes nothing logs nothing, also when it spells out or leaves out what is so by default', () => {
    const { db, job, edit, entries } = aDesk()
    const facet = aFacet()
    edit('Add', [written(facet)])
    expect(edit('Again', [written(facet)])).toBeNull()
    expect(edit('Nobody', [{ record: 'facet', id: 'nobody', after: null }])).toBeNull()
    expect(edit('Frame', [{ record: 'frame', id: job.id, after: { ...job.frame } }])).toBeNull()
    expect(edit('Frame', [{ record: 'frame', id: job.id, after: {} }])).toBeNull()
    expect(entries()).toBe(1)
    expect(historyState(db, job.id)).toEqual({ undo: 'Add', redo: null })
  })

  it('can be taken back when it was handed over without its defaults, or with fields that no record has', () => {
    const { edit, undo, redo, letters } = aDesk()
    const { inspected: _inspected, ...bare } = aFacet({ letter: 'A' })
    edit('Add', [{ record: 'facet', id: bare.id, after: { ...bare, colour: 'red' } }])
    expect(undo()).toBe('Add')
    expect(letters()).toEqual([])
    expect(redo()).toBe('Add')
    expect(letters()).toEqual(['A'])
  })

  it('that writes a record twice writes the last value, and is taken back whole', () => {
    const { db, job, edit, undo } = aDesk()
    const finding = aFinding({ observation: 'first' })
    const writes = ['second', 'third'].map((observation): Write => ({
      record: 'finding',
      id: finding.id,
      after: { ...finding, observation },
    }))
    edit('Add', [{ record: 'finding', id: finding.id, after: finding }])
    edit('Twice', writes)
    expect(findingTable.get(db, { jobId: job.id, id: finding.id })?.observation).toBe('third')
    expect(undo()).toBe('Twice')
    expect(findingTable.get(db, { jobId: job.id, id: finding.id })?.observation).toBe('first')
  })

  it('notes when the job changed, so that what it lacks is counted again', () => {
    const { db, job, edit } = aDesk()
    edit('Add', [written(aFacet())])
    expect(row(db, 'select changed_at_ms, lacks from jobs where id = :id', { id: job.id })).toEqual({
      changed_at_ms: 1_000,
      lacks: null,
    })
  })
})

describe('an edit that fails', () => {
  it('leaves no row, no entry and no step', () => {
    const { db, job, edit, entries } = aDesk()
    const facet = aFacet()
    const failing = () =>
      inTransaction(db, (write) => {
        recordEdit(write, job.id, { ...author, summary: 'Add', writes: [written(facet)] })
        throw new Error('The power went.')
      })
    expect(failing).toThrow('The power went.')
    expect(facetTable.list(db, job.id)).toEqual([])
    expect(entries()).toBe(0)
    expect(historyState(db, job.id)).toEqual({ undo: null, redo: null })
    expect(() =>
      edit('Two', [written(facet), { record: 'facet', id: 'other', after: { letter: 'no facet' } }]),
    ).toThrow('outline')
    expect(facetTable.list(db, job.id)).toEqual([])
    expect(entries()).toBe(0)
  })

  it('is one that gives two facets the same letter, or two findings the same number', () => {
    const { edit, letters, entries } = aDesk()
    edit('Add', [written(aFacet({ letter: 'A' }))])
    expect(() => edit('Same', [written(aFacet({ letter: 'A' }))])).toThrow('UNIQUE')
    const two = [aFinding({ number: 5 }), aFinding({ number: 5 })]
    expect(() =>
      edit(
        'Same',
        two.map((finding): Write => ({ record: 'finding', id: finding.id, after: finding })),
      ),
    ).toThrow('UNIQUE')
    expect(letters()).toEqual(['A'])
    expect(entries()).toBe(1)
  })

  it('is one that would take away what always stays: sheet, frame, photo, camera', () => {
    const { db, job, edit, entries } = aDesk()
    const photo = aStoredPhoto(db, job)
    for (const write of [
      { record: 'sheet', id: job.id, after: null },
      { record: 'frame', id: job.id, after: null },
      { record: 'photo', id: photo.id, after: null },
      { record: 'camera', id: photo.cameraId ?? '', after: null },
    ] as const)
      expect(() => edit('Remove', [write])).toThrow(/always|never|stays/)
    expect(entries()).toBe(0)
  })

  it('is one of a photo, camera or record that is not in the job: nothing is logged that did not happen', () => {
    const { db, edit, entries } = aDesk()
    const elsewhere = aStoredJob(db)
    const photo = aStoredPhoto(db, elsewhere)
    const facet = aFacet({ letter: 'A' })
    inTransaction(db, (write) =>
      recordEdit(write, elsewhere.id, { ...author, summary: 'Add', writes: [written(facet)] }),
    )
    expect(() => edit('Tag', [{ record: 'photo', id: photo.id, after: { caption: 'x' } }])).toThrow(
      'This photo is not in the job.',
    )
    expect(() => edit('Tag', [{ record: 'photo', id: 'nobody', after: {} }])).toThrow('This photo is not in the job.')
    expect(() => edit('Set', [{ record: 'camera', id: photo.cameraId ?? '', after: {} }])).toThrow(
      'This camera is not in the job.',
    )
    expect(() => edit('Take over', [written({ ...facet, letter: 'B' })])).toThrow(
      'Another job has a record of this identity.',
    )
    expect(findPhoto(db, photo.id)?.tags.caption).toBe('')
    expect(facetTable.list(db, elsewhere.id)).toEqual([facet])
    expect(entries()).toBe(0)
  })
})

describe('letters of facets', () => {
  it('are set free by a removal in the same step, whichever is written first, there and back', () => {
    for (const order of [0, 1]) {
      const { edit, undo, redo, letters, db, job } = aDesk()
      const [a, b] = [aFacet({ letter: 'A' }), aFacet({ letter: 'B' })]
      edit('Add', [written(a), written(b)])
      const writes = [removed(a), written({ ...b, letter: 'A' })]
      edit('B becomes A', order === 0 ? writes : writes.toReversed())
      expect(letters()).toEqual(['A'])
      undo()
      expect(facetTable.list(db, job.id)).toEqual([a, b])
      redo()
      expect(facetTable.list(db, job.id)).toEqual([{ ...b, letter: 'A' }])
    }
  })

  it('can be exchanged in one step, and back', () => {
    const { edit, undo, db, job } = aDesk()
    const [a, b] = [aFacet({ letter: 'A' }), aFacet({ letter: 'B' })]
    edit('Add', [written(a), written(b)])
    edit('Exchange', [written({ ...a, letter: 'B' }), written({ ...b, letter: 'A' })])
    expect(facetTable.list(db, job.id).map((facet) => facet.id)).toEqual([b.id, a.id])
    undo()
    expect(facetTable.list(db, job.id)).toEqual([a, b])
  })
})

describe('undo and redo', () => {
  it('answer null when there is nothing to take back or do again, and log nothing then', () => {
    const { undo, redo, entries } = aDesk()
    expect([undo(), redo()]).toEqual([null, null])
    expect(entries()).toBe(0)
  })

  it('take back the last step first, and do again in the order in which things were done', () => {
    const { edit, undo, redo, letters, db, job } = aDesk()
    for (const letter of ['A', 'B', 'C']) edit(`Add ${letter}`, [written(aFacet({ letter }))])
    expect([undo(), undo()]).toEqual(['Add C', 'Add B'])
    expect(historyState(db, job.id)).toEqual({ undo: 'Add A', redo: 'Add B' })
    expect(letters()).toEqual(['A'])
    expect([redo(), redo(), redo()]).toEqual(['Add B', 'Add C', null])
    expect(letters()).toEqual(['A', 'B', 'C'])
  })

  it('lose what was taken back as soon as something new is done, but not by an edit that changes nothing', () => {
    const { edit, undo, redo, db, job } = aDesk()
    const a = aFacet({ letter: 'A' })
    edit('Add A', [written(a)])
    edit('Add B', [written(aFacet({ letter: 'B' }))])
    undo()
    edit('Nothing', [written(a)])
    expect(historyState(db, job.id).redo).toBe('Add B')
    edit('Add C', [written(aFacet({ letter: 'C' }))])
    expect(historyState(db, job.id)).toEqual({ undo: 'Add C', redo: null })
    expect(redo()).toBeNull()
  })

  it('are entries of the log that name the entry they are about; nothing is taken out of the log', () => {
    const { edit, undo, redo, db, job } = aDesk()
    edit('Add', [written(aFacet())])
    undo()
    redo()
    const entries = [...wholeLog(db, job.id)]
    expect(entries.map((entry) => entry.event)).toMatchObject([
      { type: 'edited', summary: 'Add' },
      { type: 'undone', summary: 'Add', entry: 1 },
      { type: 'redone', summary: 'Add', entry: 1 },
    ])
    expect(findChainBreak(entries)).toBeNull()
  })

  it('refuse, and change nothing, where a record is no longer as the step left it', () => {
    const { edit, undo, db, job, entries } = aDesk()
    const [one, two] = [aReading(), aFacet({ letter: 'A' })]
    edit('Add both', [{ record: 'reading', id: one.id, after: one }, written(two)])
    inTransaction(db, (write) => facetTable.put(write, { jobId: job.id, id: two.id }, { ...two, letter: 'Z' }))
    expect(undo).toThrow(`"Add both" can't be taken back: the record has changed since.`)
    expect(facetTable.list(db, job.id)).toEqual([{ ...two, letter: 'Z' }])
    expect(entries()).toBe(1)
  })

  it('keep to their own job', () => {
    const { db, edit, undo, letters } = aDesk()
    const other = aStoredJob(db)
    edit('Add A', [written(aFacet({ letter: 'A' }))])
    inTransaction(db, (write) =>
      recordEdit(write, other.id, { ...author, summary: 'Elsewhere', writes: [written(aFacet({ letter: 'A' }))] }),
    )
    expect(undo()).toBe('Add A')
    expect(undo()).toBeNull()
    expect(letters()).toEqual([])
    expect(historyState(db, other.id).undo).toBe('Elsewhere')
    expect(findJob(db, other.id)).not.toBeNull()
  })

  it("change a photo's tags and nothing else about it", () => {
    const { db, job, edit, undo } = aDesk()
    const photo = aStoredPhoto(db, job, aPhoto({ tags: { caption: 'before' } }))
    const kept = findPhoto(db, photo.id)
    edit('Tag', [{ record: 'photo', id: photo.id, after: { ...photo.tags, caption: 'after', role: 'close' } }])
    expect(findPhoto(db, photo.id)).toEqual({ ...kept, tags: { ...photo.tags, caption: 'after', role: 'close' } })
    undo()
    expect(findPhoto(db, photo.id)).toEqual(kept)
  })
})
