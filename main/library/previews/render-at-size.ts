import type { MarkupDrawing } from '../../../app/evidence/markup-drawing.ts'
import { obscurePixels } from '../../../app/evidence/markup/obscure-pixels.ts'
import type { FileProblem } from '../../../app/evidence/photo.ts'
import type { Sharp } from 'sharp'
import { decodeUpright } from './decode-upright.ts'
import { openPixels } from './quiet-sharp.ts'

/** An upright sRGB JPEG; `problem` says what is wrong with a damaged picture. */
export type Rendered =
  | { ok: true; jpeg: Buffer; widthPx: number; heightPx: number; problem: FileProblem | null }
  | { ok: false; problem: FileProblem }

/**
 * Renders a picture for the page. Never enlarges, never throws.
 * @param source the path of the original, or its bytes
 * @param size `longEdgePx` at most; JPEG `quality` 1 to 100; `orientation` and `mediaType` from the photo's record;
 *   `obscured`: areas whose pixels are destroyed before the JPEG is made. Nothing but pixels gets into it: no Exif block, no
 *   thumbnail.
 */
export async function renderAtSize(
  source: string | Buffer,
  size: { longEdgePx: number; quality: number; orientation: number; mediaType: string; obscured?: ObscuredAreas },
): Promise<Rendered> {
  const { longEdgePx, quality, orientation, mediaType, obscured } = size
  const decoded = await decodeUpright(source, {
    mediaType,
    orientation,
    longEdgePx: (originalPx) => Math.min(longEdgePx, originalPx),
    finish: async (picture) => {
      const shown = obscured === undefined ? picture : await withAreasObscured(picture, obscured)
      return shown.jpeg({ quality, chromaSubsampling: '4:2:0' }).toBuffer({ resolveWithObject: true })
    },
  })
  if (!decoded.ok) return decoded
  const { data, info } = decoded.made
  return { ok: true, jpeg: data, widthPx: info.width, heightPx: info.height, problem: decoded.problem }
}

export type ObscuredAreas = Pick<MarkupDrawing, 'widthPx' | 'heightPx' | 'obscured'>

/** An upright picture whose obscured areas hold only a few means of what was there. */
export async function withAreasObscured(picture: Sharp, areas: ObscuredAreas): Promise<Sharp> {
  const { data, info } = await picture.raw().toBuffer({ resolveWithObject: true })
  const { width, height, channels } = info
  obscurePixels({ data, width, height, channels }, areas)
  return openPixels(data, { width, height, channels })
}
