import { describe, expect, it } from 'vitest'
import { cueTimeWords, instantOfClock } from './cue-times.ts'

const clock = { offsetMinutesAt: () => -300, zoneWords: 'UTC-05:00' }
const noonMs = Date.UTC(2026, 10, 12, 17, 0, 0)

describe('times of cues', () => {
  it('are times of day once the recording is on the clock, and lengths before', () => {
    expect(cueTimeWords(192_000, null, clock)).toBe('+00:03:12')
    expect(cueTimeWords(192_000, noonMs, clock)).toBe('12:03:12')
  })

  it('are typed as times of day on the day of the inspection', () => {
    expect(instantOfClock('09:58:20', noonMs, clock)).toBe(Date.UTC(2026, 10, 12, 14, 58, 20))
    expect(instantOfClock(' 9:58 ', noonMs, clock)).toBe(Date.UTC(2026, 10, 12, 14, 58, 0))
    expect(instantOfClock('25:00', noonMs, clock)).toBeNull()
    expect(instantOfClock('noon', noonMs, clock)).toBeNull()
  })
})
