import { describe, expect, it } from 'vitest'
import { jobSnapshotSchema } from '../../app/contract/jobs.ts'
import { emptyJobSheet } from '../../app/job/sheet.ts'
import { withTagsAtOnce, withUndoAtOnce } from './shown-at-once.ts'
import { testPhoto } from './test-photo.ts'

const snapshot = jobSnapshotSchema.parse({
  job: { id: 'j', number: '1', createdAtMs: 0, sheet: emptyJobSheet(), frame: {} },
  outlines: [],
  markups: [],
  facets: [],
  photos: [testPhoto('a', { facetId: 'A' }), testPhoto('b', {})],
  videos: [],
  cameras: [],
  findings: [],
  readings: [],
  planImages: [],
  narrations: [],
  draftDecisions: [],
  survey: {},
  weather: { stations: [], sources: [], choices: {} },
  attachments: [],
  packets: [],
  history: { undo: null, redo: null },
  log: { entries: 0, headHash: '' },
})
const tags = (photos: typeof snapshot.photos) => photos.map((photo) => [photo.tags.facetId, photo.tags.role])

describe('withTagsAtOnce', () => {
  it('changes only the given tags of the given photos', () => {
    const after = withTagsAtOnce(snapshot, { photoIds: ['a'], set: { role: 'close' } })
    expect(tags(after.photos)).toEqual([
      ['A', 'close'],
      [null, null],
    ])
  })

  it('can take a tag away', () => {
    expect(tags(withTagsAtOnce(snapshot, { photoIds: ['a', 'b'], set: { facetId: null } }).photos)).toEqual([
      [null, null],
      [null, null],
    ])
  })

  it('leaves the job alone when the tags are not right', () => {
    expect(withTagsAtOnce(snapshot, { photoIds: ['a'], set: { caption: 'x'.repeat(3000) } })).toBe(snapshot)
  })
})

describe('withUndoAtOnce', () => {
  it('offers to undo the edit under way and nothing to do again, and leaves the rest of the job as it is', () => {
    const { history, ...rest } = withUndoAtOnce({ ...snapshot, history: { undo: null, redo: 'Tag photo P-002' } })
    expect(history.undo).not.toBeNull()
    expect(history.redo).toBeNull()
    expect(rest.photos).toBe(snapshot.photos)
  })
})
