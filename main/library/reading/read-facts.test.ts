import { createHash } from 'node:crypto'
import sharp, { type Exif } from 'sharp'
import { describe, expect, it } from 'vitest'
import { photoFileSchema } from '../../../app/evidence/photo.ts'
import { type FileFacts, readFacts, readLargeFacts } from './read-facts.ts'

const NOW_MS = Date.UTC(2026, 2, 15, 12)

/** A tiny JPEG whose Exif is written by libvips, so that reader and writer are not the same hand. */
function jpegWith(exif: Exif): Promise<Buffer> {
  return sharp({ create: { width: 8, height: 6, channels: 3, background: '#808080' } })
    .withExif(exif)
    .jpeg()
    .toBuffer()
}

async function factsOf(exif: Exif): Promise<FileFacts['file']> {
  return (await readFacts({ bytes: await jpegWith(exif), fileName: 'IMG_0001.JPG', nowMs: NOW_MS })).file
}

const aboutOf = (file: FileFacts['file']): string[] => file.problems.map(({ about }) => about)

describe('the time a camera wrote', () => {
  it('keeps a sub-second "05" as five hundredths, with the offset beside it', async () => {
    const { written, problems } = await factsOf({
      IFD2: { DateTimeOriginal: '2026:03:14 09:26:53', SubSecTimeOriginal: '05', OffsetTimeOriginal: '-05:00' },
    })
    expect(written).toEqual({
      tag: 'DateTimeOriginal',
      raw: '2026:03:14 09:26:53',
      local: '2026-03-14T09:26:53.05',
      offsetMinutes: -300,
      gpsUtcMs: null,
    })
    expect(problems).toEqual([])
  })

  it.each([
    ['+14:00', 840],
    ['-12:00', -720],
    ['+00:00', 0],
    ['+05:45', 345],
  ])('takes the offset %s', async (offset, minutes) => {
    const { written } = await factsOf({
      IFD2: { DateTimeOriginal: '2026:03:14 09:26:53', OffsetTimeOriginal: offset },
    })
    expect(written.offsetMinutes).toBe(minutes)
  })

  it.each(['+15:00', '-12:15', '+5:00', '+01:60', 'EST'])('refuses the offset %s and says so', async (offset) => {
    const file = await factsOf({ IFD2: { DateTimeOriginal: '2026:03:14 09:26:53', OffsetTimeOriginal: offset } })
    expect(file.written.local).toBe('2026-03-14T09:26:53')
    expect(file.written.offsetMinutes).toBeNull()
    expect(file.problems).toEqual([{ about: 'time', text: expect.stringContaining(offset) }])
  })

  it.each([
    '2216:03:14 09:26:53',
    '2026:13:14 09:26:53',
    '2026:02:29 09:26:53',
    '2026:03:14 24:00:00',
    '0000:00:00 00:00:00',
    '1980:01:01 00:00:00',
    '2026:03:17 09:26:53',
    'yesterday',
  ])('does not believe %s but keeps the text', async (text) => {
    const file = await factsOf({ IFD2: { DateTimeOriginal: text } })
    expect(file.written).toMatchObject({ tag: null, raw: text, local: null })
    expect(file.problems).toEqual([{ about: 'time', text: expect.stringContaining(text) }])
  })

  it('falls back on the next believable date and names its tag', async () => {
    const file = await factsOf({
      IFD0: { DateTime: '2026:03:14 11:00:00' },
      IFD2: { DateTimeOriginal: '0000:00:00 00:00:00', DateTimeDigitized: '2026:03:14 10:00:00' },
    })
    expect(file.written).toMatchObject({ tag: 'DateTimeDigitized', local: '2026-03-14T10:00:00' })
    expect(aboutOf(file)).toEqual(['time'])
  })

  it('takes the date of the last change only with a warning', async () => {
    const file = await factsOf({ IFD0: { DateTime: '2026:03:14 11:00:00' } })
    expect(file.written).toMatchObject({ tag: 'DateTime', local: '2026-03-14T11:00:00' })
    expect(file.problems).toEqual([{ about: 'time', text: expect.stringContaining('last change') }])
  })

  it('reads blanks as no date, without a fuss', async () => {
    const file = await factsOf({ IFD2: { DateTimeOriginal: '    :  :     :  :  ' } })
    expect(file.written).toMatchObject({ tag: null, raw: null, local: null })
    expect(file.problems).toEqual([])
  })

  it('reads the satellite date and time as UTC, and refuses an hour 25', async () => {
    const clock = { GPSDateStamp: '2026:03:14', GPSTimeStamp: '13/1 26/1 107/2' }
    expect((await factsOf({ IFD3: clock })).written.gpsUtcMs).toBe(Date.UTC(2026, 2, 14, 13, 26, 53, 500))
    const file = await factsOf({ IFD3: { ...clock, GPSTimeStamp: '25/1 26/1 53/1' } })
    expect(file.written.gpsUtcMs).toBeNull()
    expect(aboutOf(file)).toEqual(['time'])
  })
})

