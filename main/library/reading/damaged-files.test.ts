import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { photoFileSchema } from '../../../app/evidence/photo.ts'
import { scattered } from '../../../tests/builders/scattered.ts'
import { readEmbeddedThumbnail } from '../previews/embedded-thumbnail.ts'
import { readFacts } from './read-facts.ts'

const NOW_MS = Date.UTC(2026, 2, 15)

function box(type: string, ...parts: Buffer[]): Buffer {
  const body = Buffer.concat(parts)
  const head = Buffer.alloc(8)
  head.writeUInt32BE(8 + body.length)
  head.write(type, 4, 'latin1')
  return Buffer.concat([head, body])
}

const bytesOf = (...values: number[]): Buffer => Buffer.from(values)

/** A HEIC skeleton: file type, then a meta box with the given boxes. */
function heicWith(...boxes: Buffer[]): Buffer {
  const type = box('ftyp', Buffer.from('heic\0\0\0\0mif1heic', 'latin1'))
  return Buffer.concat([type, box('meta', bytesOf(0, 0, 0, 0), ...boxes)])
}

async function record(bytes: Buffer): Promise<ReturnType<typeof photoFileSchema.parse>> {
  await readEmbeddedThumbnail(bytes)
  return photoFileSchema.parse((await readFacts({ bytes, fileName: 'IMG.JPG', nowMs: NOW_MS })).file)
}

describe('damaged and hostile files', () => {
  it.each(['jpeg', 'png', 'webp', 'tiff', 'avif'] as const)(
    'a %s cut or altered anywhere still gives a record',
    async (format) => {
      const whole = await sharp({ create: { width: 16, height: 12, channels: 3, background: '#2277aa' } })
        .withExif({
          IFD0: { Make: 'Maker', Model: 'Model' },
          IFD2: { DateTimeOriginal: '2026:03:14 09:26:53' },
          IFD3: {
            GPSLatitudeRef: 'N',
            GPSLatitude: '27/1 56/1 42/1',
            GPSLongitudeRef: 'W',
            GPSLongitude: '82/1 27/1 18/1',
          },
        })
        .toFormat(format)
        .toBuffer()
      for (let length = 0; length < whole.length; length += 7) await record(whole.subarray(0, length))
      const places = scattered(1)
      for (let round = 0; round < 200; round += 1) {
        const altered = Buffer.from(whole)
        for (let k = 0; k < 4; k += 1) altered[places.next().value % altered.length] = places.next().value >>> 24
        expect((await record(altered)).bytes).toBe(whole.length)
      }
    },
  )

  it.each([3, 5, 11])('makes no room for a tag of type %i that claims thirty million values', async (type) => {
    const tiff = Buffer.alloc(64)
    tiff.write('II*\0', 0, 'latin1')
    tiff.writeUInt32LE(8, 4)
    tiff.writeUInt16LE(1, 8)
    tiff.writeUInt16LE(0x0112, 10)
    tiff.writeUInt16LE(type, 12)
    tiff.writeUInt32LE(30_000_000, 14)
    const before = process.memoryUsage()
    expect(await record(tiff)).toMatchObject({ mediaType: 'image/tiff', widthPx: null, orientation: 1 })
    const after = process.memoryUsage()
    const grownBytes = after.heapUsed - before.heapUsed + after.arrayBuffers - before.arrayBuffers
    expect(grownBytes).toBeLessThan(30_000_000)
  })

  it('reads a primary HEIC item turned by its container, and never by Exif again', async () => {
    const properties = box(
      'iprp',
      box('ipco', box('ispe', bytesOf(0, 0, 0, 0, 0, 0, 16, 0, 0, 0, 12, 0)), box('irot', bytesOf(3))),
      box('ipma', bytesOf(0, 0, 0, 0, 0, 0, 0, 1, 0, 1, 2, 0x81, 0x82)),
    )
    const facts = await record(heicWith(box('pitm', bytesOf(0, 0, 0, 0, 0, 1)), properties))
    expect(facts).toMatchObject({ mediaType: 'image/heic', widthPx: 3072, heightPx: 4096, orientation: 1 })
  })

  it('does not put an item together that claims the whole file thousands of times', async () => {
    const infe = box('infe', bytesOf(2, 0, 0, 0, 0, 1, 0, 0), Buffer.from('Exif\0', 'latin1'))
    const extents = Buffer.concat(Array.from({ length: 60_000 }, () => bytesOf(0, 0, 0, 0, 0, 8, 0, 0)))
    const iloc = box('iloc', bytesOf(0, 0, 0, 0, 0x44, 0, 0, 1, 0, 1, 0, 0, 0xea, 0x60), extents)
    const file = heicWith(box('iinf', bytesOf(0, 0, 0, 0, 0, 1), infe), iloc)
    const startedMs = performance.now()
    expect((await record(file)).mediaType).toBe('image/heic')
    expect(performance.now() - startedMs).toBeLessThan(1000)
  })

  it('says when a picture claims a size that is not decoded', async () => {
    const header = Buffer.concat([
      Buffer.from('\x89PNG\r\n\x1a\n\0\0\0\rIHDR', 'latin1'),
      bytesOf(0, 1, 0, 0, 0, 1, 0, 0, 1, 0, 0, 0, 0),
      Buffer.alloc(4),
    ])
    const { problems } = await record(header)
    expect(problems).toContainEqual({ about: 'preview', text: expect.stringContaining('65,536 by 65,536 pixels') })
  })
})
