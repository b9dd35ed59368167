import { describe, expect, it } from 'vitest'
import { cameraName } from '../../app/evidence/camera-name.ts'
import { findingSchema } from '../../app/evidence/finding.ts'
import { jobSchema } from '../../app/job/job.ts'
import { readingSchema } from '../../app/fieldtest/reading.ts'
import { narrationSchema } from '../../app/narration/narration.ts'
import { cameraSchema } from '../../app/evidence/camera.ts'
import { testPhoto } from '../state/test-photo.ts'
import { nearestPhoto, stripContent } from './strip-lanes.ts'

const cameras = [
  cameraSchema.parse({ id: 'c1', make: 'ACME CORP', model: 'ACME 50', serial: '1', clock: {} }),
  cameraSchema.parse({ id: 'c2', make: 'Brown', model: 'Box', serial: '', clock: {} }),
]
const photos = [
  testPhoto('p1', { number: 1, cameraId: 'c1', instantMs: 3000 }),
  testPhoto('p2', { number: 2, cameraId: 'c1', instantMs: 1000 }),
  testPhoto('p3', { number: 3, cameraId: 'c2', instantMs: 500 }),
  testPhoto('p4', { number: 4, cameraId: null, instantMs: null }),
]
const finding = findingSchema.parse({
  id: 'f1',
  number: 1,
  kind: 'damage',
  component: 'field-tile',
  condition: 'slipped',
  photos: [
    { photoId: 'p1', role: 'close' },
    { photoId: 'p2', role: 'overview' },
    { photoId: 'p4', role: 'other' },
  ],
})

const narration = narrationSchema.parse({
  id: 'n1',
  attachmentId: 'a1',
  name: 'walk.vtt',
  format: 'webvtt',
  cues: [{ startMs: 500, endMs: 900, text: 'one cracked tile', speaker: '' }],
  problems: [],
  start: { kind: 'recorded', instantMs: 1000 },
})

const jobIn = (timeZone: string) =>
  jobSchema.parse({ id: 'j', number: '1', createdAtMs: 0, sheet: { property: { timeZone } }, frame: {} })
const none = { job: jobIn(''), videos: [], findings: [], readings: [], narrations: [] }

describe('stripContent', () => {
  const content = stripContent({ ...none, photos, cameras, findings: [finding], narrations: [narration] })

  it('puts a reading at the time that was written down on the clock of the house, or at its first photo', () => {
    const job = jobIn('America/New_York')
    const readings = [
      readingSchema.parse({ id: 'r1', number: 1, takenAt: '2026-07-01T10:40' }),
      readingSchema.parse({ id: 'r2', number: 2, photoIds: ['p1', 'p3'] }),
      readingSchema.parse({ id: 'r3', number: 3 }),
    ]
    const placed = stripContent({ ...none, job, photos, cameras, readings }).readings
    expect(placed.map(({ reading, instantMs }) => [reading.number, instantMs])).toEqual([
      [2, 500],
      [1, Date.UTC(2026, 6, 1, 14, 40)],
    ])
  })

  it('gives each camera a lane in order of time, the first to work first', () => {
    expect(content.lanes.map((lane) => [lane.name, lane.photos.map((one) => one.photo.id)])).toEqual([
      ['Brown Box', ['p3']],
      ['ACME 50', ['p2', 'p1']],
    ])
  })

  it('puts a finding at the earliest of its photos', () => {
    expect(content.findings.map((one) => one.instantMs)).toEqual([1000])
  })

  it('puts cues at their instants, once their recording is on the clock', () => {
    expect(content.cues).toEqual([
      { narrationId: 'n1', cue: 0, text: 'one cracked tile', instantMs: 1500, endMs: 1900 },
    ])
    const start = { kind: 'not-known' } as const
    expect(stripContent({ ...none, photos, cameras, narrations: [{ ...narration, start }] }).cues).toEqual([])
  })

  it('keeps photos without a time apart', () => {
    expect(content.untimed.map((photo) => photo.id)).toEqual(['p4'])
  })

  it('finds the photo nearest to a moment', () => {
    const lane = content.lanes[1]
    if (lane === undefined) throw new Error('There are two lanes.')
    expect(nearestPhoto(lane, 1900)?.photo.id).toBe('p2')
    expect(nearestPhoto(lane, 2100)?.photo.id).toBe('p1')
    expect(nearestPhoto(lane, 99_000)?.photo.id).toBe('p1')
    expect(nearestPhoto({ ...lane, photos: [] }, 0)).toBeNull()
  })
})

describe('cameraName', () => {
  it('names what is known', () => {
    expect(cameraName(undefined)).toBe('Camera not known')
    expect(cameraName({ make: '', model: '' })).toBe('Camera not named')
    expect(cameraName({ make: '', model: 'Box' })).toBe('Box')
  })
})
