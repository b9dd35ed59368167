import { describe, expect, it } from 'vitest'
import { positionText, readPosition } from './position-text.ts'

describe('readPosition', () => {
  it.each([
    ['27.3364, -82.5307', { latDeg: 27.3364, lonDeg: -82.5307 }],
    ['27.3364 -82.5307', { latDeg: 27.3364, lonDeg: -82.5307 }],
    ['27.3364 N 82.5307 W', { latDeg: 27.3364, lonDeg: -82.5307 }],
    ['33.9° S, 151.2° E', { latDeg: -33.9, lonDeg: 151.2 }],
    ['', null],
  ])('reads "%s"', (text, value) => {
    expect(readPosition(text)).toEqual({ ok: true, value })
  })

  it.each(['here', '27.3364', '27,33 82,5', '91, 0', '0, 181'])('refuses "%s"', (text) => {
    expect(readPosition(text).ok).toBe(false)
  })

  it('reads back what positionText writes', () => {
    const place = { latDeg: 27.336412345, lonDeg: -82.5 }
    expect(readPosition(positionText(place))).toEqual({ ok: true, value: place })
  })
})
