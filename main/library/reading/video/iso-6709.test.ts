import { describe, expect, it } from 'vitest'
import { readIso6709 } from './iso-6709.ts'

describe('readIso6709', () => {
  // Mount Everest, the Eiffel Tower and New York in the forms of ISO 6709:2008 annex H, as its text gives them.
  it.each([
    ['+27.5916+086.5640+8850/', 27.5916, 86.564, 8850],
    ['+48.8577+002.295/', 48.8577, 2.295, null],
    ['+40.75-074.00/', 40.75, -74, null],
    ['+4045-07400/', 40.75, -74, null],
    ['+401213.1-0750015.1+2.79CRSWGS_84/', 40 + 12 / 60 + 13.1 / 3600, -(75 + 15.1 / 3600), 2.79],
  ])('%s', (text, latDeg, lonDeg, altitudeM) => {
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
