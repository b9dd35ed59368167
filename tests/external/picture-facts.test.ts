import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import sharp from 'sharp'
import { beforeAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { type PhotoFile, photoFileSchema } from '../../app/evidence/photo.ts'
import { makePreviews } from '../../main/library/previews/make-previews.ts'
import { type FileFacts, readFacts } from '../../main/library/reading/read-facts.ts'
import { type Reference, type Sample, samplesIn } from './picture-samples.ts'

/** One sample carries a date of November 2026, which stands for a clock that ran ahead only where today is earlier. */
const TAKE_IN_MS = Date.UTC(2027, 0, 1)

const PRIVATE_NOTES = "stands only in the maker's private notes, which are not read"
const EXIF_ONLY = 'stands only in XMP, which the expected values of this set leave out'
const GIVES_UP = 'exiftool gives up on the whole broken file; the facts are taken from the part that is whole'

/** Where our reading differs from exiftool's on purpose: the fields, and why. Every other difference is a fault. */
const EXCEPTIONS: Record<string, { fields: string[]; why: string }> = {
  'exif-samples__corrupted.jpg': { fields: ['serial'], why: PRIVATE_NOTES },
  'exif-samples__sony-powershota5.jpg': { fields: ['time', 'make', 'model'], why: PRIVATE_NOTES },
  'exifr__issue-exifr-3.jpg': {
    fields: ['time', 'offset'],
    why: "exiftool prefers the thermal block's own clock over Exif; ours is Exif's, with its own 0.606 s",
  },
  'exifr__issue-exif-js-124.tiff': { fields: ['serial'], why: 'exiftool lists CameraSerialNumber under another name' },
  'exifr__RangeError_Invalid_typed_array_length.jpg': {
    fields: ['time', 'offset'],
    why: 'a press caption (IPTC) gives a day typed by a person, not a camera date',
  },
  'exifr__RangeError_Offset_outside_bounds.jpg': { fields: ['time', 'offset'], why: 'a press caption again' },
  'mei__Issue_609.jpg': { fields: ['time'], why: '0000:00:00 is no date; exiftool hands it through' },
  'mei__FLIR_Vue_Pro_640.jpg': {
    fields: ['position', 'altitude'],
    why: '0, 0 is what a receiver without a fix writes',
  },
  'imagemeta__geodegrees_as_string.jpg': {
    fields: ['position', 'altitude'],
    why: 'degrees as text with decimal commas, 52,00000,50,00000,34,01180: exiftool takes the decimals for minutes',
  },
  'imagemeta__2099-08-12-19-59-29-sep-2099-08-12-19-59-29a.jpg': { fields: ['make', 'model'], why: GIVES_UP },
  'imagemeta__huge_tag_exif.jpg': { fields: ['position', 'altitude', 'make', 'model'], why: GIVES_UP },
  'exiv2__pocIssue283.jpg': { fields: ['make', 'size'], why: 'a number where text belongs, and half a size' },
  'mei__fuzzed-276e9fb645fc.webp': { fields: ['size'], why: GIVES_UP },
  'immich__thompson-springs.jpg': { fields: ['serial'], why: EXIF_ONLY },
  'exiv2__Stonehenge.heic': { fields: ['serial'], why: EXIF_ONLY },
  'pillow__invalid-exif.jpg': { fields: ['time', 'offset'], why: EXIF_ONLY },
  'pillow__exif-dpi-zerodivision.jpg': { fields: ['time', 'offset'], why: EXIF_ONLY },
  'opensfm__06.jpg': {
    fields: ['altitude'],
    why: 'no reference: the Exif default is above sea level; exiftool wants one',
  },
  'opensfm__12.jpg': { fields: ['altitude'], why: 'no altitude reference, as above' },
  'opensfm__28.jpg': { fields: ['altitude'], why: 'no altitude reference, as above' },
}

/** Pictures that sharp refuses even when told to decode what is left. */
const BEYOND_DECODING = ['exif-samples__corrupted.jpg']

const HEIF_FAMILY = /^image\/(heic|heif|avif)|^video\/mp4/

const readAll = (samples: Sample[]): Promise<Map<string, FileFacts>> =>
  samples.reduce(async (done, { name, path }) => {
    const facts = await done
    return facts.set(name, await readFacts({ bytes: readFileSync(path), fileName: name, nowMs: TAKE_IN_MS }))
  }, Promise.resolve(new Map<string, FileFacts>()))

for (const set of ['photos', 'photos-more'] as const) {
  const samples = samplesIn(set)
  describe.skipIf(samples === null)(`facts of the sample set ${set}`, () => {
    const all = samples ?? []
    let facts = new Map<string, FileFacts>()
    beforeAll(async () => {
      facts = await readAll(all)
    })

    it('is not empty and gives every file a whole record', () => {
      expect(all.length).toBeGreaterThan(80)
      for (const { file } of facts.values()) expect(() => photoFileSchema.parse(file)).not.toThrow()
      expect(facts.size).toBe(all.length)
    })

    it.each(all)('$name: read as exiftool reads it', ({ name, reference, listedHash }) => {
      const { file, kind, whyNotPicture } = facts.get(name) ?? expect.fail('no facts')
      if (listedHash !== null) expect(file.sha256.slice(0, listedHash.length)).toBe(listedHash)
      expect(kind === 'picture').toBe(whyNotPicture === null)
      expect(differences(file, reference)).toEqual(EXCEPTIONS[name]?.fields ?? [])
    })

    it.each(all)('$name: shown upright, or told why not', async ({ name, path, reference }) => {
      const { file, kind } = facts.get(name) ?? expect.fail('no facts')
      if (kind === 'other') return
      const made = await makePreviews(readFileSync(path), file)
      const isWhole = made.ok && !/damaged/.test(made.problem?.text ?? '')
      // sharp as it comes can't decode a phone's HEIC; there Pillow with libheif has the say.
      const opens = HEIF_FAMILY.test(file.mediaType) ? reference.opens : reference.sharp?.ok
      expect(isWhole).toBe(opens ?? !BEYOND_DECODING.includes(name))
      if (!made.ok) return
      const shown = await sharp(made.preview).metadata()
      expect([shown.width, shown.height, shown.orientation]).toEqual([made.widthPx, made.heightPx, undefined])
      const scale = made.widthPx / (file.widthPx ?? NaN)
      expect(scale).toBeLessThanOrEqual(1)
      expect(Math.abs(made.heightPx - (file.heightPx ?? NaN) * scale)).toBeLessThanOrEqual(1)
      const thumbnail = await sharp(made.thumbnail).metadata()
      expect(Math.max(thumbnail.width, thumbnail.height)).toBe(Math.min(320, Math.max(made.widthPx, made.heightPx)))
    })
  })
}

const samples = [...(samplesIn('photos') ?? []), ...(samplesIn('photos-more') ?? [])]
const hasExiftool = spawnSync('exiftool', ['-ver']).status === 0

describe.skipIf(!hasExiftool || samples.length === 0)('facts against the exiftool installed here', () => {
  let facts = new Map<string, FileFacts>()
  let live = new Map<string, Tags>()
  beforeAll(async () => {
    facts = await readAll(samples)
    live = readWithExiftool(samples)
  })

  it.each(samples)('$name: the date is the text of the tag it names', ({ name }) => {
    const { written } = facts.get(name)?.file ?? expect.fail('no facts')
    if (written.tag === null) return
    const [dateTag = '', fractionTag = '', offsetTag = ''] = TAGS_BEHIND[written.tag] ?? []
    const tags = live.get(name) ?? {}
    // exiftool turns the dashes and the T of an XMP date into the marks of Exif.
    const raw = written.tag.startsWith('XMP')
      ? (written.raw ?? '').replace(/^(\d+)-(\d+)-(\d+)T/, '$1:$2:$3 ')
      : written.raw
    expect(raw).toBe(tags[dateTag])
    const local = written.local?.replace(/^(\d+)-(\d+)-(\d+)T/, '$1:$2:$3 ')
    const fraction = tags[fractionTag]
    if (fraction !== undefined) expect(local).toBe(`${tags[dateTag]}.${fraction}`)
    if (tags[offsetTag] !== undefined) expect(written.offsetMinutes).toBe(minutesOf(String(tags[offsetTag])))
  })

  it('reads something with exiftool to compare with', () => {
    expect([...live.values()].filter((tags) => 'ExifIFD:DateTimeOriginal' in tags).length).toBeGreaterThan(60)
    expect([...live.values()].filter((tags) => 'GPS:GPSTimeStamp' in tags).length).toBeGreaterThan(20)
  })

  it.each(samples)('$name: satellite time, error, north reference and upright size agree', ({ name }) => {
    const { file } = facts.get(name) ?? expect.fail('no facts')
    const tags = live.get(name) ?? {}
    const stamp = `${String(tags['GPS:GPSDateStamp']).replaceAll(':', '-')}T${String(tags['GPS:GPSTimeStamp'])}Z`
    const stampMs = Date.parse(stamp)
    expect(file.written.gpsUtcMs).toBe(Number.isNaN(stampMs) ? null : stampMs)
    if (file.position !== null) {
      expect(file.position.errorM ?? 0).toBeCloseTo(Number(tags['GPS:GPSHPositioningError'] ?? 0), 6)
    }
    const north = { T: 'true', M: 'magnetic' }[String(tags['GPS:GPSImgDirectionRef'])] ?? 'not-stated'
    if (file.direction !== null) expect(file.direction.reference).toBe(north)
    if (!HEIF_FAMILY.test(file.mediaType) || tags['File:ImageWidth'] === undefined) return
    const isTurned = Number(tags['QuickTime:Rotation'] ?? 0) % 180 === 90
    const stored = [tags['File:ImageWidth'], tags['File:ImageHeight']]
    expect([file.widthPx, file.heightPx]).toEqual(isTurned ? stored.reverse() : stored)
  })
})

const TAGS_BEHIND: Record<string, string[]> = {
  DateTimeOriginal: ['ExifIFD:DateTimeOriginal', 'ExifIFD:SubSecTimeOriginal', 'ExifIFD:OffsetTimeOriginal'],
  DateTimeDigitized: ['ExifIFD:CreateDate', 'ExifIFD:SubSecTimeDigitized', 'ExifIFD:OffsetTimeDigitized'],
  DateTime: ['IFD0:ModifyDate', 'ExifIFD:SubSecTime', 'ExifIFD:OffsetTime'],
  'XMP exif:DateTimeOriginal': ['XMP-exif:DateTimeOriginal'],
  'XMP photoshop:DateCreated': ['XMP-photoshop:DateCreated'],
  'XMP xmp:CreateDate': ['XMP-xmp:CreateDate'],
}

type Tags = Record<string, string | number | undefined>

function readWithExiftool(files: Sample[]): Map<string, Tags> {
  const wanted = ['-time:all', '-GPS:all', '-ImageWidth', '-ImageHeight', '-Rotation']
  // A damaged file makes exiftool end with 1 although it reported on all files.
  const { stdout } = spawnSync('exiftool', ['-n', '-j', '-G1', '-a', ...wanted, ...files.map(({ path }) => path)], {
    encoding: 'utf8',
    maxBuffer: 64 * 1024 * 1024,
  })
  const rows = z.array(z.looseObject({ SourceFile: z.string() })).parse(JSON.parse(stdout))
  return new Map(files.map(({ name, path }) => [name, rows.find((row) => row.SourceFile === path) ?? {}]))
}

function differences(file: PhotoFile, reference: Reference): string[] {
  const isHeif = HEIF_FAMILY.test(file.mediaType)
  const near = (ours: number | null | undefined, theirs: number | undefined, tolerance: number): boolean =>
    ours === null || ours === undefined ? theirs === undefined : Math.abs(ours - (theirs ?? NaN)) <= tolerance
  const isSame: Record<string, boolean> = {
    type: familyOf(file.mediaType) === familyOf(reference.MIMEType ?? 'application/octet-stream'),
    time: isSameTime(file, reference),
    offset: isSameOffset(file, reference),
    position:
      near(file.position?.latDeg, reference.GPSLatitude, 1e-6) &&
      near(file.position?.lonDeg, reference.GPSLongitude, 1e-6),
    altitude: near(file.position?.altitudeM, reference.GPSAltitude, 1e-6),
    direction: near(file.direction?.azimuthDeg, reference.GPSImgDirection, 1e-6),
    // A container that turns its picture itself must not be turned by Exif again.
    orientation: file.orientation === (isHeif ? 1 : (reference.Orientation ?? 1)),
    make: file.camera.make === (reference.Make ?? '').trim(),
    model: file.camera.model === (reference.Model ?? '').trim(),
    serial: file.camera.serial === (reference.SerialNumber ?? '').trim(),
    size: isSameSize(file, reference, isHeif),
  }
  return Object.keys(isSame).filter((field) => isSame[field] === false)
}

/** HIF, HEIC and HEIF are one container under two names. */
function familyOf(mediaType: string): string {
  return mediaType.replace('image/heif', 'image/heic')
}

function isSameTime({ written }: PhotoFile, reference: Reference): boolean {
  // A last-change date is no date of taking; exiftool's is compared in the live test.
  if (written.tag === 'DateTime' || written.tag === null) {
    const stated = reference.DateTimeOriginal ?? reference.CreateDate
    return stated === undefined || (stated === written.raw && Number(stated.slice(0, 4)) > 2027)
  }
  const theirs = written.tag.endsWith('DateTimeOriginal')
    ? reference.DateTimeOriginal
    : written.tag === 'XMP photoshop:DateCreated'
      ? reference.otherDate?.['XMP-photoshop:DateCreated']
      : reference.CreateDate
  const dated = /^(\d{4}:\d\d:\d\d \d\d:\d\d:\d\d)(?:\.(\d+))?/.exec(theirs ?? '')
  const ownFraction = written.tag === 'DateTimeOriginal' ? reference.SubSecTimeOriginal : undefined
  const fraction = dated?.[2] ?? ownFraction
  const local = `${dated?.[1]?.replace(' ', 'T').replace(/^(\d+):(\d+):/, '$1-$2-')}${fraction ? `.${fraction}` : ''}`
  return written.local === local
}

function isSameOffset({ written }: PhotoFile, reference: Reference): boolean {
  const dated = reference.DateTimeOriginal ?? reference.CreateDate ?? ''
  const stated = /(Z|[+-]\d\d:\d\d)$/.exec(dated)?.[1] ?? reference.OffsetTimeOriginal
  return written.offsetMinutes === (stated === undefined ? null : minutesOf(stated))
}

function minutesOf(offset: string): number {
  if (offset === 'Z') return 0
  const [hours = NaN, minutes = NaN] = offset.slice(1).split(':').map(Number)
  const size = hours * 60 + minutes
  return offset.startsWith('-') && size > 0 ? -size : size
}

/** exiftool gives stored sizes; which way a HEIF picture is turned is compared in the live test. */
function isSameSize(file: PhotoFile, reference: Reference, isHeif: boolean): boolean {
  const ours = [file.widthPx ?? 0, file.heightPx ?? 0]
  const theirs = [reference.ImageWidth ?? 0, reference.ImageHeight ?? 0]
  if (isHeif) return ours.toSorted(byNumber).join() === theirs.toSorted(byNumber).join()
  return (file.orientation >= 5 ? ours.toReversed() : ours).join() === theirs.join()
}

function byNumber(a: number, b: number): number {
  return a - b
}
