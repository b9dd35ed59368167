import { describe, expect, it } from 'vitest'
import { photoIdSchema } from '../../job/ids.ts'
import { APART_BITS, type LookedAt, NEAR_BITS, nearDoubles } from './near-doubles.ts'
import { laplacianVariance, pictureLook } from './picture-look.ts'

/** A hash that differs from the one of zeros in so many bits, counted from bit `from`. */
function hashOf(ones: number, from = 0): string {
  const bits = Array.from({ length: 64 }, (_, k) => (k >= from && k < from + ones ? '1' : '0')).join('')
  return Array.from({ length: 16 }, (_, k) => Number.parseInt(bits.slice(k * 4, k * 4 + 4), 2).toString(16)).join('')
}

let count = 0
function photo(given: { hash?: string; atS?: number | null; sharpness?: number; clippedShare?: number }): LookedAt {
  count += 1
  const { hash = hashOf(0), atS = 0, sharpness = 100, clippedShare = 0 } = given
  return {
    id: photoIdSchema.parse(`p${count}`),
    number: count,
    instantMs: atS === null ? null : atS * 1000,
    look: { hash, sharpness, clippedShare },
  }
}
const sizes = (photos: readonly LookedAt[]) => nearDoubles(photos).map((group) => group.photos.length)

describe('near-doubles', () => {
  it('look nearly alike: less alike is enough within a minute and a half', () => {
    expect(sizes([photo({}), photo({ hash: hashOf(NEAR_BITS), atS: 60 })])).toEqual([2])
    expect(sizes([photo({}), photo({ hash: hashOf(NEAR_BITS + 1), atS: 60 })])).toEqual([])
    expect(sizes([photo({}), photo({ hash: hashOf(NEAR_BITS), atS: 600 })])).toEqual([])
    expect(sizes([photo({}), photo({ hash: hashOf(APART_BITS), atS: 600 })])).toEqual([2])
    expect(sizes([photo({}), photo({ hash: hashOf(APART_BITS), atS: null })])).toEqual([2])
  })

  it('are all near each other: a slow walk along a roof is no group', () => {
    const walk = Array.from({ length: 6 }, (_, k) => photo({ hash: hashOf(k * 8), atS: k * 5 }))
    for (const group of nearDoubles(walk)) expect(group.photos.length).toBeLessThanOrEqual(2)
  })

  it('leave every photo in at most one group', () => {
    const photos = Array.from({ length: 60 }, (_, k) =>
      photo({ hash: hashOf((k * 5) % 17, (k * 11) % 40), atS: k * 7 }),
    )
    const ids = nearDoubles(photos).flatMap((group) => group.photos.map(({ id }) => id))
    expect(new Set(ids).size).toBe(ids.length)
  })

  it('have the sharpest proposed, with the reason', () => {
    const [a, b] = [photo({ sharpness: 80 }), photo({ sharpness: 200 })]
    expect(nearDoubles([a, b])).toMatchObject([{ best: b.id, why: 'sharpest, 2.5 times the next' }])
  })

  it('do not have a burnt out one proposed, however sharp', () => {
    const [a, b] = [photo({ sharpness: 80, clippedShare: 0.01 }), photo({ sharpness: 300, clippedShare: 0.3 })]
    expect(nearDoubles([a, b])).toMatchObject([{ best: a.id, why: '1 % burnt out, others up to 30 %' }])
  })
})

describe('the look of a picture', () => {
  it('has the variance of the Laplacian that arithmetic gives', () => {
    // One bright pixel of 10 in the second row of a field of 5 by 5: of the inner values of the rows looked at, the
    // second and the fourth, one is -40, its two neighbours are 10, and the rest 0.
    const data = new Uint8Array(25)
    data[7] = 10
    const mean = (-40 + 10 + 10) / 6
    const expected = (40 ** 2 + 2 * 10 ** 2) / 6 - mean ** 2
    expect(laplacianVariance({ data, width: 5, height: 5 })).toBeCloseTo(expected, 9)
    expect(laplacianVariance({ data: new Uint8Array(25).fill(90), width: 5, height: 5 })).toBe(0)
  })

  it('counts what is burnt out', () => {
    const data = new Uint8Array(640 * 480).fill(100)
    data.fill(255, 0, (640 * 480) / 4)
    expect(pictureLook({ data, width: 640, height: 480 }).clippedShare).toBe(0.25)
  })
})
