import type { FileProblem, PhotoFile } from '../../../app/evidence/photo.ts'
import { type ExifValues, numbersOf } from './exif-tags.ts'
import type { PictureParts } from './container-parts.ts'

/** What a picture may hold at most to be decoded here. */
export const MAX_PIXELS = 100_000_000
const MAX_EDGE_PX = 30_000

/** Size and turn of a picture as it should be looked at. */
type Look = Pick<PhotoFile, 'widthPx' | 'heightPx' | 'orientation'>

/** Works out the upright size, and the EXIF orientation unless the container turns the picture itself. */
export function readLook(parts: PictureParts, exif: ExifValues): { look: Look; problems: FileProblem[] } {
  const stored = parts.isSizeInTags ? sizeFromTags(exif) : parts.stored
  const { orientation, problems } = readOrientation(parts, exif)
  const isOnItsSide = parts.containerQuarterTurns === null ? orientation >= 5 : parts.containerQuarterTurns % 2 === 1
  const [widthPx, heightPx] = isOnItsSide
    ? [stored?.heightPx ?? null, stored?.widthPx ?? null]
    : [stored?.widthPx ?? null, stored?.heightPx ?? null]
  return { look: { widthPx, heightPx, orientation }, problems }
}

/** A TIFF's size stands in its first directory. */
function sizeFromTags(exif: ExifValues): PictureParts['stored'] {
  const [widthPx = 0] = numbersOf(exif, 'imageWidth')
  const [heightPx = 0] = numbersOf(exif, 'imageLength')
  const isSize = Number.isInteger(widthPx) && Number.isInteger(heightPx) && widthPx > 0 && heightPx > 0
  return isSize ? { widthPx, heightPx } : null
}

function readOrientation(parts: PictureParts, exif: ExifValues): { orientation: number; problems: FileProblem[] } {
  const stated = numbersOf(exif, 'orientation')[0]
  // 0 is what some programs write for "not set", which is no fault of the picture.
  if (parts.containerQuarterTurns !== null || stated === undefined || stated === 0) {
    return { orientation: 1, problems: [] }
  }
  if (Number.isInteger(stated) && stated >= 1 && stated <= 8) return { orientation: stated, problems: [] }
  const text = `The orientation ${stated} is not one of 1 to 8; the picture is shown as stored.`
  return { orientation: 1, problems: [{ about: 'orientation', text }] }
}

/** Says why a picture of this size is not decoded; null where it can be. Sizes are read from headers alone. */
export function problemOfSize(size: Pick<PhotoFile, 'widthPx' | 'heightPx'>): FileProblem | null {
  const { widthPx, heightPx } = size
  if (widthPx === null || heightPx === null) return null
  if (widthPx * heightPx <= MAX_PIXELS && Math.max(widthPx, heightPx) <= MAX_EDGE_PX) return null
  const stated = `${widthPx.toLocaleString('en-US')} by ${heightPx.toLocaleString('en-US')} pixels`
  const limits = '100 megapixels or 30,000 pixels along an edge'
  return { about: 'preview', text: `The picture says it is ${stated}, more than ${limits}; no preview is made of it.` }
}
