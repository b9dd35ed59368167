import exifr from 'exifr'
import { z } from 'zod'
import { EXIF_TAGS, type ExifBlock, type ExifTagKey, type ExifValues, exifTagKeys } from './exif-tags.ts'

const blockSchema = z.record(z.string(), z.unknown()).optional().catch(undefined)
const outputSchema = z.object({
  ifd0: blockSchema,
  exif: blockSchema,
  gps: blockSchema,
  ifd1: blockSchema,
  errors: z.array(z.unknown()).optional().catch(undefined),
})

const OPTIONS = {
  mergeOutput: false,
  translateKeys: false,
  translateValues: false,
  reviveValues: false,
  sanitize: false,
  silentErrors: true,
  tiff: true,
  ifd0: { pick: idsOf('ifd0') },
  exif: { pick: idsOf('exif') },
  gps: { pick: idsOf('gps') },
  ifd1: { pick: idsOf('ifd1') },
  interop: false,
  makerNote: false,
  userComment: false,
  xmp: false,
  icc: false,
  iptc: false,
  jfif: false,
  ihdr: false,
}

function idsOf(block: ExifBlock): number[] {
  return exifTagKeys()
    .map((key) => EXIF_TAGS[key])
    .filter((tag) => tag.block === block)
    .map((tag) => tag.id)
}

/**
 * Reads the tags of a TIFF-shaped block. Only picked tags are decoded.
 * @returns `went` tells how: `stumbled` means that the block is damaged and may hold more than was read.
 */
export async function readWithExifr(block: Buffer): Promise<{ values: ExifValues; went: 'well' | 'stumbled' }> {
  try {
    const parsed: unknown = await exifr.parse(block, OPTIONS)
    if (parsed === undefined) return { values: {}, went: 'well' }
    const output = outputSchema.parse(parsed)
    const values: ExifValues = {}
    for (const key of exifTagKeys()) {
      const value = asStored(output[EXIF_TAGS[key].block]?.[String(EXIF_TAGS[key].id)], key)
      if (value !== null) values[key] = value
    }
    return { values, went: output.errors === undefined ? 'well' : 'stumbled' }
  } catch {
    return { values: {}, went: 'stumbled' }
  }
}

function asStored(value: unknown, key: ExifTagKey): string | readonly number[] | null {
  if (typeof value === 'string') return upToZero(value)
  if (typeof value === 'number') return [value]
  if (value instanceof Uint8Array && EXIF_TAGS[key].holds === 'text') {
    return upToZero(Buffer.from(value).toString('utf8'))
  }
  if (Array.isArray(value)) return value.filter((item) => typeof item === 'number')
  return ArrayBuffer.isView(value) && !(value instanceof DataView) ? numbersIn(value) : null
}

function numbersIn(view: ArrayBufferView): number[] | null {
  const list = z.array(z.number()).safeParse(Array.from(Object.values(view)))
  return list.success ? list.data : null
}

/** Exif text ends at its first zero byte; what stands behind it is left over from a longer text. */
function upToZero(text: string): string {
  return text.split('\0', 1)[0] ?? ''
}
