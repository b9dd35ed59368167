import type { PhotoFile } from '../../../app/evidence/photo.ts'
import { problemOfSize } from '../reading/read-look.ts'
import { decodeUpright } from './decode-upright.ts'

/** Fine enough to see a tile's edge on a picture of a whole lot; a browser still holds it easily. */
const LONG_EDGE_PX = 4096

/**
 * An upright JPEG of a picture for drawing over, at most 4096 px long; null when it can't be shown. Never throws.
 * @param bytes the original
 * @param file its record, whose size and orientation hold
 */
export async function makeUnderlayPicture(bytes: Buffer, file: PhotoFile): Promise<Buffer | null> {
  if (problemOfSize(file) !== null) return null
  const decoded = await decodeUpright(bytes, {
    mediaType: file.mediaType,
    orientation: file.orientation,
    longEdgePx: (originalPx) => Math.min(LONG_EDGE_PX, originalPx),
    finish: (picture) => picture.jpeg({ quality: 86 }).toBuffer(),
  })
  return decoded.ok ? decoded.made : null
}
