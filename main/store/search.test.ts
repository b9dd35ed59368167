import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { aFacet, aFinding, aJob, aPhoto } from '../../tests/builders/records.ts'
import { anEmptyStore, aStoredJob, aStoredPhoto } from '../../tests/builders/store.ts'
import { inTransaction, rows, type ReadDb } from './database.ts'
import { recordEdit, undoStep, type Write } from './record-edits.ts'
import { findWords, indexWords } from './search.ts'

const author = { actor: 'Ada', atMs: 1_000 }
const labels = (db: ReadDb, text: string, jobId: string | null = null) =>
  findWords(db, { text, jobId, limit: 50 }).map((hit) => hit.label)
const edit = (db: ReadDb, jobId: string, writes: readonly Write[]) =>
  inTransaction(db, (write) => recordEdit(write, jobId, { ...author, summary: 'Edit', writes }))

function captioned(...captions: readonly string[]) {
  const db = anEmptyStore()
  const job = aStoredJob(db)
  const photos = captions.map((caption, i) =>
    aStoredPhoto(db, job, aPhoto({ number: i + 1, tags: { caption }, file: { fileName: `DSC${i}.JPG` } })),
  )
  return { db, job, photos }
}

describe('what can be found', () => {
  it('are jobs by number, people, place and claim', () => {
    const db = anEmptyStore()
    const job = aStoredJob(
      db,
      aJob({ number: '2026-0042', sheet: { owner: { name: 'Zoë Example' }, contacts: [{ name: 'Neighbour Quill' }] } }),
    )
    for (const text of ['2026-0042', 'Zoe', 'quill'])
      expect(findWords(db, { text, jobId: null, limit: 5 })).toMatchObject([
        { jobId: job.id, jobNumber: '2026-0042', kind: 'job', id: job.id, label: '2026-0042' },
      ])
  })

  it('are photos by number, caption and file name; findings by their words; facets by letter and name', () => {
    const { db, job } = captioned('Broken tile at the chimney')
    const finding = aFinding({ number: 3, observation: 'Mortar cracked', placeWords: 'left of the door' })
    const facet = aFacet({ letter: 'Q', name: 'above the porch' })
    edit(db, job.id, [
      { record: 'finding', id: finding.id, after: finding },
      { record: 'facet', id: facet.id, after: facet },
    ])
    expect(labels(db, 'chimney')).toEqual(['P-001'])
    expect(labels(db, 'P-001')).toEqual(['P-001'])
    expect(labels(db, 'dsc0')).toEqual(['P-001'])
    expect(labels(db, 'mortar door')).toEqual(['F-3'])
    expect(labels(db, 'porch')).toEqual(['Facet Q'])
  })

  it('shows the words round the match', () => {
    const { db } = captioned(`${'far '.repeat(40)}needle${' away'.repeat(40)}`)
    const [hit] = findWords(db, { text: 'needle', jobId: null, limit: 5 })
    expect(hit?.excerpt).toContain('needle')
    expect(hit?.excerpt.length).toBeLessThan(150)
  })
})

describe('how words are matched', () => {
  it('without accents and in any case, from either side', () => {
    const { db } = captioned('Café on the Façade', 'Zurich cafe', 'ÉGLISE')
    expect(labels(db, 'cafe').toSorted()).toEqual(['P-001', 'P-002'])
    expect(labels(db, 'CAFÉ').toSorted()).toEqual(['P-001', 'P-002'])
    expect(labels(db, 'cafe\u0301').toSorted()).toEqual(['P-001', 'P-002'])
    expect(labels(db, 'eglise')).toEqual(['P-003'])
  })

  it('in Arabic and other scripts, also by their beginning', () => {
    const { db } = captioned('قرميد مكسور فوق الباب', '屋根 瓦', 'черепица')
    expect(labels(db, 'مكسور')).toEqual(['P-001'])
    expect(labels(db, 'قرم')).toEqual(['P-001'])
    expect(labels(db, '瓦')).toEqual(['P-002'])
    expect(labels(db, 'ЧЕРЕП')).toEqual(['P-003'])
  })

  it('all of them, in any order; the last one may be unfinished, the others not', () => {
    const { db } = captioned('ridge tile slipped', 'ridge vent', 'tiled ridges')
    expect(labels(db, 'slipped ridge')).toEqual(['P-001'])
    expect(labels(db, 'ridge ti')).toEqual(['P-001'])
    expect(labels(db, 'ridge').toSorted()).toEqual(['P-001', 'P-002', 'P-003'])
    expect(labels(db, 'rid tile')).toEqual([])
    expect(labels(db, 'gutter')).toEqual([])
  })

  it('in one job or in all', () => {
    const { db, job } = captioned('ridge')
    const other = aStoredJob(db)
    aStoredPhoto(db, other, aPhoto({ number: 9, tags: { caption: 'ridge' } }))
    expect(labels(db, 'ridge').toSorted()).toEqual(['P-001', 'P-009'])
    expect(labels(db, 'ridge', job.id)).toEqual(['P-001'])
    expect(findWords(db, { text: 'ridge', jobId: null, limit: 1 })).toHaveLength(1)
  })
})

