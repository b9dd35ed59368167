import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { correctionAtMs, correctionFor, driftSecondsADay, shiftedClock } from './camera-clock.ts'
import type { CameraClock, ClockComparison } from './camera.ts'
import { resolvePhotoTime, type WrittenTime } from './photo-time.ts'

const MINUTE_MS = 60_000
const newYork = 'America/New_York'

function compared(cameraLocal: string, correctionMs: number): ClockComparison {
  return { by: 'clock-photo', photoId: null, cameraLocal, correctionMs, trueWords: '' }
}
function drifting(from: ClockComparison, to: ClockComparison): CameraClock {
  return { correctionMs: from.correctionMs, why: '', comparisons: [from, to] }
}
function written(local: string, offsetMinutes: number | null = null): WrittenTime {
  return { tag: 'DateTimeOriginal', raw: local, local, offsetMinutes, gpsUtcMs: null }
}

describe('the correction of a clock that was compared twice', () => {
  const clock = drifting(compared('2026-03-14T10:00:00', 60_000), compared('2026-03-14T14:00:00', 68_000))

  it('runs in a straight line between the two', () => {
    expect(correctionAtMs(clock, '2026-03-14T10:00:00')).toBe(60_000)
    expect(correctionAtMs(clock, '2026-03-14T12:00:00')).toBe(64_000)
    expect(correctionAtMs(clock, '2026-03-14T13:00:00')).toBe(66_000)
    expect(correctionAtMs(clock, '2026-03-14T14:00:00')).toBe(68_000)
  })

  it('stays what it was at the ends outside of them, where nothing is known', () => {
    expect(correctionAtMs(clock, '2026-03-13T10:00:00')).toBe(60_000)
    expect(correctionAtMs(clock, '2026-03-20T10:00:00')).toBe(68_000)
  })

  it('tells how fast the clock runs', () => {
    expect(driftSecondsADay(clock)).toBeCloseTo(48, 9)
    expect(driftSecondsADay({ correctionMs: 60_000, why: '' })).toBeNull()
  })

  it('is the same whichever of the two was typed first', () => {
    const [from, to] = clock.comparisons ?? []
    if (from === undefined || to === undefined) throw new Error('The clock has two comparisons.')
    expect(correctionAtMs(drifting(to, from), '2026-03-14T11:00:00')).toBe(correctionAtMs(clock, '2026-03-14T11:00:00'))
  })

  it('never leaves the two and keeps the order of photos, for any slow drift', () => {
    const minute = fc.integer({ min: 0, max: 1439 })
    const local = (at: number) =>
      `2026-03-14T${String(Math.floor(at / 60)).padStart(2, '0')}:${String(at % 60).padStart(2, '0')}:00`
    fc.assert(
      fc.property(fc.tuple(minute, minute), fc.tuple(fc.nat(59_000), fc.nat(59_000)), ([a, b], [one, other]) => {
        // A clock that loses less than a minute a minute never makes a later photo earlier.
        const line = drifting(compared(local(a), one), compared(local(b), other))
        const low = Math.min(one, other)
        const high = Math.max(one, other)
        let before = -Infinity
        for (let at = 0; at < 1440; at += 1) {
          const correction = correctionAtMs(line, local(at))
          if (a !== b) expect(correction).toBeGreaterThanOrEqual(low)
          if (a !== b) expect(correction).toBeLessThanOrEqual(high)
          expect(at * MINUTE_MS + correction).toBeGreaterThan(before)
          before = at * MINUTE_MS + correction
        }
      }),
      { numRuns: 30 },
    )
  })

  it('keeps its comparisons when something is added for another reason', () => {
    const later = shiftedClock(clock, 3_600_000, 'an hour')
    expect(correctionAtMs(later, '2026-03-14T12:00:00')).toBe(3_664_000)
    expect(later.why).toBe('an hour')
  })
})

describe('the correction that makes a photo come out at a known instant', () => {
  it('goes by the offset that the camera wrote, else by the zone of the place', () => {
    const trueMs = Date.parse('2026-07-14T18:07:00Z')
    expect(correctionFor(written('2026-07-14T14:00:00', -240), trueMs, null)).toBe(7 * MINUTE_MS)
    expect(correctionFor(written('2026-07-14T14:00:00'), trueMs, newYork)).toBe(7 * MINUTE_MS)
    expect(correctionFor(written('2026-07-14T14:00:00'), trueMs, null)).toBeNull()
    expect(correctionFor({ ...written(''), local: null }, trueMs, newYork)).toBeNull()
  })

  /** Around the two changes of 2026 in New York: 8 March 07:00 UTC and 1 November 06:00 UTC. */
  it('makes the photo come out there, also across a change of clocks, but for the second of two hours', () => {
    const around = fc.constantFrom(Date.parse('2026-03-08T07:00:00Z'), Date.parse('2026-11-01T06:00:00Z'))
    fc.assert(
      fc.property(
        around,
        fc.integer({ min: -3 * 86_400, max: 3 * 86_400 }),
        fc.integer({ min: -86_400, max: 86_400 }),
        (changeMs, second, wrong) => {
          const trueMs = changeMs + second * 1000
          const wrongLocal = new Date(trueMs - 4 * 3_600_000 + wrong * 1000).toISOString().slice(0, 19)
          const correctionMs = correctionFor(written(wrongLocal), trueMs, newYork) ?? Number.NaN
          const given = { placeZone: newYork, jobZone: null, correctionMs }
          const first = resolvePhotoTime(written(wrongLocal), given)
          if (first.changeOfClocks === 'repeated') {
            const again = resolvePhotoTime(written(wrongLocal), { ...given, pass: 'second' })
            expect([first.instantMs, again.instantMs]).toContain(trueMs)
          } else expect(first.instantMs).toBe(trueMs)
          expect(first.changeOfClocks).not.toBe('skipped')
        },
      ),
    )
  })
})

describe('hours that a change of clocks skips or repeats', () => {
  const inZone = (local: string, pass: 'first' | 'second' | null = null) =>
    resolvePhotoTime(written(local), { placeZone: newYork, jobZone: null, correctionMs: 0, pass })

  it('are told; the repeated one is the first of two until a person says the second', () => {
    expect(inZone('2026-11-01T01:30:00')).toMatchObject({
      changeOfClocks: 'repeated',
      instantMs: Date.parse('2026-11-01T05:30:00Z'),
      offsetMinutes: -240,
    })
    expect(inZone('2026-11-01T01:30:00', 'second')).toMatchObject({
      changeOfClocks: 'repeated',
      instantMs: Date.parse('2026-11-01T06:30:00Z'),
      offsetMinutes: -300,
    })
    expect(inZone('2026-03-08T02:30:00')).toMatchObject({
      changeOfClocks: 'skipped',
      instantMs: Date.parse('2026-03-08T07:30:00Z'),
    })
  })

  it('are the only ones that are told', () => {
    for (const local of ['2026-11-01T00:59:59', '2026-11-01T02:00:00', '2026-03-08T01:59:59', '2026-03-08T03:00:00'])
      expect(inZone(local).changeOfClocks).toBeUndefined()
  })

  it('agree with what the machine’s own calendar makes of every instant of the year', () => {
    const format = new Intl.DateTimeFormat('sv-SE', { timeZone: newYork, dateStyle: 'short', timeStyle: 'medium' })
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 365 * 86_400 }), (second) => {
        const instantMs = Date.parse('2026-01-01T00:00:00Z') + second * 1000
        const local = format.format(instantMs).replace(' ', 'T')
        expect([inZone(local).instantMs, inZone(local, 'second').instantMs]).toContain(instantMs)
      }),
    )
  })
})
