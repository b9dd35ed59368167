import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { z } from 'zod'

/** What exiftool (and sharp, in the second set) say of a sample file; see SOURCES.md beside the samples. */
const referenceSchema = z
  .object({
    MIMEType: z.string(),
    DateTimeOriginal: z.string(),
    CreateDate: z.string(),
    SubSecTimeOriginal: z.coerce.string(),
    OffsetTimeOriginal: z.string(),
    GPSLatitude: z.number(),
    GPSLongitude: z.number(),
    GPSAltitude: z.number(),
    GPSImgDirection: z.number(),
    GPSImgDirectionRef: z.string(),
    GPSHPositioningError: z.number(),
    Orientation: z.number(),
    Make: z.coerce.string(),
    Model: z.coerce.string(),
    SerialNumber: z.coerce.string(),
    ImageWidth: z.number(),
    ImageHeight: z.number(),
    sharp: z.object({ ok: z.boolean() }),
    /** Whether Pillow with libheif decodes every pixel. */
    opens: z.boolean(),
    otherDate: z.record(z.string(), z.string()),
  })
  .partial()
export type Reference = z.output<typeof referenceSchema>

/** A real file from a public test collection, with what others read in it. */
export type Sample = { name: string; path: string; reference: Reference; listedHash: string | null }

const SAMPLES = fileURLToPath(new URL('../../../shared/samples/', import.meta.url))

/** All samples of a set, by the names in its folder; null where the set is absent. */
export function samplesIn(set: 'photos' | 'photos-more'): Sample[] | null {
  const folder = `${SAMPLES}${set}/`
  if (!existsSync(folder)) return null
  const expected = z
    .record(z.string(), referenceSchema)
    .parse(JSON.parse(readFileSync(`${folder}expected.json`, 'utf8')))
  const sources = readFileSync(`${folder}SOURCES.md`, 'utf8')
  return readdirSync(folder)
    .filter((name) => name !== 'expected.json' && name !== 'SOURCES.md')
    .map((name) => ({
      name,
      path: folder + name,
      reference: expected[name] ?? {},
      listedHash: hashOf(sources, name),
    }))
}

function hashOf(sources: string, name: string): string | null {
  const row = sources.split('\n').find((line) => line.startsWith(`| ${name} |`))
  return /\| ([0-9a-f]{16,64}) \|/.exec(row ?? '')?.[1] ?? null
}
