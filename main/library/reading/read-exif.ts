import { hasAbsurdCount } from './absurd-counts.ts'
import { readWithExifr } from './exif-with-exifr.ts'
import { readWithExifreader } from './exif-with-exifreader.ts'
import type { ExifValues } from './exif-tags.ts'

/**
 * Reads the camera facts of a TIFF-shaped block. A second reader fills in where the first finds nothing or stumbles.
 * Never throws.
 * @returns `damaged` is true where the block could be read in part at best
 */
export async function readExif(block: Buffer): Promise<{ values: ExifValues; damaged: boolean }> {
  if (hasAbsurdCount(block)) return { values: readWithExifreader(block), damaged: true }
  const first = await readWithExifr(block)
  const damaged = first.went === 'stumbled'
  if (!damaged && Object.keys(first.values).length > 0) return { values: first.values, damaged }
  return { values: { ...readWithExifreader(block), ...first.values }, damaged }
}
