import { describe, expect, it } from 'vitest'
import { dayWords, jobClock, timeWords } from './job-clock.ts'
import { testPhoto } from './test-photo.ts'

const sheet = (timeZone: string) => ({ job: { sheet: { property: { timeZone } } } })
const photo = (id: string, offsetMinutes: number | null) => testPhoto(id, { offsetMinutes })

describe('jobClock', () => {
  // The 2026 change in the United States is on 8 March at 02:00 (15 U.S.C. 260a: second Sunday of March).
  it('follows the zone of the sheet over the change to daylight saving time', () => {
    const clock = jobClock({ ...sheet('America/New_York'), photos: [] })
    expect(timeWords(Date.UTC(2026, 2, 8, 6, 59, 59), clock)).toBe('01:59:59')
    expect(timeWords(Date.UTC(2026, 2, 8, 7, 0, 0), clock)).toBe('03:00:00')
    expect(clock.zoneWords).toBe('America/New_York')
  })

  it('takes the offset most photos have when the sheet names no zone', () => {
    const clock = jobClock({
      ...sheet(''),
      photos: [photo('a', -240), photo('b', 0), photo('c', -240), photo('d', null)],
    })
    expect(clock.zoneWords).toBe('UTC-04:00')
    expect(dayWords(Date.UTC(2026, 2, 15, 3, 30), clock)).toBe('Sat 14 Mar 2026')
    expect(timeWords(Date.UTC(2026, 2, 15, 3, 30), clock)).toBe('23:30:00')
  })
})
