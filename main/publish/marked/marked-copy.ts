import { drawMarkup } from '../../../app/evidence/markup-drawing.ts'
import type { Mark } from '../../../app/evidence/markup.ts'
import type { PhotoFile } from '../../../app/evidence/photo.ts'
import { decodeUpright } from '../../library/previews/decode-upright.ts'
import { openPixels } from '../../library/previews/quiet-sharp.ts'
import { withAreasObscured } from '../../library/previews/render-at-size.ts'
import { markupSvg } from './markup-svg.ts'

const QUALITY = 90

/**
 * A photo's annotated copy as JPEG, upright and as large as the original: obscured areas first, then the marks over all.
 * It carries pixels only, no Exif block and no thumbnail. Null where the original can't be shown.
 * @param original its path, or its bytes
 */
export async function markedCopy(
  original: string | Buffer,
  { file, marks }: { file: PhotoFile; marks: readonly Mark[] },
): Promise<Buffer | null> {
  const { widthPx, heightPx, orientation, mediaType } = file
  if (widthPx === null || heightPx === null) return null
  const drawing = drawMarkup(marks, { widthPx, heightPx })
  const decoded = await decodeUpright(original, {
    mediaType,
    orientation,
    longEdgePx: (originalPx) => originalPx,
    finish: async (picture) => {
      const base = await withAreasObscured(picture, drawing)
      // Pixels are laid out once more: sharp composes before it turns, and the picture is upright only now.
      const { data, info } = await base.raw().toBuffer({ resolveWithObject: true })
      const { width, height, channels } = info
      return openPixels(data, { width, height, channels })
        .composite([
          { input: Buffer.from(markupSvg({ ...drawing, widthPx: width, heightPx: height })), limitInputPixels: false },
        ])
        .jpeg({ quality: QUALITY, chromaSubsampling: '4:4:4' })
        .toBuffer()
    },
  })
  return decoded.ok ? decoded.made : null
}
