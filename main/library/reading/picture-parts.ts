import { NO_PARTS, type PictureParts } from './container-parts.ts'
import { largestPreview } from './embedded-preview.ts'
import { readHeifParts } from './heif-parts.ts'
import { readJpegParts } from './jpeg-parts.ts'
import { readPngParts } from './png-parts.ts'
import { readWebpParts } from './webp-parts.ts'

/**
 * Takes a container apart by its media type. Broken containers give what can still be found; nothing throws.
 * In a TIFF the size and the XMP packet stand among the tags, so only the block itself is given.
 */
export function readPictureParts(bytes: Buffer, mediaType: string): PictureParts {
  switch (mediaType) {
    case 'image/jpeg':
    case 'image/x-exv':
      return readJpegParts(bytes)
    case 'image/png':
      return readPngParts(bytes)
    case 'image/webp':
      return readWebpParts(bytes)
    case 'image/x-adobe-dng':
      // Shown by its preview, so the preview's size is the size to look at; the raw picture's own may differ by a border.
      return { ...NO_PARTS, exif: bytes, stored: largestPreview(bytes) }
    default:
      if (isTiffShaped(bytes)) return { ...NO_PARTS, exif: bytes, isSizeInTags: mediaType === 'image/tiff' }
      return isBoxFile(bytes) ? readHeifParts(bytes) : NO_PARTS
  }
}

/** TIFF 6.0 section 2: `II` or `MM`, then 42. Raw formats of cameras share it. */
function isTiffShaped(bytes: Buffer): boolean {
  const start = bytes.toString('latin1', 0, 4)
  return start === 'II*\0' || start === 'MM\0*'
}

/** ISO/IEC 14496-12: the file type box comes first. */
function isBoxFile(bytes: Buffer): boolean {
  return bytes.toString('latin1', 4, 8) === 'ftyp'
}
