import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import sharp from 'sharp'
import { afterAll, describe, expect, it } from 'vitest'
import { makePreviews } from '../../main/library/previews/make-previews.ts'
import { readFacts } from '../../main/library/reading/read-facts.ts'
import { scattered } from '../builders/scattered.ts'
import { samplesIn } from './picture-samples.ts'

const TAKE_IN_MS = Date.UTC(2027, 0, 1)
const all = [...(samplesIn('photos') ?? []), ...(samplesIn('photos-more') ?? [])]
const hasVips = spawnSync('vipsthumbnail', ['--vips-version']).status === 0
/** A side of the small picture in which colours are compared, pixels. */
const SIDE = 24

/** Two that Debian's older libheif gives up on (bad image dimensions), and a high dynamic range one that it doesn't convert. */
const NOT_COMPARED = ['exiv2__Sony.HIF', 'mei__Issue_437_dotnet_.heic', 'exiv2__Canon.HIF']
const whole = all.filter(({ name, reference }) => /\.hei[cf]$/i.test(name) && reference.opens !== false)

const scratch = mkdtempSync(join(tmpdir(), 'battenbook-heif-'))
afterAll(() => rmSync(scratch, { recursive: true, force: true }))

async function previewOf(bytes: Buffer): Promise<Awaited<ReturnType<typeof makePreviews>>> {
  const { file } = await readFacts({ bytes, fileName: 'IMG.HEIC', nowMs: TAKE_IN_MS })
  return makePreviews(bytes, file)
}

/** Brought to sRGB by the profile in the file, where it has one. */
async function smallPixels(picture: Buffer | string): Promise<Buffer> {
  return sharp(picture).resize(SIDE, SIDE, { fit: 'fill' }).removeAlpha().raw().toBuffer()
}

describe.skipIf(!hasVips || whole.length === 0)("phones' pictures against vipsthumbnail with Debian's libheif", () => {
  it.each(whole.filter(({ name }) => !NOT_COMPARED.includes(name)))(
    '$name: stands the same way up and has the same colours in sRGB',
    async ({ name, path }) => {
      const target = join(scratch, `${name}.png`)
      const asked = ['--size', '400x400', '-o', target, path]
      // sharp leaves marks in the environment that keep another libvips from finding its own parts.
      const { status } = spawnSync('vipsthumbnail', asked, { env: { PATH: process.env['PATH'] } })
      expect(status).toBe(0)
      const made = await previewOf(readFileSync(path))
      if (!made.ok) return expect.fail(made.problem.text)
      const theirs = await sharp(target).metadata()
      expect(made.widthPx / made.heightPx).toBeCloseTo(theirs.width / theirs.height, 1)
      const [ours, known] = [await smallPixels(made.preview), await smallPixels(target)]
      const apart = ours.map((value, at) => Math.abs(value - (known[at] ?? 0)))
      // A picture turned or in the wrong colour space differs by tens of levels; two resamplings of one by a few.
      expect(apart.reduce((sum, value) => sum + value, 0) / apart.length).toBeLessThan(4)
    },
  )
})

describe.skipIf(whole.length === 0)('broken HEIC files', () => {
  it('are refused with words or shown in part, and never end the program', async () => {
    const stonehenge = whole.find(({ name }) => name === 'exiv2__Stonehenge.heic') ?? expect.fail('the sample is gone')
    const bytes = readFileSync(stonehenge.path)
    const numbers = scattered(3)
    const outcomes = { shown: 0, refused: 0 }
    for (let round = 0; round < 60; round += 1) {
      const altered = Buffer.from(round % 6 === 0 ? bytes.subarray(0, numbers.next().value % bytes.length) : bytes)
      for (let flips = 0; flips < 8 && altered.length > 0; flips += 1)
        altered[numbers.next().value % Math.min(altered.length, round % 2 === 0 ? 1_500 : altered.length)] =
          numbers.next().value >>> 24
      const { file, kind } = await readFacts({ bytes: altered, fileName: 'IMG.HEIC', nowMs: TAKE_IN_MS })
      if (kind !== 'picture') continue
      const made = await makePreviews(altered, file)
      outcomes[made.ok ? 'shown' : 'refused'] += 1
      if (!made.ok) expect(made.problem.text).toMatch(/[.]$/)
    }
    expect(outcomes.shown).toBeGreaterThan(0)
    expect(outcomes.refused).toBeGreaterThan(0)
  })
})
