import type { PhotoId } from '../../../../app/job/ids.ts'
import type { PictureWish } from './pen.ts'
import { type OpenedImage, pdfkitInside } from './pdfkit-inside.ts'

/** Where a packet's pictures come from. Null where a picture can't be shown; the packet says so in its place. */
export interface PictureSource {
  readonly load: (
    photoId: PhotoId,
    wish: { readonly longEdgePx: number },
  ) => Promise<{ readonly jpeg: Buffer; readonly widthPx: number; readonly heightPx: number } | null>
}

/** A picture ready to draw, at its upright proportions. */
interface ShelvedPicture {
  readonly image: OpenedImage
  readonly widthPx: number
  readonly heightPx: number
}

/** Pictures read for the page at hand. */
export interface PictureShelf {
  /** Reads the pictures of a page; each file is held in memory only until it is in the PDF. */
  readonly fetch: (wishes: readonly PictureWish[]) => Promise<void>
  readonly get: (photoId: PhotoId) => ShelvedPicture | null
}

/** A shelf over a source. A picture that comes twice is embedded once. */
export function pictureShelf(pdf: PDFKit.PDFDocument, source: PictureSource): PictureShelf {
  const shelf = new Map<PhotoId, ShelvedPicture | null>()
  return {
    fetch: async (wishes) => {
      const wanted = wishes.filter((wish) => !shelf.has(wish.photoId))
      const loaded = await Promise.all(wanted.map((wish) => source.load(wish.photoId, { longEdgePx: wish.longEdgePx })))
      wanted.forEach((wish, i) => shelf.set(wish.photoId, open(pdf, loaded[i]?.jpeg ?? null)))
    },
    get: (photoId) => shelf.get(photoId) ?? null,
  }
}

function open(pdf: PDFKit.PDFDocument, jpeg: Buffer | null): ShelvedPicture | null {
  if (jpeg === null || jpeg[0] !== 0xff || jpeg[1] !== 0xd8) return null
  try {
    const image = pdfkitInside(pdf).openImage(jpeg)
    // Ink colours have no meaning under the file's sRGB output intent.
    if (image.colorSpace !== 'DeviceRGB' && image.colorSpace !== 'DeviceGray') return null
    const [widthPx, heightPx] = image.orientation > 4 ? [image.height, image.width] : [image.width, image.height]
    return widthPx > 0 && heightPx > 0 ? { image, widthPx, heightPx } : null
  } catch {
    // pdfkit throws where a JPEG has no frame header: nothing in it can be shown.
    return null
  }
}
