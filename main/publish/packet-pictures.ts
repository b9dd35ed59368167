import { join } from 'node:path'
import { drawMarkup } from '../../app/evidence/markup-drawing.ts'
import { hidesSomething } from '../../app/evidence/markup.ts'
import { derivedNames, photoFolder } from '../library/layout.ts'
import { renderAtSize } from '../library/previews/render-at-size.ts'
import type { PacketFiles } from './packet-files.ts'
import type { PictureSource } from './pdf/render-packet.ts'

/** JPEG quality of pictures in a packet: better than screen previews, small enough to send. */
const QUALITY = 84

/** Long edge up to which a preview is as good as its original. */
const PREVIEW_PX = 1280

/** The pictures of a packet, made at the size the page asks for: from the preview where that is large enough. */
export function packetPictures({ photos, markups, places }: PacketFiles): PictureSource {
  const byId = new Map(photos.map((photo) => [photo.id, photo]))
  const hiding = new Map(markups.filter(hidesSomething).map((markup) => [markup.photoId, markup]))
  return {
    load: async (photoId, { longEdgePx }) => {
      const photo = byId.get(photoId)
      if (photo === undefined || photo.preview === 'none') return null
      const markup = hiding.get(photoId)
      const { widthPx, heightPx } = photo.file
      const obscured =
        markup === undefined || widthPx === null || heightPx === null
          ? {}
          : { obscured: drawMarkup(markup.marks, { widthPx, heightPx }) }
      const fromPreview =
        longEdgePx <= PREVIEW_PX
          ? await render(join(places.derived, derivedNames(photo.id).preview), {
              longEdgePx,
              orientation: 1,
              mediaType: 'image/jpeg',
              ...obscured,
            })
          : null
      const { orientation, mediaType } = photo.file
      const original = join(photoFolder(places, photo), photo.storedName)
      return fromPreview ?? (await render(original, { longEdgePx, orientation, mediaType, ...obscured }))
    },
  }
}

async function render(path: string, size: Omit<Parameters<typeof renderAtSize>[1], 'quality'>) {
  const made = await renderAtSize(path, { ...size, quality: QUALITY })
  return made.ok ? { jpeg: made.jpeg, widthPx: made.widthPx, heightPx: made.heightPx } : null
}
