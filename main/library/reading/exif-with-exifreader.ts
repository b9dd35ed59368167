import ExifReader from 'exifreader'
import { z } from 'zod'
import { EXIF_TAGS, type ExifTagKey, type ExifValues, exifTagKeys } from './exif-tags.ts'

const numberPair = z.tuple([z.number(), z.number()])
const tagSchema = z.object({ value: z.unknown() })

/** Reads the same tags with the second reader, which goes on behind a broken tag where the first one stops. */
export function readWithExifreader(block: Buffer): ExifValues {
  try {
    const tags = z.record(z.string(), z.unknown()).parse(ExifReader.load(block, { expanded: true }).exif ?? {})
    const values: ExifValues = {}
    for (const key of exifTagKeys()) {
      const tag = tagSchema.safeParse(tags[EXIF_TAGS[key].name])
      const value = tag.success ? asStored(tag.data.value, key) : null
      if (value !== null) values[key] = value
    }
    return values
  } catch {
    return {}
  }
}

function asStored(value: unknown, key: ExifTagKey): string | readonly number[] | null {
  const texts = z.array(z.string()).safeParse(value)
  if (texts.success && texts.data.length > 0) return texts.data.join('').replace(/\0+$/, '')
  if (EXIF_TAGS[key].holds === 'text') return null
  if (typeof value === 'number') return [value]
  const fraction = numberPair.safeParse(value)
  if (fraction.success) return [fraction.data[0] / fraction.data[1]]
  const fractions = z.array(numberPair).safeParse(value)
  if (fractions.success) return fractions.data.map(([over, under]) => over / under)
  const numbers = z.array(z.number()).safeParse(value)
  return numbers.success ? numbers.data : null
}
