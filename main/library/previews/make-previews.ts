import type { FileProblem, PhotoFile } from '../../../app/evidence/photo.ts'
import type { PictureLook } from '../../../app/evidence/near-doubles/picture-look.ts'
import { problemOfSize } from '../reading/read-look.ts'
import { decodeUpright } from './decode-upright.ts'
import { lookAtPixels } from './look-at-picture.ts'
import { previewLongEdgePx } from './preview-size.ts'
import { openPixels } from './quiet-sharp.ts'

const THUMBNAIL_LONG_EDGE_PX = 320

/** Plain Huffman tables: a few percent larger, much faster to write; previews can be rebuilt at any time. */
const QUICK_JPEG = { chromaSubsampling: '4:2:0', optimiseCoding: false }

/** Upright JPEG copies for the screen, with the preview's size; `problem` says what is wrong with a damaged picture. */
export type Previews =
  | {
      ok: true
      preview: Buffer
      thumbnail: Buffer
      look: PictureLook
      widthPx: number
      heightPx: number
      problem: FileProblem | null
    }
  | { ok: false; problem: FileProblem }

/**
 * Makes a preview (long edge 1280 to 1600 px, or the original's size where that is smaller) and a thumbnail (320 px) of a
 * picture. Never throws; a picture whose header claims an absurd size is not decoded at all.
 * @param bytes the original
 * @param file its record, whose size and orientation hold
 */
export async function makePreviews(bytes: Buffer, file: PhotoFile): Promise<Previews> {
  const tooLarge = problemOfSize(file)
  if (tooLarge !== null) return { ok: false, problem: tooLarge }
  const decoded = await decodeUpright(bytes, {
    mediaType: file.mediaType,
    orientation: file.orientation,
    longEdgePx: previewLongEdgePx,
    finish: (picture) => picture.raw().toBuffer({ resolveWithObject: true }),
  })
  if (!decoded.ok) return decoded
  const { data, info } = decoded.made
  const pixels = { width: info.width, height: info.height, channels: info.channels }
  const preview = openPixels(data, pixels).jpeg({ ...QUICK_JPEG, quality: 82 })
  const thumbnail = openPixels(data, pixels)
    .resize({ width: THUMBNAIL_LONG_EDGE_PX, height: THUMBNAIL_LONG_EDGE_PX, fit: 'inside', withoutEnlargement: true })
    .jpeg({ ...QUICK_JPEG, quality: 76 })
  return {
    ok: true,
    preview: await preview.toBuffer(),
    thumbnail: await thumbnail.toBuffer(),
    look: await lookAtPixels({ data, ...pixels }),
    widthPx: info.width,
    heightPx: info.height,
    problem: decoded.problem,
  }
}
