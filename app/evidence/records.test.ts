import { describe, expect, it } from 'vitest'
import { aFinding, aPhoto, aReading } from '../../tests/builders/records.ts'
import { readingSchema } from '../fieldtest/reading.ts'
import { facetSchema } from '../roof/facet.ts'
import { cameraClockSchema } from './camera.ts'
import { extentSchema, findingLabel, findingSchema, pinSchema } from './finding.ts'
import { photoFileSchema, photoLabel, photoSchema, photoTagsSchema } from './photo.ts'
import { readingLabel } from './reading-label.ts'

interface Checks {
  readonly safeParse: (value: unknown) => { success: boolean }
}
const accepts = (schema: Checks, value: unknown) => schema.safeParse(value).success
/** Which of these changes to a good record the schema takes; none should be. */
const accepted = (schema: Checks, { good, wrong }: { good: object; wrong: readonly object[] }) =>
  wrong.filter((one) => accepts(schema, { ...good, ...one }))

describe('records', () => {
  it('read back from JSON as they were written', () => {
    for (const [schema, record] of [
      [findingSchema, aFinding()],
      [photoSchema, aPhoto()],
      [readingSchema, aReading()],
    ] as const)
      expect(schema.parse(JSON.parse(JSON.stringify(record)))).toEqual(record)
  })

  it('are named by their numbers', () => {
    expect([findingLabel(12), photoLabel(7), photoLabel(1234), readingLabel(4)]).toEqual([
      'F-12',
      'P-007',
      'P-1234',
      'R-4',
    ])
  })
})

describe('a finding', () => {
  it('says nothing that nobody said: no cause, count, place, consequence or degree by itself', () => {
    expect(aFinding()).toMatchObject({
      extent: { kind: 'not-stated' },
      degree: '',
      cause: {
        cause: 'not-stated',
        indicatorsSeen: [],
        indicatorsLookedForNotSeen: [],
        otherExplanations: [],
        note: '',
      },
      consequences: [],
      facetId: null,
      pin: null,
      photos: [],
      lookedAt: { debris: '', fastener: '', fractureFace: '', bedding: '', footTraffic: '' },
      urgent: false,
    })
  })

  it('needs a kind, component and condition of the catalog and a number from 1', () => {
    const finding = aFinding()
    expect(accepts(findingSchema, finding)).toBe(true)
    const wrong = [
      { number: 0 },
      { number: 1.5 },
      { kind: 'ruined' },
      { component: 'roof' },
      { condition: 'bad' },
      { id: '' },
    ]
    expect(accepted(findingSchema, { good: finding, wrong })).toEqual([])
  })

  it('counts as honestly as it was seen: "several" has no number, "exactly" has a whole one', () => {
    expect(accepts(extentSchema, { kind: 'exactly', count: 7 })).toBe(true)
    expect(extentSchema.parse({ kind: 'several', count: 7 })).toEqual({ kind: 'several' })
    const wrong = [
      { kind: 'exactly' },
      { kind: 'exactly', count: 0 },
      { kind: 'about', count: 2.5 },
      { kind: 'length', lengthFt: 0 },
    ]
    expect(accepted(extentSchema, { good: {}, wrong })).toEqual([])
  })

  it('measures with a value and a means', () => {
    const measured = (measurement: unknown) => accepts(findingSchema, { ...aFinding(), measurements: [measurement] })
    expect(measured({ what: 'lift-in', value: 1.5, forceLbf: 12, by: 'instrument' })).toBe(true)
    expect(measured({ what: 'lift-in', value: 1.5 })).toBe(false)
    expect(measured({ what: 'lift-in', value: -1, by: 'eye' })).toBe(false)
    expect(measured({ what: 'lift-in', value: NaN, by: 'eye' })).toBe(false)
    expect(measured({ what: 'lift', value: 1, by: 'eye' })).toBe(false)
  })

  it('is pinned by a point, a line of two corners or an area of three', () => {
    const at = { xFt: 0, yFt: 0 }
    expect(accepts(pinSchema, { kind: 'point', at })).toBe(true)
    expect(accepts(pinSchema, { kind: 'line', points: [at] })).toBe(false)
    expect(accepts(pinSchema, { kind: 'area', points: [at, at] })).toBe(false)
  })
})

describe('a photo', () => {
  it('starts without tags and in the packet', () => {
    expect(photoTagsSchema.parse({})).toEqual({
      facetId: null,
      component: null,
      condition: null,
      role: null,
      caption: '',
      leftOutBecause: null,
    })
  })

  it('takes only facts that can be', () => {
    const { file } = aPhoto()
    expect(accepts(photoFileSchema, file)).toBe(true)
    const position = { latDeg: 27.95, lonDeg: -82.46, altitudeM: null, errorM: null }
    const wrong = [
      { sha256: 'ABC' },
      { sha256: 'A'.repeat(64) },
      { bytes: -1 },
      { orientation: 9 },
      { widthPx: 0 },
      { position: { ...position, latDeg: 91 } },
      { position: { ...position, errorM: 0 } },
      { direction: { azimuthDeg: 360, reference: 'true' } },
      { direction: { azimuthDeg: 10, reference: 'grid' } },
      { written: { ...file.written, local: '2026-02-30T10:00:00' } },
      { written: { ...file.written, offsetMinutes: 15 * 60 } },
    ]
    expect(accepted(photoFileSchema, { good: file, wrong })).toEqual([])
  })
})

describe('a facet, a reading and a camera clock', () => {
  const facet = {
    id: 'f',
    letter: 'A',
    outline: [
      { xFt: 0, yFt: 0 },
      { xFt: 1, yFt: 0 },
      { xFt: 0, yFt: 1 },
    ],
    pitchRise: 5,
    downslopeAzimuthDeg: 180,
  }

  it('are refused where they cannot be so, with the reason', () => {
    expect(accepts(facetSchema, facet)).toBe(true)
    expect(facetSchema.safeParse({ ...facet, pitchRise: 37 }).error?.issues[0]?.message).toBe(
      'A pitch above 36:12 is not a roof slope.',
    )
    expect(facetSchema.safeParse({ ...facet, letter: 'A 1' }).error?.issues[0]?.message).toBe(
      'A facet label has only letters and digits.',
    )
    expect(facetSchema.safeParse({ ...facet, outline: [] }).error?.issues[0]?.message).toBe(
      'A facet needs at least three corners.',
    )
    expect(readingSchema.safeParse({ ...aReading(), liftIn: -1 }).error?.issues[0]?.message).toBe(
      'A lift cannot be negative.',
    )
    expect(accepts(cameraClockSchema, { correctionMs: 0.5, why: '' })).toBe(false)
  })

  it('leave open what was not recorded: a reading without force or lift is a reading', () => {
    expect(readingSchema.parse({ id: 'r', number: 1 })).toMatchObject({
      liftIn: null,
      forceLbf: null,
      method: 'by-hand',
    })
    expect(facetSchema.parse(facet).inspected).toEqual({ percent: null, note: '' })
  })
})
