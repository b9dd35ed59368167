import { describe, expect, it } from 'vitest'
import { type LogEntry, logEntrySchema } from '../../app/evidence/log-entry.ts'
import { entryFits, entryWords } from './entry-words.ts'

const digest = 'a'.repeat(64)
const entry = (event: unknown, actor = 'R. Vance'): LogEntry =>
  logEntrySchema.parse({ seq: 1, atMs: 0, actor, event, previous: null, hash: digest })

const taken = entry({
  type: 'photo-taken-in',
  photoId: 'p',
  number: 7,
  fileName: 'DSC_0007.JPG',
  sha256: digest,
  bytes: 4_600_000,
})
const edited = entry({
  type: 'edited',
  summary: 'Tag 3 photos',
  changes: [{ record: 'photo', id: 'p', before: digest, after: digest }],
})
const overruled = entry({ type: 'problem-overruled', problem: 'F-3 has no close-up', reason: 'Not reachable' })

describe('entryWords', () => {
  it('says what happened in one sentence', () => {
    expect(entryWords(taken.event)).toBe('P-007 taken in: DSC_0007.JPG, 4.6 MB.')
    expect(entryWords(edited.event)).toBe('Tag 3 photos.')
    expect(entryWords(overruled.event)).toBe('Let stand: F-3 has no close-up. Reason: Not reachable.')
  })
})

describe('entryFits', () => {
  it('keeps to a group', () => {
    const of = (group: 'all' | 'intake' | 'edits' | 'packet') =>
      [taken, edited, overruled].filter((one) => entryFits(one, { group, text: '' }))
    expect(of('all')).toHaveLength(3)
    expect(of('intake')).toEqual([taken])
    expect(of('edits')).toEqual([edited])
    expect(of('packet')).toEqual([overruled])
  })

  it('wants every word, in the sentence or the name, in any case', () => {
    expect(entryFits(taken, { group: 'all', text: 'dsc vance' })).toBe(true)
    expect(entryFits(taken, { group: 'all', text: 'dsc nobody' })).toBe(false)
  })
})
