import type { FileProblem } from '../../../app/evidence/photo.ts'
import { decodeUpright } from './decode-upright.ts'

/** An upright sRGB JPEG; `problem` says what is wrong with a damaged picture. */
export type Rendered =
  | { ok: true; jpeg: Buffer; widthPx: number; heightPx: number; problem: FileProblem | null }
  | { ok: false; problem: FileProblem }

/**
 * Renders a picture for the page. Never enlarges, never throws.
 * @param source the path of the original, or its bytes
 * @param size `longEdgePx` at most; JPEG `quality` 1 to 100; `orientation` and `mediaType` from the photo's record
 */
export async function renderAtSize(
  source: string | Buffer,
  size: { longEdgePx: number; quality: number; orientation: number; mediaType: string },
): Promise<Rendered> {
  const { longEdgePx, quality, orientation, mediaType } = size
  const decoded = await decodeUpright(source, {
    mediaType,
    orientation,
    longEdgePx: (originalPx) => Math.min(longEdgePx, originalPx),
    finish: (picture) => picture.jpeg({ quality, chromaSubsampling: '4:2:0' }).toBuffer({ resolveWithObject: true }),
  })
  if (!decoded.ok) return decoded
  const { data, info } = decoded.made
  return { ok: true, jpeg: data, widthPx: info.width, heightPx: info.height, problem: decoded.problem }
}
