import sharp, { type OutputInfo } from 'sharp'
import { describe, expect, it } from 'vitest'
import { readFacts } from '../reading/read-facts.ts'
import { isSrgbAsStored } from './colour-profile.ts'
import { readEmbeddedThumbnail } from './embedded-thumbnail.ts'
import { makePreviews, type Previews } from './make-previews.ts'
import { previewLongEdgePx } from './preview-size.ts'
import { renderAtSize } from './render-at-size.ts'

const RED = [255, 0, 0]
const GREEN = [0, 160, 0]
const BLUE = [0, 0, 255]
const WHITE = [255, 255, 255]

/** Stored pixels, 96 by 64: red, green above; blue, white below. */
function quarters(): Promise<Buffer> {
  const size = { width: 96, height: 64, channels: 3 as const }
  const pixels = Array.from({ length: 96 * 64 }, (_, at) => {
    const isLeft = at % 96 < 48
    return at < 96 * 32 ? (isLeft ? RED : GREEN) : isLeft ? BLUE : WHITE
  })
  return sharp(Buffer.from(pixels.flat()), { raw: size }).png().toBuffer()
}

/**
 * Where the stored first row and first column are seen, by orientation: Exif 2.32 (CIPA DC-008-2019), tag 274, "the 0th
 * row is at the visual ... of the image, the 0th column is the visual ...".
 */
const SEEN: Record<number, { row: string; column: string }> = {
  1: { row: 'top', column: 'left' },
  2: { row: 'top', column: 'right' },
  3: { row: 'bottom', column: 'right' },
  4: { row: 'bottom', column: 'left' },
  5: { row: 'left', column: 'top' },
  6: { row: 'right', column: 'top' },
  7: { row: 'right', column: 'bottom' },
  8: { row: 'left', column: 'bottom' },
}

const OPPOSITE: Record<string, string> = { top: 'bottom', bottom: 'top', left: 'right', right: 'left' }

async function colourAt(picture: Buffer, sides: (string | undefined)[]): Promise<number[]> {
  const { data, info }: { data: Buffer; info: OutputInfo } = await sharp(picture)
    .raw()
    .toBuffer({ resolveWithObject: true })
  const x = Math.round(info.width * (sides.includes('right') ? 0.75 : 0.25))
  const y = Math.round(info.height * (sides.includes('bottom') ? 0.75 : 0.25))
  return [...data.subarray((y * info.width + x) * info.channels).subarray(0, 3)]
}

const isNear = (seen: number[], wanted: number[]): boolean =>
  seen.every((v, k) => Math.abs(v - (wanted[k] ?? NaN)) < 12)

async function previewsOf(bytes: Buffer): Promise<Previews> {
  const { file } = await readFacts({ bytes, fileName: 'a', nowMs: Date.UTC(2026, 2, 15) })
  return makePreviews(bytes, file)
}

