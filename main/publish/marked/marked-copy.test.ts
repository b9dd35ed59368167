import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { type Mark, marksSchema } from '../../../app/evidence/markup.ts'
import { readEmbeddedThumbnail } from '../../library/previews/embedded-thumbnail.ts'
import { renderAtSize } from '../../library/previews/render-at-size.ts'
import { readFacts } from '../../library/reading/read-facts.ts'
import { markedCopy } from './marked-copy.ts'

const at = (xPx: number, yPx: number) => ({ xPx, yPx })
/** Upright 600 by 800: grey, with a white and black chequer that stands for a face from 200, 300 to 400, 500. */
function upright(): Buffer {
  const pixels = Buffer.alloc(600 * 800 * 3, 128)
  for (let y = 300; y < 500; y += 1)
    for (let x = 200; x < 400; x += 1)
      pixels.fill((x >> 3) % 2 === (y >> 3) % 2 ? 255 : 0, (y * 600 + x) * 3, (y * 600 + x) * 3 + 3)
  return pixels
}

/** As a camera held upright stores it: lying on its side, orientation 6 (Exif 2.32, tag 274). */
async function stored(): Promise<Buffer> {
  const lying = await sharp(upright(), { raw: { width: 600, height: 800, channels: 3 } })
    .rotate(270)
    .raw()
    .toBuffer({ resolveWithObject: true })
  return sharp(lying.data, { raw: { width: lying.info.width, height: lying.info.height, channels: 3 } })
    .withExif({ IFD0: { Make: 'Example', Model: 'One' } })
    .withMetadata({ orientation: 6 })
    .jpeg({ quality: 95 })
    .toBuffer()
}

async function copyOf(marks: readonly object[]): Promise<Buffer> {
  const bytes = await stored()
  const { file } = await readFacts({ bytes, fileName: 'a.jpg', nowMs: Date.UTC(2026, 2, 15) })
  const made = await markedCopy(bytes, { file, marks: marksSchema.parse(marks) })
  return made ?? expect.fail('no copy was made')
}

async function pixelsOf(jpeg: Buffer): Promise<(x: number, y: number) => readonly number[]> {
  const { data, info } = await sharp(jpeg).raw().toBuffer({ resolveWithObject: true })
  return (x, y) => [...data.subarray((y * info.width + x) * info.channels, (y * info.width + x) * info.channels + 3)]
}
const isNear = (seen: readonly number[], wanted: readonly number[]) =>
  seen.every((value, k) => Math.abs(value - (wanted[k] ?? NaN)) < 30)

const face = { kind: 'obscured', id: 'o', corner: at(200, 300), widthPx: 200, heightPx: 200, what: 'face' }
const VERMILION = [0xd5, 0x5e, 0]

describe('an annotated copy', () => {
  it('is upright, as large as the original, and has the marks where they were drawn', async () => {
    const copy = await copyOf([{ kind: 'arrow', id: 'a', from: at(60, 700), to: at(560, 700), weight: 'bold' }])
    expect(await sharp(copy).metadata()).toMatchObject({ width: 600, height: 800 })
    const pixel = await pixelsOf(copy)
    expect(isNear(pixel(200, 700), VERMILION)).toBe(true)
    expect(isNear(pixel(200, 640), [128, 128, 128])).toBe(true)
    // Beside the shaft its white edge.
    const column = Array.from({ length: 20 }, (_, k) => pixel(200, 690 + k))
    expect(column.some((seen) => isNear(seen, [255, 255, 255]))).toBe(true)
  })

  it('writes letters in the program’s own font', async () => {
    const pixel = await pixelsOf(
      await copyOf([{ kind: 'text', id: 't', at: at(40, 700), text: 'HHHH', weight: 'bold' }]),
    )
    const row = Array.from({ length: 200 }, (_, k) => pixel(40 + k, 690))
    const inked = row.map((seen) => isNear(seen, VERMILION))
    const stems = inked.filter((is, k) => is && inked[k - 1] !== true).length
    // Eight stems of four letters, or crossbars joined: never none, never a box for a missing letter.
    expect(stems).toBeGreaterThanOrEqual(4)
    expect(stems).toBeLessThanOrEqual(8)
  })

  it('has nothing left of an obscured area but a few means', async () => {
    const pixel = await pixelsOf(await copyOf([face]))
    // The chequer's 0 and 255 are gone: each cell of 50 px is one grey.
    for (const [x, y] of [
      [215, 315],
      [270, 330],
      [330, 420],
      [380, 480],
    ] as const) {
      const here = pixel(x, y)
      expect(here.every((value) => Math.abs(value - 128) < 20)).toBe(true)
      expect(isNear(pixel(x + 8, y), here)).toBe(true)
    }
  })

  it('carries no Exif block, so no thumbnail that shows what is obscured', async () => {
    const copy = await copyOf([face])
    const { exif, xmp, iptc, orientation } = await sharp(copy).metadata()
    expect([exif, xmp, iptc, orientation]).toEqual([undefined, undefined, undefined, undefined])
    expect(await readEmbeddedThumbnail(copy)).toBeNull()
    expect(copy.includes('Exif')).toBe(false)
  })

  it('is not made of a picture that can not be read', async () => {
    const { file } = await readFacts({ bytes: await stored(), fileName: 'a.jpg', nowMs: Date.UTC(2026, 2, 15) })
    const marks: readonly Mark[] = []
    expect(await markedCopy(Buffer.from('no picture'), { file, marks })).toBeNull()
  })
})

describe('a picture for the page', () => {
  it('has its obscured areas destroyed at any size, upright', async () => {
    const obscured = {
      widthPx: 600,
      heightPx: 800,
      obscured: [{ leftPx: 200, topPx: 300, widthPx: 200, heightPx: 200, what: 'plate' as const }],
    }
    const made = await renderAtSize(await stored(), {
      longEdgePx: 400,
      quality: 90,
      orientation: 6,
      mediaType: 'image/jpeg',
      obscured,
    })
    if (!made.ok) return expect.fail('nothing was made')
    const pixel = await pixelsOf(made.jpeg)
    const seen = Array.from({ length: 90 }, (_, k) => pixel(105 + k, 200)[0] ?? 0)
    expect(Math.max(...seen) - Math.min(...seen)).toBeLessThan(8)
    expect(made.jpeg.includes('Exif')).toBe(false)
  })
})
