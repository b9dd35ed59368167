import { readJpegParts } from './jpeg-parts.ts'
import { readTiffDirectories, type TiffDirectory } from './tiff-directories.ts'

const TAG = { compression: 259, photometric: 262, stripAt: 273, stripBytes: 279, jpegAt: 513, jpegBytes: 514 }
const JPEG_COMPRESSIONS = [6, 7]
/** Colour filter array and linear raw (DNG 1.7, PhotometricInterpretation): sensor values, not a picture to look at. */
const SENSOR_VALUES = [32_803, 34_892]

/** A whole JPEG that a raw file carries for looking at, and its size as stored. */
export interface EmbeddedPreview {
  readonly jpeg: Buffer
  readonly widthPx: number
  readonly heightPx: number
}

/** The largest preview picture in a raw file of TIFF's shape, such as a DNG; null where there is none. Never throws. */
export function largestPreview(bytes: Buffer): EmbeddedPreview | null {
  const { pages, below } = readTiffDirectories(bytes)
  let best: EmbeddedPreview | null = null
  for (const directory of [...pages, ...below]) {
    const jpeg = jpegOf(directory, bytes)
    const size = jpeg === null ? null : readJpegParts(jpeg).stored
    if (jpeg === null || size === null) continue
    if (best === null || size.widthPx * size.heightPx > best.widthPx * best.heightPx) best = { jpeg, ...size }
  }
  return best
}

function jpegOf(directory: TiffDirectory, bytes: Buffer): Buffer | null {
  const first = (tag: number): number => directory.get(tag)?.[0] ?? 0
  if (SENSOR_VALUES.includes(first(TAG.photometric))) return null
  const isStrip = JPEG_COMPRESSIONS.includes(first(TAG.compression)) && directory.get(TAG.stripAt)?.length === 1
  const [at, length] = directory.has(TAG.jpegAt)
    ? [first(TAG.jpegAt), first(TAG.jpegBytes)]
    : isStrip
      ? [first(TAG.stripAt), first(TAG.stripBytes)]
      : [0, 0]
  const jpeg = bytes.subarray(at, at + length)
  return at > 0 && jpeg.length === length && jpeg.toString('latin1', 0, 3) === '\xff\xd8\xff' ? jpeg : null
}
