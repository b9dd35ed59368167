import { describe, expect, it } from 'vitest'
import { type JobChanges, type JobSnapshot, jobSnapshotSchema } from '../../app/contract/jobs.ts'
import { timeOfPhoto } from '../../app/evidence/time-of-photo.ts'
import { testPhoto } from './test-photo.ts'
import { withChanges } from './with-changes.ts'

function aSnapshot(): JobSnapshot {
  const given = jobSnapshotSchema.parse({
    revision: 1,
    job: {
      id: 'j',
      number: '1',
      createdAtMs: 0,
      sheet: { property: { timeZone: 'America/New_York' } },
      frame: {},
    },
    cameras: [{ id: 'c', make: 'Example', model: 'Field 1', serial: '', clock: {} }],
    photos: [],
    outlines: [],
    facets: [],
    videos: [],
    markups: [],
    findings: [],
    readings: [],
    survey: {},
    narrations: [],
    draftDecisions: [],
    planImages: [],
    weather: { stations: [], sources: [], choices: {} },
    attachments: [],
    packets: [],
    history: { undo: null, redo: null },
    log: { entries: 1, headHash: '' },
  })
  const photos = [1, 2, 3].map((number) => {
    const photo = testPhoto(`p-${number}`, { number, cameraId: 'c' })
    const local = `2026-03-14T14:0${number}:00`
    const timed = { ...photo, file: { ...photo.file, written: { ...photo.file.written, local } } }
    return { ...timed, time: timeOfPhoto(timed, given.cameras[0]?.clock ?? null, given.job.sheet) }
  })
  return { ...given, photos }
}
function changesOf({ photos: _photos, ...parts }: JobSnapshot, given: Partial<JobChanges>): JobChanges {
  return { ...parts, revision: parts.revision + 1, changedPhotos: [], ...given }
}

describe('a job after changes', () => {
  it('keeps the very same photos where none changed', () => {
    const held = aSnapshot()
    const after = withChanges(held, changesOf(held, {}))
    expect(after.photos).toBe(held.photos)
    expect(after.revision).toBe(2)
  })

  it('has the changed photo in its place, and new ones by number', () => {
    const held = aSnapshot()
    const [first, second] = held.photos
    if (first === undefined || second === undefined) throw new Error('There are three photos.')
    const changed = { ...second, tags: { ...second.tags, caption: 'new' } }
    const added = testPhoto('p-4', { number: 4 })
    const after = withChanges(held, changesOf(held, { changedPhotos: [added, changed] }))
    expect(after.photos.map(({ number }) => number)).toEqual([1, 2, 3, 4])
    expect(after.photos[0]).toBe(first)
    expect(after.photos[1]?.tags.caption).toBe('new')
  })

  it('gives photos the times that follow from a corrected clock, as the desk would', () => {
    const held = aSnapshot()
    const cameras = held.cameras.map((camera) => ({ ...camera, clock: { correctionMs: 60_000, why: 'a minute' } }))
    const after = withChanges(held, changesOf(held, { cameras }))
    for (const [at, photo] of after.photos.entries()) {
      expect(photo.time.instantMs).toBe((held.photos[at]?.time.instantMs ?? 0) + 60_000)
      expect(photo.time).toEqual(timeOfPhoto(photo, cameras[0]?.clock ?? null, held.job.sheet))
    }
  })
})
