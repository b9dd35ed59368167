import { describe, expect, it } from 'vitest'
import { readIso6709 } from './iso-6709.ts'

describe('readIso6709', () => {
  // The forms that ISO 6709:2008 annex H allows: degrees, degrees and minutes, degrees, minutes and seconds.
  it.each([
    { text: '+27.5916+086.5640+8850/', latDeg: 27.5916, lonDeg: 86.564, altitudeM: 8850 },
    { text: '+48.8577+002.295/', latDeg: 48.8577, lonDeg: 2.295, altitudeM: null },
    { text: '+40.75-074.00/', latDeg: 40.75, lonDeg: -74, altitudeM: null },
    { text: '+4045-07400/', latDeg: 40.75, lonDeg: -74, altitudeM: null },
    {
      text: '+401213.1-0750015.1+2.79CRSWGS_84/',
      latDeg: 40 + 12 / 60 + 13.1 / 3600,
      lonDeg: -(75 + 15.1 / 3600),
      altitudeM: 2.79,
    },
  ])('$text', ({ text, latDeg, lonDeg, altitudeM }) => {
    const place = readIso6709(text)
    expect(place?.latDeg).toBeCloseTo(latDeg, 9)
    expect(place?.lonDeg).toBeCloseTo(lonDeg, 9)
    expect(place?.altitudeM).toBe(altitudeM)
  })

  it.each(['', '+0.0+0.0/', '+00.0000+000.0000/', '+91.0+000.0/', '+10.0+181.0/', 'N27 W82', '+4060-07400/'])(
    '%j is no place',
    (text) => {
      expect(readIso6709(text)).toBeNull()
    },
  )
})
