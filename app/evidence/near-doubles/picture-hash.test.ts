import { describe, expect, it } from 'vitest'
import fc from 'fast-check'
import { hashDistance, HASH_SIDE, pictureHash } from './picture-hash.ts'

const N = HASH_SIDE

/**
 * The transform straight from its definition, DCT-II in two dimensions: C(u,v) = sum over x, y of
 * f(x,y) cos(pi(2x+1)u/2N) cos(pi(2y+1)v/2N). Source: Ahmed, Natarajan and Rao 1974; ITU-T T.81 (JPEG), A.3.3.
 */
function coefficient(grey: readonly number[], u: number, v: number): number {
  let sum = 0
  for (let y = 0; y < N; y += 1)
    for (let x = 0; x < N; x += 1)
      sum +=
        (grey[y * N + x] ?? 0) *
        Math.cos((Math.PI * (2 * x + 1) * u) / (2 * N)) *
        Math.cos((Math.PI * (2 * y + 1) * v) / (2 * N))
  return sum
}

/** Which of the 64 lowest coefficients lie above the median of the 63 that are not the mean, as bits. */
function bitsByDefinition(grey: readonly number[]): string {
  const all = Array.from({ length: 64 }, (_, k) => coefficient(grey, k % 8, Math.floor(k / 8)))
  const median = all.slice(1).toSorted((a, b) => a - b)[31] ?? 0
  return all.map((value) => (value > median ? '1' : '0')).join('')
}

const bitsOf = (hash: string) =>
  [...hash].map((digit) => Number.parseInt(digit, 16).toString(2).padStart(4, '0')).join('')
/** Grey noise from a small generator (Park and Miller 1988), which repeats neither along rows nor down columns. */
function noise(seed: number): number[] {
  let state = seed
  return Array.from({ length: N * N }, () => {
    state = (state * 48_271) % 2_147_483_647
    return state % 256
  })
}

describe('the hash of a picture', () => {
  it('is that of the transform’s definition', () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const grey = noise(seed)
      expect(bitsOf(pictureHash(grey))).toBe(bitsByDefinition(grey))
    }
  })

  it('does not change with contrast, nor with brightness but for the bit of the mean', () => {
    const grey = noise(7)
    expect(pictureHash(grey.map((value) => value * 0.5))).toBe(pictureHash(grey))
    expect(hashDistance(pictureHash(grey.map((value) => value + 40)), pictureHash(grey))).toBeLessThanOrEqual(1)
  })

  it('tells a picture from its negative in nearly every bit', () => {
    const grey = noise(9)
    const negative = grey.map((value) => 255 - value)
    expect(hashDistance(pictureHash(grey), pictureHash(negative))).toBeGreaterThanOrEqual(60)
  })
})

describe('the distance of two hashes', () => {
  const hash = fc.stringMatching(/^[0-9a-f]{16}$/)

  it('is the number of differing bits', () => {
    expect(hashDistance('0'.repeat(16), 'f'.repeat(16))).toBe(64)
    expect(hashDistance('8000000000000001', '0000000000000000')).toBe(2)
    fc.assert(
      fc.property(hash, hash, (a, b) => {
        const [x, y] = [bitsOf(a), bitsOf(b)]
        expect(hashDistance(a, b)).toBe([...x].filter((bit, k) => bit !== y[k]).length)
      }),
    )
  })
})