describe('the place a camera wrote', () => {
  const HOUSE = {
    GPSLatitudeRef: 'N',
    GPSLatitude: '27/1 56/1 42/1',
    GPSLongitudeRef: 'W',
    GPSLongitude: '82/1 27/1 18/1',
  }

  it('gives west and south their sign, and keeps the altitude and the stated error', async () => {
    const { position } = await factsOf({ IFD3: { ...HOUSE, GPSAltitude: '5/2', GPSHPositioningError: '49/10' } })
    expect(position?.latDeg).toBeCloseTo(27.945, 9)
    expect(position?.lonDeg).toBeCloseTo(-82.455, 9)
    expect(position).toMatchObject({ altitudeM: 2.5, errorM: 4.9 })
    const south = await factsOf({ IFD3: { ...HOUSE, GPSLatitudeRef: 'S' } })
    expect(south.position?.latDeg).toBeCloseTo(-27.945, 9)
  })

  it.each([
    ['0, 0', { GPSLatitude: '0/1 0/1 0/1', GPSLongitude: '0/1 0/1 0/1' }],
    ['a latitude above 90', { GPSLatitude: '91/1 0/1 0/1' }],
    ['a zero denominator', { GPSLatitude: '27/1 56/1 0/0' }],
    ['75 minutes', { GPSLatitude: '27/1 75/1 0/1' }],
    ['no hemisphere letter', { GPSLongitudeRef: ' ' }],
    ['a letter of the other axis', { GPSLongitudeRef: 'N' }],
  ])('does not believe %s and says so', async (_, change) => {
    const file = await factsOf({ IFD3: { ...HOUSE, ...change } })
    expect(file.position).toBeNull()
    expect(aboutOf(file)).toEqual(['position'])
  })

  it('leaves an altitude with a zero denominator out, and keeps the position', async () => {
    const { position, problems } = await factsOf({ IFD3: { ...HOUSE, GPSAltitude: '5/0' } })
    expect(position).toMatchObject({ altitudeM: null, errorM: null })
    expect(problems).toEqual([])
  })

  it('reads the direction with its north, 360 as 0, and refuses 361', async () => {
    const pointed = (degrees: string, letter: string): Exif => ({
      IFD3: { GPSImgDirection: degrees, GPSImgDirectionRef: letter },
    })
    expect((await factsOf(pointed('360/1', 'T'))).direction).toEqual({ azimuthDeg: 0, reference: 'true' })
    expect((await factsOf(pointed('411/2', 'M'))).direction).toEqual({ azimuthDeg: 205.5, reference: 'magnetic' })
    const wrong = await factsOf(pointed('361/1', 'T'))
    expect(wrong.direction).toBeNull()
    expect(aboutOf(wrong)).toEqual(['direction'])
  })
})

describe('what a file is', () => {
  it('takes its type from the content and says when the name promises another', async () => {
    const bytes = await jpegWith({ IFD0: { Make: 'Maker  ', Model: 'Model 1' } })
    const facts = await readFacts({ bytes, fileName: 'roof.png', nowMs: NOW_MS })
    expect(facts).toMatchObject({ kind: 'picture', typeLabel: 'JPEG picture', whyNotPicture: null })
    expect(facts.file).toMatchObject({ mediaType: 'image/jpeg', widthPx: 8, heightPx: 6, bytes: bytes.length })
    expect(facts.file.camera).toEqual({ make: 'Maker', model: 'Model 1', serial: '' })
    expect(facts.file.sha256).toBe(createHash('sha256').update(bytes).digest('hex'))
    expect(facts.file.problems).toEqual([{ about: 'picture', text: expect.stringContaining('JPEG picture') }])
  })

  it.each([
    ['nothing.jpg', Buffer.alloc(0), 'empty file'],
    ['noise.jpg', Buffer.from(Array.from({ length: 999 }, (_, k) => (k * 73 + 200) % 256)), 'file of an unknown type'],
    ['letter.pdf', Buffer.from('%PDF-1.7\n'), 'PDF document'],
    ['notes.srt', Buffer.from('1\n00:00:01,000 --> 00:00:02,000\nRidge tile is loose.\n'), 'subtitle file (SRT)'],
    [
      'walk.vtt',
      Buffer.from('\ufeffWEBVTT\r\n\r\n00:01.000 --> 00:02.000\r\nRidge tile is loose.\r\n'),
      'subtitle file (WebVTT)',
    ],
    ['letter.txt', Buffer.from('WEBVTTs are files of cues.\n'), 'text file'],
  ])('%s is no picture, and why is told', async (fileName, bytes, typeLabel) => {
    const facts = await readFacts({ bytes, fileName, nowMs: NOW_MS })
    expect(facts).toMatchObject({ kind: 'other', typeLabel, whyNotPicture: expect.stringMatching(/\w.*\.$/) })
    expect(() => photoFileSchema.parse(facts.file)).not.toThrow()
  })

  it('swaps the size of a picture that lies on its side', async () => {
    for (const format of ['jpeg', 'png', 'webp', 'tiff'] as const) {
      const bytes = await sharp(await jpegWith({}))
        .withMetadata({ orientation: 8 })
        .toFormat(format)
        .toBuffer()
      const { file } = await readFacts({ bytes, fileName: `a.${format}`, nowMs: NOW_MS })
      expect(file).toMatchObject({ orientation: 8, widthPx: 6, heightPx: 8, problems: [] })
    }
  })

  it('keeps a file too large for memory as an attachment by its beginning', async () => {
    const large = { head: await jpegWith({}), bytes: 400_000_000, sha256: 'a'.repeat(64), fileName: 'huge.jpg' }
    const facts = await readLargeFacts(large)
    expect(facts).toMatchObject({
      kind: 'other',
      typeLabel: 'JPEG picture',
      whyNotPicture: expect.stringContaining('larger'),
    })
    expect(photoFileSchema.parse(facts.file).bytes).toBe(400_000_000)
  })
})
