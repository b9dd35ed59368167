import { existsSync, readdirSync } from 'node:fs'
import sharp, { type Sharp } from 'sharp'
import { beforeAll, describe, expect, it } from 'vitest'
import { APART_BITS, NEAR_BITS } from '../../app/evidence/near-doubles/near-doubles.ts'
import { hashDistance } from '../../app/evidence/near-doubles/picture-hash.ts'
import type { PictureLook } from '../../app/evidence/near-doubles/picture-look.ts'
import { lookAt } from '../../main/library/previews/look-at-picture.ts'

const SAMPLE_JOB = 'sample-jobs/heron-spit/photos/'
const ROOFS = '../shared/samples/roof-photos/'
const STREETS = '../shared/samples/photos-more/'

/** Names of pictures that show different things: rendered roofs, real roofs and, where they are at hand, street scenes. */
function picturesAtHand(): readonly string[] {
  const inFolder = (folder: string, wanted: RegExp) =>
    existsSync(folder)
      ? readdirSync(folder)
          .filter((name) => wanted.test(name))
          .map((name) => folder + name)
      : []
  return [
    ...inFolder(SAMPLE_JOB, /[02468]\.jpg$/),
    ...inFolder(ROOFS, /\.(png|tif)$/),
    ...inFolder(STREETS, /^opensfm__.*\.jpg$/i),
  ]
}

const copies = {
  'written again at quality 40': (picture: Sharp) => picture.jpeg({ quality: 40 }),
  'at half the size': (picture: Sharp, width: number) => picture.resize(Math.round(width / 2)).jpeg({ quality: 80 }),
  brightened: (picture: Sharp) => picture.linear(1.2, 8).jpeg(),
  darkened: (picture: Sharp) => picture.linear(0.75, 0).jpeg(),
  'out of focus': (picture: Sharp) => picture.blur(2).jpeg(),
} as const

const share = (distances: readonly number[], bits: number) =>
  distances.filter((distance) => distance <= bits).length / Math.max(1, distances.length)

describe('hashes of real pictures and their copies', { timeout: 120_000 }, () => {
  const looks: PictureLook[] = []
  const byCopy = new Map<string, number[]>()
  const sharper: boolean[] = []

  beforeAll(async () => {
    for (const path of picturesAtHand()) {
      const picture = await sharp(path)
        .resize({ width: 900, height: 900, fit: 'inside', withoutEnlargement: true })
        .toBuffer()
      const { width } = await sharp(picture).metadata()
      const look = await lookAt(sharp(picture))
      looks.push(look)
      for (const [name, make] of Object.entries(copies)) {
        const copied = await lookAt(sharp(await make(sharp(picture), width).toBuffer()))
        byCopy.set(name, [...(byCopy.get(name) ?? []), hashDistance(look.hash, copied.hash)])
        if (name === 'out of focus') sharper.push(look.sharpness > copied.sharpness)
      }
    }
    const rates = [4, 6, APART_BITS, 10, NEAR_BITS, 14, 16].map((bits) => ({
      bits,
      'copies found': share([...byCopy.values()].flat(), bits).toFixed(4),
      'different pictures mistaken': share(betweenPictures(), bits).toFixed(5),
    }))
    console.table(rates)
  }, 120_000)

  const betweenPictures = () => looks.flatMap((a, at) => looks.slice(at + 1).map((b) => hashDistance(a.hash, b.hash)))

  it.each(Object.keys(copies))('find a copy %s in at least 19 of 20', (name) => {
    expect(share(byCopy.get(name) ?? [], NEAR_BITS)).toBeGreaterThanOrEqual(0.95)
  })

  it('find at least 19 of 20 copies of any kind by the stricter limit for photos taken apart', () => {
    expect(share([...byCopy.values()].flat(), APART_BITS)).toBeGreaterThanOrEqual(0.95)
  })

  it('mistake different pictures for near-doubles in less than one pair of a thousand', () => {
    expect(betweenPictures().length).toBeGreaterThan(300)
    expect(share(betweenPictures(), NEAR_BITS)).toBeLessThan(0.001)
  })

  it('find a picture sharper than its copy out of focus, every time', () => {
    expect(sharper.every(Boolean)).toBe(true)
  })
})
