import { describe, expect, it } from 'vitest'
import { zoneAt } from './zone-at.ts'

describe('the time zone at a place (zones of the IANA time zone database)', () => {
  it.each([
    ['Tampa', 27.95, -82.4572, 'America/New_York'],
    ['Kathmandu', 27.7172, 85.324, 'Asia/Kathmandu'],
    ['Lord Howe Island', -31.55, 159.08, 'Australia/Lord_Howe'],
  ])('is known on land: %s', (...[, latDeg, lonDeg, zone]) => {
    expect(zoneAt({ latDeg, lonDeg })).toBe(zone)
  })

  it('is a nautical zone at sea', () => {
    expect(zoneAt({ latDeg: 0, lonDeg: -170 })).toMatch(/^Etc\//)
  })

  it('is unknown where there is no place', () => {
    expect(zoneAt({ latDeg: NaN, lonDeg: 0 })).toBeNull()
    expect(zoneAt({ latDeg: 91, lonDeg: 0 })).toBeNull()
  })
})
