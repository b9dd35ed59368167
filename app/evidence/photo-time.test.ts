import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { resolvePhotoTime, writtenTimeSchema, type WrittenTime } from './photo-time.ts'

const MINUTE_MS = 60_000
const nothing: WrittenTime = { tag: null, raw: null, local: null, offsetMinutes: null, gpsUtcMs: null }
const newYork = { placeZone: 'America/New_York', jobZone: null, correctionMs: 0 }
const nowhere = { placeZone: null, jobZone: null, correctionMs: 0 }

function written(local: string, more: Partial<WrittenTime> = {}): WrittenTime {
  return { ...nothing, tag: 'DateTimeOriginal', raw: local, local, ...more }
}

const utc = (text: string) => Date.parse(text)

describe('where the UTC offset comes from, best first', () => {
  const local = '2026-03-14T14:00:00'
  const gpsUtcMs = utc('2026-03-14T19:00:20Z')
  const zones = { placeZone: 'America/Denver', jobZone: 'America/Los_Angeles', correctionMs: 0 }

  it('is the offset that the camera wrote, even where GPS time and place say otherwise', () => {
    expect(resolvePhotoTime(written(local, { offsetMinutes: -240, gpsUtcMs }), zones)).toEqual({
      basis: 'camera-offset',
      offsetMinutes: -240,
      correctionMs: 0,
      instantMs: utc('2026-03-14T18:00:00Z'),
    })
  })

  it('is else inferred from GPS time, which serves for the offset only and not for the second', () => {
    expect(resolvePhotoTime(written(local, { gpsUtcMs }), zones)).toMatchObject({
      basis: 'gps-time',
      offsetMinutes: -300,
      instantMs: utc('2026-03-14T19:00:00Z'),
    })
  })

  it("is else the zone of the photo's place, then the job's zone", () => {
    expect(resolvePhotoTime(written(local), zones)).toMatchObject({ basis: 'place-zone', offsetMinutes: -360 })
    expect(resolvePhotoTime(written(local), { ...zones, placeZone: null })).toMatchObject({
      basis: 'job-zone',
      offsetMinutes: -420,
    })
  })

  it('is not guessed: without any of these the instant is unknown', () => {
    const unknown = { basis: 'unknown', offsetMinutes: null, correctionMs: 0, instantMs: null }
    expect(resolvePhotoTime(written(local), nowhere)).toEqual(unknown)
    expect(resolvePhotoTime({ ...nothing, gpsUtcMs, offsetMinutes: -240 }, zones)).toEqual(unknown)
  })

  it('passes over a zone that this machine does not know', () => {
    expect(resolvePhotoTime(written(local), { ...zones, placeZone: 'Nowhere/Land' })).toMatchObject({
      basis: 'job-zone',
    })
    expect(resolvePhotoTime(written(local), { ...nowhere, jobZone: 'Nowhere/Land' })).toMatchObject({
      basis: 'unknown',
    })
  })
})

describe('an offset inferred from GPS time', () => {
  const offsetOf = (local: string, gps: string) => {
    const time = resolvePhotoTime(written(local, { gpsUtcMs: utc(gps) }), nowhere)
    return time.basis === 'gps-time' ? time.offsetMinutes : null
  }

  it.each([
    // Offsets of the IANA time zone database.
    ['India', '2026-03-14T17:30:00', 330],
    ['Nepal', '2026-03-14T17:45:00', 345],
    ['Newfoundland in winter', '2026-02-14T08:30:00', -210],
    ['Chatham Islands in summer', '2026-02-15T01:45:00', 825],
    ['Line Islands', '2026-02-15T02:00:00', 840],
    ['UTC', '2026-02-14T12:00:00', 0],
  ])('knows zones of whole, half and quarter hours: %s', (_place, local, expected) => {
    expect(
      offsetOf(local, `${expected === 840 || expected === 825 ? '2026-02-14' : local.slice(0, 10)}T12:00:00Z`),
    ).toBe(expected)
  })

  it('holds with a fix up to five minutes old, and not with an older one', () => {
    expect(offsetOf('2026-03-14T14:00:00', '2026-03-14T17:55:00Z')).toBe(-240)
    expect(offsetOf('2026-03-14T14:00:00', '2026-03-14T18:05:00Z')).toBe(-240)
    expect(offsetOf('2026-03-14T14:00:00', '2026-03-14T17:54:59Z')).toBeNull()
  })

  it('is plain 0, not -0, when the clock runs a moment behind UTC', () => {
    expect(offsetOf('2026-03-14T12:00:00', '2026-03-14T12:00:01Z')).toBe(0)
  })

  it('is not believed outside -12:00 to +14:00', () => {
    expect(offsetOf('2026-03-14T00:00:00', '2026-03-14T12:00:00Z')).toBe(-720)
    expect(offsetOf('2026-03-14T00:00:00', '2026-03-14T12:15:00Z')).toBeNull()
    expect(offsetOf('2026-03-15T02:15:00', '2026-03-14T12:00:00Z')).toBeNull()
  })

  it('takes the corrected clock: a camera that is 37 minutes fast does not invent a zone', () => {
    const time = resolvePhotoTime(written('2026-03-14T14:37:00', { gpsUtcMs: utc('2026-03-14T18:00:10Z') }), {
      ...nowhere,
      correctionMs: -37 * MINUTE_MS,
    })
    expect(time).toEqual({
      basis: 'gps-time',
      offsetMinutes: -240,
      correctionMs: -37 * MINUTE_MS,
      instantMs: utc('2026-03-14T18:00:00Z'),
    })
  })
})