describe('quotes and operators in what is typed', () => {
  it.each([
    '"',
    '""',
    "'",
    '*',
    'a*b',
    'AND',
    'NOT',
    'OR OR',
    'NEAR(a b, 2)',
    'words:tile',
    '-tile',
    '^tile',
    '(',
    ')',
    '{a b}',
    '+',
    ';--',
    '%',
    '\u0000',
    '😀',
    ' ',
  ])('%j do no harm', (text) => {
    const { db } = captioned('tile')
    expect(Array.isArray(labels(db, text))).toBe(true)
    expect(labels(db, 'tile')).toEqual(['P-001'])
  })

  it('are plain words where they are words', () => {
    const { db } = captioned('tile and NOT mortar', 'nothing')
    expect(labels(db, 'NOT mortar')).toEqual(['P-001'])
    expect(labels(db, '"tile" AND "mortar')).toEqual(['P-001'])
  })

  it('of any kind never fail, and what was written is found by the words in it', () => {
    const { db } = captioned()
    const job = aStoredJob(db)
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 20 }), fc.stringMatching(/^[a-z]{4,8}$/), (text, word) => {
        inTransaction(db, (write) =>
          indexWords(write, job.id, { kind: 'photo', id: 'one', label: 'P-1', words: [text, word] }),
        )
        expect(Array.isArray(labels(db, text))).toBe(true)
        expect(labels(db, word)).toContain('P-1')
      }),
      { numRuns: 200 },
    )
  })
})

describe('what is no longer so', () => {
  it('is not found: a changed caption, a removed finding, a facet that was taken back', () => {
    const { db, job, photos } = captioned('before')
    const [photo] = photos
    edit(db, job.id, [{ record: 'photo', id: photo?.id ?? '', after: { ...photo?.tags, caption: 'after' } }])
    expect([labels(db, 'before'), labels(db, 'after')]).toEqual([[], ['P-001']])

    const finding = aFinding({ number: 1, observation: 'cracked' })
    edit(db, job.id, [{ record: 'finding', id: finding.id, after: finding }])
    expect(labels(db, 'cracked')).toEqual(['F-1'])
    edit(db, job.id, [{ record: 'finding', id: finding.id, after: null }])
    expect(labels(db, 'cracked')).toEqual([])

    const facet = aFacet({ letter: 'Q', name: 'porch' })
    edit(db, job.id, [{ record: 'facet', id: facet.id, after: facet }])
    inTransaction(db, (write) => undoStep(write, job.id, author))
    expect(labels(db, 'porch')).toEqual([])
    inTransaction(db, (write) => undoStep(write, job.id, author))
    expect(labels(db, 'cracked')).toEqual(['F-1'])
  })

  it('leaves nothing behind in the index, however often a record changes', () => {
    const { db, job } = captioned()
    const facet = aFacet({ letter: 'Q' })
    for (let n = 0; n < 20; n++)
      edit(db, job.id, [{ record: 'facet', id: facet.id, after: { ...facet, name: `name ${n}` } }])
    expect(rows(db, "select count(*) as n from search_words where kind = 'facet'")).toEqual([{ n: 1 }])
    edit(db, job.id, [{ record: 'facet', id: facet.id, after: null }])
    expect(rows(db, "select count(*) as n from search_words where kind = 'facet'")).toEqual([{ n: 0 }])
    expect(rows(db, "select count(*) as n from search_rows where kind = 'facet'")).toEqual([{ n: 0 }])
  })
})
