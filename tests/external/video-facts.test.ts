import { createHash } from 'node:crypto'
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { codecName, resolveVideoTime, videoFileSchema, videoTagsSchema } from '../../app/evidence/video.ts'
import { recogniseFile } from '../../main/library/reading/file-kind.ts'
import { readVideo, type VideoFacts } from '../../main/library/reading/video/read-video.ts'
import { scattered } from '../builders/scattered.ts'

const FOLDER = fileURLToPath(new URL('../../../shared/samples/videos/', import.meta.url))
const TAKE_IN_MS = Date.UTC(2027, 0, 1)

/** What exiftool 12.57 and ffprobe 5.1 read; see SOURCES.md beside the samples. */
const expectedSchema = z.record(
  z.string(),
  z.looseObject({
    createDateUtc: z.string(),
    creationDateLocal: z.string().optional(),
    GPSLatitude: z.number().optional(),
    GPSLongitude: z.number().optional(),
    GPSAltitude: z.number().optional(),
    make: z.string().optional(),
    model: z.string().optional(),
    durationS: z.number(),
    rotation: z.number().optional(),
    codec: z.string().optional(),
    width: z.number().optional(),
    height: z.number().optional(),
    audio: z.boolean(),
    opens: z.boolean(),
  }),
)
const isHere = existsSync(FOLDER)
const expected = isHere ? expectedSchema.parse(JSON.parse(readFileSync(`${FOLDER}expected.json`, 'utf8'))) : {}
const names = Object.keys(expected)

async function factsOf(path: string, fileName: string): Promise<VideoFacts> {
  const bytes = readFileSync(path)
  const { mediaType } = await recogniseFile(bytes)
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  return readVideo(path, { sha256, bytes: bytes.length, fileName, mediaType, problems: [], nowMs: TAKE_IN_MS })
}

/** `2019:07:24 11:25:40+03:00` as an instant; null for the zeros of a file without a date. */
function instantOf(text: string): number | null {
  const ms = Date.parse(
    text.replace(/^(\d+):(\d+):(\d+) /, '$1-$2-$3T').replace(/(\d\d)$/, text.includes('+') ? '$1' : '$1Z'),
  )
  return Number.isNaN(ms) ? null : ms
}

describe.skipIf(!isHere)('facts of the sample set videos', () => {
  it.each(names)('%s: read as exiftool and ffprobe read it', async (name) => {
    const theirs = expected[name] ?? expect.fail('no reference')
    expect((await recogniseFile(readFileSync(FOLDER + name))).kind).toBe('video')
    const read = await factsOf(FOLDER + name, name)
    expect(read.ok).toBe(theirs.opens)
    if (!read.ok) return expect(read.why).not.toBe('')
    const file = videoFileSchema.parse(read.file)
    expect(file.durationMs / 1000).toBeCloseTo(theirs.durationS, 2)
    expect(file.rotationDeg).toBe(theirs.rotation)
    const stored = file.rotationDeg % 180 === 90 ? [file.heightPx, file.widthPx] : [file.widthPx, file.heightPx]
    expect(stored).toEqual([theirs.width, theirs.height])
    expect(codecName(file.codec)).toBe({ h264: 'H.264' }[theirs.codec ?? ''])
    expect(file.audioCodec !== null).toBe(theirs.audio)
    expect([file.camera.make, file.camera.model]).toEqual([theirs.make ?? '', theirs.model ?? ''])
    expect(file.position?.latDeg).toBe(theirs.GPSLatitude)
    expect(file.position?.lonDeg).toBe(theirs.GPSLongitude)
    expect(file.position?.altitudeM).toBe(theirs.GPSAltitude)
    expect(file.containerUtcMs).toBe(instantOf(theirs.createDateUtc))
    const time = resolveVideoTime(
      { file, tags: videoTagsSchema.parse({}) },
      { placeZone: null, jobZone: null, correctionMs: 0 },
    )
    expect(time.instantMs).toBe(instantOf(theirs.creationDateLocal ?? theirs.createDateUtc))
  })

  it('keeps both times of a phone that wrote two, says how far they are apart, and begins with the date of recording', async () => {
    const read = await factsOf(`${FOLDER}mei__with-gps.mov`, 'mei__with-gps.mov')
    if (!read.ok) return expect.fail(read.why)
    expect(read.file.written).toMatchObject({ local: '2019-07-24T11:25:40', offsetMinutes: 180 })
    expect(read.file.containerUtcMs).toBe(Date.UTC(2019, 6, 24, 8, 25, 57))
    expect(read.file.problems.map(({ text }) => text).join()).toContain('17 s later')
  })

  const scratch = mkdtempSync(join(tmpdir(), 'battenbook-video-'))
  afterAll(() => rmSync(scratch, { recursive: true, force: true }))

  it('answers for a file cut or altered anywhere, and soon', async () => {
    const whole = readFileSync(`${FOLDER}mei__with-gps.mov`)
    const path = join(scratch, 'altered.mov')
    const known = {
      sha256: '0'.repeat(64),
      bytes: 1,
      fileName: 'altered.mov',
      mediaType: 'video/quicktime',
      problems: [],
    }
    const numbers = scattered(7)
    // The tables are what is read; flips among the pictures would change nothing.
    const moovAt = whole.indexOf('moov')
    for (let round = 0; round < 80; round += 1) {
      const altered = Buffer.from(round % 5 === 0 ? whole.subarray(0, numbers.next().value % whole.length) : whole)
      for (let flips = 0; flips < 6 && altered.length > moovAt; flips += 1) {
        const at = moovAt + (numbers.next().value % (altered.length - moovAt))
        altered[at] = numbers.next().value >>> 24
      }
      writeFileSync(path, altered)
      const startedMs = performance.now()
      const read = await readVideo(path, { ...known, nowMs: TAKE_IN_MS })
      expect(performance.now() - startedMs).toBeLessThan(15_000)
      if (read.ok) expect(() => videoFileSchema.parse(read.file)).not.toThrow()
      else expect(read.why).not.toBe('')
    }
  })
})