describe('a correction of the camera clock', () => {
  it('is added to what the camera wrote, on whatever basis', () => {
    const correctionMs = 90_500
    expect(
      resolvePhotoTime(written('2026-03-14T14:00:00', { offsetMinutes: -240 }), { ...nowhere, correctionMs }).instantMs,
    ).toBe(utc('2026-03-14T18:01:30.500Z'))
    expect(resolvePhotoTime(written('2026-03-14T14:00:00'), { ...newYork, correctionMs }).instantMs).toBe(
      utc('2026-03-14T18:01:30.500Z'),
    )
  })

  it('is kept beside a time that stays unknown', () => {
    expect(resolvePhotoTime(nothing, { ...newYork, correctionMs: 5 })).toMatchObject({
      basis: 'unknown',
      correctionMs: 5,
    })
  })

  it('can carry a photo over a change of clocks: the offset is that of the corrected time', () => {
    // Clocks in New York go forward on 8 March 2026 at 02:00 (second Sunday in March; 15 U.S.C. 260a).
    const time = resolvePhotoTime(written('2026-03-08T01:30:00'), { ...newYork, correctionMs: 60 * 2 * MINUTE_MS })
    expect(time).toMatchObject({ offsetMinutes: -240, instantMs: utc('2026-03-08T07:30:00Z') })
  })

  it('always adds up: what was written, less the offset, plus the correction, is the instant', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: utc('1990-01-01T00:00:00Z'), max: utc('2060-01-01T00:00:00Z') }),
        fc.integer({ min: -400 * 1440, max: 400 * 1440 }),
        fc.constantFrom('America/New_York', 'Asia/Kathmandu', 'Australia/Lord_Howe', 'Africa/Casablanca', 'UTC'),
        (clockMs, correctionMinutes, placeZone) => {
          const local = new Date(clockMs).toISOString().slice(0, -1)
          const correctionMs = correctionMinutes * MINUTE_MS
          const time = resolvePhotoTime(written(local), { placeZone, jobZone: null, correctionMs })
          expect(time.instantMs).toBe(clockMs - (time.offsetMinutes ?? NaN) * MINUTE_MS + correctionMs)
        },
      ),
      { numRuns: 500 },
    )
  })
})

describe('a change of clocks at the place (RFC 5545, section 3.3.5, whose examples these are)', () => {
  it('a local time that is repeated is the first of the two: 4 November 2007 at 1:30 is EDT', () => {
    expect(resolvePhotoTime(written('2007-11-04T01:30:00'), newYork)).toMatchObject({
      offsetMinutes: -240,
      instantMs: utc('2007-11-04T05:30:00Z'),
    })
  })

  it('a local time that is skipped takes the offset before: 11 March 2007 at 2:30 is an hour after 1:30 EST', () => {
    expect(resolvePhotoTime(written('2007-03-11T02:30:00'), newYork)).toMatchObject({
      offsetMinutes: -300,
      instantMs: utc('2007-03-11T07:30:00Z'),
    })
  })

  it('holds where clocks change by half an hour (Lord Howe Island, 5 October 2025 at 02:00)', () => {
    expect(
      resolvePhotoTime(written('2025-10-05T02:15:00'), { ...nowhere, jobZone: 'Australia/Lord_Howe' }),
    ).toMatchObject({ basis: 'job-zone', offsetMinutes: 630, instantMs: utc('2025-10-04T15:45:00Z') })
  })

  it('keeps photos in the order in which a clock that was never set wrote them', () => {
    const times = ['01:59:59', '02:00:00', '02:59:59', '03:00:00'].map(
      (clock) => resolvePhotoTime(written(`2026-03-08T${clock}`), newYork).instantMs ?? NaN,
    )
    // At 03:00 a clock that ran on through the skipped hour can no longer be told from one that was set.
    expect(times.slice(0, 3)).toEqual(times.slice(0, 3).toSorted((a, b) => a - b))
  })
})

describe('what a camera wrote', () => {
  it('is a time that the calendar and the clock have', () => {
    for (const local of ['2026-03-14T09:26:53', '2028-02-29T23:59:59.123456789', '2026-03-14T00:00:00.5'])
      expect(writtenTimeSchema.parse(written(local)).local).toBe(local)
    const wrong = [
      '2026-02-30T10:00:00',
      '2026-02-29T10:00:00',
      '2026-13-01T10:00:00',
      '2026-00-10T10:00:00',
      '2026-03-14T24:00:00',
      '2026-03-14T10:60:00',
      '2026-03-14T10:00:60',
      '2026-03-14 10:00:00',
      '2026-03-14T10:00:00Z',
    ]
    expect(wrong.filter((local) => writtenTimeSchema.safeParse(written(local)).success)).toEqual([])
  })

  it('is never such that it cannot be resolved', () => {
    fc.assert(
      fc.property(fc.stringMatching(/^\d{4}-[01]\d-[0-3]\dT[0-2]\d:[0-6]\d:[0-6]\d$/), (local) => {
        const parsed = writtenTimeSchema.safeParse(written(local))
        if (parsed.success) expect(resolvePhotoTime(parsed.data, newYork).basis).toBe('place-zone')
        else
          expect(Number.isNaN(Date.parse(`${local}Z`)) || !new Date(`${local}Z`).toISOString().startsWith(local)).toBe(
            true,
          )
      }),
      { numRuns: 500 },
    )
  })
})
