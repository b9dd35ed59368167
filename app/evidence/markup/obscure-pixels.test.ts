import { describe, expect, it } from 'vitest'
import { obscurePixels } from './obscure-pixels.ts'

const SIDE = 80
const picture = (value: (x: number, y: number) => number) => ({
  data: Uint8Array.from({ length: SIDE * SIDE * 3 }, (_, at) => {
    const pixel = Math.floor(at / 3)
    return value(pixel % SIDE, Math.floor(pixel / SIDE))
  }),
  width: SIDE,
  height: SIDE,
  channels: 3,
})
const area = (what: 'face' | 'plate') => ({
  widthPx: 800,
  heightPx: 800,
  obscured: [{ leftPx: 210, topPx: 210, widthPx: 380, heightPx: 380, what }],
})
/** The area above in pixels of the copy, a pixel more on each side. */
const isInside = (x: number, y: number) => x >= 20 && x < 60 && y >= 20 && y < 60

function valuesInside({ data }: { data: Uint8Array }): number[] {
  return [...data].filter((_, at) => isInside(Math.floor(at / 3) % SIDE, Math.floor(at / 3 / SIDE)))
}

describe('an obscured area', () => {
  it('of a face is at most sixteen even cells, of a plate one', () => {
    const noise = (x: number, y: number) => (x * 7919 + y * 104_729) % 256
    const face = picture(noise)
    obscurePixels(face, area('face'))
    expect(new Set(valuesInside(face)).size).toBeLessThanOrEqual(16)
    const plate = picture(noise)
    obscurePixels(plate, area('plate'))
    expect(new Set(valuesInside(plate)).size).toBe(1)
  })

  it('can not be read again: contents with the same means come out as the same bytes', () => {
    // Stripes across and stripes down look nothing alike; in every cell their means are equal.
    const across = picture((_, y) => (y % 2 === 0 ? 40 : 200))
    const down = picture((x) => (x % 2 === 0 ? 40 : 200))
    expect(valuesInside(across)).not.toEqual(valuesInside(down))
    obscurePixels(across, area('face'))
    obscurePixels(down, area('face'))
    expect(valuesInside(across)).toEqual(valuesInside(down))
  })

  it('leaves the rest of the picture alone', () => {
    const before = picture((x, y) => (x + y) % 256)
    const after = picture((x, y) => (x + y) % 256)
    obscurePixels(after, area('plate'))
    const outside = (bytes: Uint8Array) =>
      [...bytes].filter((_, at) => !isInside(Math.floor(at / 3) % SIDE, Math.floor(at / 3 / SIDE)))
    expect(outside(after.data)).toEqual(outside(before.data))
  })

  it('takes the picture’s own alpha as it is', () => {
    const copy = { data: new Uint8Array(SIDE * SIDE * 4).fill(255), width: SIDE, height: SIDE, channels: 4 }
    obscurePixels(copy, area('plate'))
    expect(copy.data.filter((_, at) => at % 4 === 3).every((alpha) => alpha === 255)).toBe(true)
  })
})
