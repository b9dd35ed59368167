import { join } from 'node:path'
import { derivedNames, photoFolder } from '../library/layout.ts'
import { renderAtSize } from '../library/previews/render-at-size.ts'
import type { PacketFiles } from './packet-files.ts'
import type { PictureSource } from './pdf/render-packet.ts'

/** JPEG quality of pictures in a packet: better than screen previews, small enough to send. */
const QUALITY = 84

/** Long edge up to which a preview is as good as its original. */
const PREVIEW_PX = 1280

/** The pictures of a packet, made at the size the page asks for: from the preview where that is large enough. */
export function packetPictures({ photos, places }: PacketFiles): PictureSource {
  const byId = new Map(photos.map((photo) => [photo.id, photo]))
  return {
    load: async (photoId, { longEdgePx }) => {
      const photo = byId.get(photoId)
      if (photo === undefined || photo.preview === 'none') return null
      const fromPreview =
        longEdgePx <= PREVIEW_PX
          ? await render(join(places.derived, derivedNames(photo.id).preview), {
              longEdgePx,
              orientation: 1,
              mediaType: 'image/jpeg',
            })
          : null
      return (
        fromPreview ?? (await render(join(photoFolder(places, photo), photo.storedName), { longEdgePx, ...photo.file }))
      )
    },
  }
}

async function render(path: string, look: { longEdgePx: number; orientation: number; mediaType: string }) {
  const { longEdgePx, orientation, mediaType } = look
  const made = await renderAtSize(path, { longEdgePx, quality: QUALITY, orientation, mediaType })
  return made.ok ? { jpeg: made.jpeg, widthPx: made.widthPx, heightPx: made.heightPx } : null
}
