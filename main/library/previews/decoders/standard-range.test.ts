import { describe, expect, it } from 'vitest'
import { toStandardRange } from './standard-range.js'

const BT709 = 1
const grey = (value: number, colour: { primaries: number; transfer: number; bits: number }) =>
  Array.from(toStandardRange(Uint16Array.of(value, value, value), colour))

describe('toStandardRange', () => {
  it('leaves sRGB alone and asks for no conversion of it', () => {
    expect(toStandardRange.needed({ primaries: BT709, transfer: 13 })).toBe(false)
    for (const level of [0, 1, 40, 128, 255])
      expect(grey(level, { primaries: BT709, transfer: 13, bits: 8 })).toEqual([level, level, level])
  })

  it('keeps grey grey from wide primaries, and takes their red out of gamut to full red', () => {
    for (const primaries of [9, 12]) {
      const [red = 0, green = 0, blue = 0] = grey(600, { primaries, transfer: 13, bits: 10 })
      expect(Math.max(red, green, blue) - Math.min(red, green, blue)).toBeLessThanOrEqual(1)
      const pure = toStandardRange(Uint16Array.of(1023, 0, 0), { primaries, transfer: 13, bits: 10 })
      expect(Array.from(pure)).toEqual([255, 0, 0])
    }
  })

  it('takes PQ for what it is: 58 % is diffuse white of 203 nits, 1000 nits and more are white, half of white is darker', () => {
    // Report ITU-R BT.2408, table 1: HDR reference white of 203 cd/m2 is 58 % PQ and 1000 cd/m2 about 75 %.
    const pq = (share: number) => grey(Math.round(share * 1023), { primaries: BT709, transfer: 16, bits: 10 })[0] ?? 0
    expect(pq(0)).toBe(0)
    expect(pq(0.752)).toBeGreaterThanOrEqual(254)
    expect(pq(0.58)).toBeGreaterThan(228)
    expect(pq(0.58)).toBeLessThan(250)
    // 18 % grey in HDR is 26 cd/m2 at 38 % PQ (same table): about 0.128 of white, which sRGB writes as 100.
    expect(Math.abs(pq(0.38) - 100)).toBeLessThan(6)
  })
})
