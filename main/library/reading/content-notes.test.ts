import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { makePreviews } from '../previews/make-previews.ts'
import { readFacts } from './read-facts.ts'

const NOW_MS = Date.UTC(2026, 2, 15)
const notesOf = async (bytes: Buffer, fileName: string) => {
  const { file, kind } = await readFacts({ bytes, fileName, nowMs: NOW_MS })
  return { file, kind, notes: file.problems.filter(({ about }) => about === 'contents').map(({ text }) => text) }
}

/** One TIFF directory: tags of 32 bits, and where the next directory stands. */
function directory(tags: readonly (readonly [tag: number, type: number, value: number])[], nextAt = 0): Buffer {
  const bytes = Buffer.alloc(2 + tags.length * 12 + 4)
  bytes.writeUInt16LE(tags.length, 0)
  tags.forEach(([tag, type, value], k) => {
    bytes.writeUInt16LE(tag, 2 + k * 12)
    bytes.writeUInt16LE(type, 4 + k * 12)
    bytes.writeUInt32LE(type === 1 ? 4 : 1, 6 + k * 12)
    bytes.writeUInt32LE(value, 10 + k * 12)
  })
  bytes.writeUInt32LE(nextAt, bytes.length - 4)
  return bytes
}

/** A raw file as DNG 1.7 asks: sensor values in the first sub-directory, a JPEG preview in the second. */
function rawFile(jpeg: Buffer, orientation: number): Buffer {
  const [mainAt, sensorAt, previewAt, listAt, jpegAt] = [8, 200, 400, 600, 640]
  const list = Buffer.alloc(8)
  list.writeUInt32LE(sensorAt, 0)
  list.writeUInt32LE(previewAt, 4)
  const main = directory([
    [254, 4, 1],
    [274, 3, orientation],
    [330, 4, listAt],
    [50_706, 1, 0x00_00_04_01],
  ])
  main.writeUInt32LE(2, 2 + 2 * 12 + 4)
  const whole = Buffer.alloc(jpegAt + jpeg.length)
  whole.write('II*\0', 0, 'latin1')
  whole.writeUInt32LE(mainAt, 4)
  main.copy(whole, mainAt)
  directory([
    [259, 3, 7],
    [262, 3, 32_803],
    [273, 4, jpegAt],
    [279, 4, jpeg.length],
  ]).copy(whole, sensorAt)
  directory([
    [254, 4, 1],
    [259, 3, 7],
    [262, 3, 6],
    [273, 4, jpegAt],
    [279, 4, jpeg.length],
  ]).copy(whole, previewAt)
  list.copy(whole, listAt)
  jpeg.copy(whole, jpegAt)
  return whole
}

const aJpeg = (width: number, height: number) =>
  sharp({ create: { width, height, channels: 3, background: '#336699' } })
    .jpeg()
    .toBuffer()

describe('what a file holds beside its picture', () => {
  it('is nothing for a plain picture', async () => {
    expect((await notesOf(await aJpeg(16, 12), 'A.JPG')).notes).toEqual([])
  })

  it('is told of a raw file, which is shown upright by the preview in it', async () => {
    const { file, kind, notes } = await notesOf(rawFile(await aJpeg(60, 40), 6), 'A.DNG')
    expect([kind, file.mediaType, file.widthPx, file.heightPx, file.orientation]).toEqual([
      'picture',
      'image/x-adobe-dng',
      40,
      60,
      6,
    ])
    expect(notes).toEqual([expect.stringContaining('preview of 60 by 40 pixels')])
    const made = await makePreviews(rawFile(await aJpeg(60, 40), 6), file)
    expect(made).toMatchObject({ ok: true, widthPx: 40, heightPx: 60, problem: null })
  })

  it('is told of a raw file without a preview, which is kept all the same', async () => {
    const bytes = rawFile(Buffer.from('these are no pixels of a JPEG'), 1)
    const { file, kind } = await notesOf(bytes, 'A.DNG')
    expect(kind).toBe('picture')
    expect(await makePreviews(bytes, file)).toMatchObject({
      ok: false,
      problem: { text: expect.stringContaining('no preview picture') },
    })
  })

  it('counts the pages of a TIFF, but not a reduced copy', async () => {
    const pages = (second: number) => {
      const bytes = Buffer.concat([
        Buffer.from('II*\0\x08\0\0\0', 'latin1'),
        directory([[256, 4, 8]], 26),
        directory([[254, 4, second]]),
      ])
      return notesOf(bytes, 'A.TIF')
    }
    expect((await pages(0)).notes).toEqual(['The file holds 2 pages; the first is shown.'])
    expect((await pages(1)).notes).toEqual([])
  })

  it('says that a motion photo has a clip', async () => {
    const xmp =
      '<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#"><rdf:Description rdf:about="" xmlns:GCamera="http://ns.google.com/photos/1.0/camera/" GCamera:MotionPhoto="1"/></rdf:RDF></x:xmpmeta>'
    const jpeg = await sharp(await aJpeg(16, 12))
      .withXmp(xmp)
      .jpeg()
      .toBuffer()
    expect((await notesOf(jpeg, 'MVIMG.JPG')).notes).toEqual([expect.stringContaining('motion photo')])
  })
})