describe('previews', () => {
  it.each(
    (['jpeg', 'png', 'webp', 'tiff'] as const).flatMap((format) =>
      Object.keys(SEEN).map((key) => [format, Number(key)] as const),
    ),
  )('are upright: %s of orientation %i', async (format, orientation) => {
    const stored = await sharp(await quarters())
      .withMetadata({ orientation })
      .toFormat(format, { quality: 95 })
      .toBuffer()
    const made = await previewsOf(stored)
    const page = await renderAtSize(stored, { longEdgePx: 48, quality: 90, orientation, mediaType: 'image/jpeg' })
    if (!made.ok || !page.ok) return expect.fail('nothing was made')
    expect([made.widthPx, made.heightPx]).toEqual(orientation >= 5 ? [64, 96] : [96, 64])
    expect([page.widthPx, page.heightPx]).toEqual(orientation >= 5 ? [32, 48] : [48, 32])
    const { row = '', column = '' } = SEEN[orientation] ?? {}
    for (const picture of [made.preview, made.thumbnail, page.jpeg]) {
      expect(isNear(await colourAt(picture, [row, column]), RED)).toBe(true)
      expect(isNear(await colourAt(picture, [row, OPPOSITE[column]]), GREEN)).toBe(true)
      expect(isNear(await colourAt(picture, [OPPOSITE[row], column]), BLUE)).toBe(true)
      expect(isNear(await colourAt(picture, [OPPOSITE[row], OPPOSITE[column]]), WHITE)).toBe(true)
    }
  })

  it.each([
    [4032, 1344],
    [4800, 1600],
    [3840, 1280],
    [3839, 1600],
    [4803, 1600],
    [8000, 1600],
    [900, 900],
  ])('of a long edge of %i px have one of %i px', (original, preview) => {
    expect(previewLongEdgePx(original)).toBe(preview)
  })

  it('are put on white where the picture is transparent, and are three colours deep even when it is grey', async () => {
    const glass = await sharp({ create: { width: 40, height: 40, channels: 4, background: '#00000000' } })
      .png()
      .toBuffer()
    const made = await previewsOf(await sharp(glass).toColourspace('grey16').png().toBuffer())
    if (!made.ok) return expect.fail('nothing was made')
    expect(await colourAt(made.preview, [])).toEqual(WHITE)
    expect((await sharp(made.preview).metadata()).channels).toBe(3)
  })

  it('turn CMYK and wide-gamut pixels into sRGB', async () => {
    const solid = sharp({ create: { width: 40, height: 40, channels: 3, background: '#c04020' } })
    const printed = await previewsOf(await solid.clone().withIccProfile('cmyk').toColourspace('cmyk').tiff().toBuffer())
    const wide = await solid.clone().withIccProfile('p3').jpeg({ quality: 100 }).toBuffer()
    expect(isSrgbAsStored((await sharp(wide).metadata()).icc)).toBe(false)
    for (const made of [printed, await previewsOf(wide)]) {
      if (!made.ok) return expect.fail('nothing was made')
      expect(isNear(await colourAt(made.preview, []), [192, 64, 32])).toBe(true)
    }
  })

  it('skip the colour transform for sRGB only', async () => {
    const tagged = await sharp(await quarters())
      .withIccProfile('srgb')
      .jpeg()
      .toBuffer()
    expect(isSrgbAsStored((await sharp(tagged).metadata()).icc)).toBe(true)
    expect(isSrgbAsStored(undefined)).toBe(true)
    expect(isSrgbAsStored(Buffer.alloc(200))).toBe(false)
  })

  it('show what is left of a cut photo, with a warning, and nothing of one without any pixels', async () => {
    const noise = Buffer.from(Array.from({ length: 300 * 300 * 3 }, (_, k) => (k * k * 31) % 251))
    const whole = await sharp(noise, { raw: { width: 300, height: 300, channels: 3 } })
      .jpeg()
      .toBuffer()
    const cut = await previewsOf(whole.subarray(0, whole.length / 2))
    expect(cut).toMatchObject({ ok: true, problem: { about: 'preview', text: expect.stringContaining('damaged') } })
    const header = await previewsOf(whole.subarray(0, 100))
    expect(header).toMatchObject({ ok: false, problem: { about: 'preview', text: expect.stringContaining('damaged') } })
  })

  it('say that a missing file can not be rendered', async () => {
    const gone = await renderAtSize('no-such-folder/gone.jpg', {
      longEdgePx: 100,
      quality: 80,
      orientation: 1,
      mediaType: 'image/jpeg',
    })
    expect(gone.ok).toBe(false)
  })
})

describe('the thumbnail a camera embeds', () => {
  it('is found in the second directory of the Exif block, with the orientation to apply', async () => {
    const small = await sharp(await quarters())
      .resize(24)
      .jpeg()
      .toBuffer()
    const found = await readEmbeddedThumbnail(
      withThumbnail(
        await sharp(await quarters())
          .jpeg()
          .toBuffer(),
        small,
      ),
    )
    expect(found?.orientation).toBe(6)
    expect(found?.jpeg.equals(small)).toBe(true)
  })

  it('is null where there is none', async () => {
    expect(await readEmbeddedThumbnail(await quarters())).toBeNull()
    expect(await readEmbeddedThumbnail(Buffer.alloc(0))).toBeNull()
  })
})

/** Puts an Exif segment with an orientation and an IFD1 thumbnail in front of a JPEG (Exif 2.32, 4.5 and 4.6.2). */
function withThumbnail(jpeg: Buffer, thumbnail: Buffer): Buffer {
  const entry = (tag: number, type: number, value: number): Buffer => {
    const bytes = Buffer.alloc(12)
    bytes.writeUInt16BE(tag)
    bytes.writeUInt16BE(type, 2)
    bytes.writeUInt32BE(1, 4)
    if (type === 3) bytes.writeUInt16BE(value, 8)
    else bytes.writeUInt32BE(value, 8)
    return bytes
  }
  const count = (entries: number): Buffer => Buffer.from([0, entries])
  const pointer = (to: number): Buffer => Buffer.from([0, 0, 0, to])
  const first = [count(1), entry(0x0112, 3, 6), pointer(26)]
  const second = [count(2), entry(0x0201, 4, 56), entry(0x0202, 4, thumbnail.length), pointer(0)]
  const block = Buffer.concat([Buffer.from('MM\0*\0\0\0\x08', 'latin1'), ...first, ...second, thumbnail])
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), block])
  const head = Buffer.from([0xff, 0xe1, (body.length + 2) >> 8, (body.length + 2) & 255])
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)])
}
