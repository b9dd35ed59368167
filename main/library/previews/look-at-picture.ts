import type { Sharp } from 'sharp'
import {
  type ColourPixels,
  greyAtFixedSize,
  LOOK_LONG_EDGE_PX,
  pictureLook,
  type PictureLook,
} from '../../../app/evidence/near-doubles/picture-look.ts'
import { openPicture, openPixels } from './quiet-sharp.ts'

/** Looks at a picture that is decoded already. A small one is enlarged to the fixed size: it is less sharp. */
export async function lookAtPixels(pixels: ColourPixels): Promise<PictureLook> {
  return pictureLook(greyAtFixedSize(pixels) ?? (await enlarged(pixels)))
}

async function enlarged({ data, width, height, channels }: ColourPixels) {
  const raw = { width, height, channels: channels === 4 ? 4 : channels === 1 ? 1 : 3 } as const
  const grey = await openPixels(Buffer.from(data.buffer, data.byteOffset, data.byteLength), raw)
    .resize({ width: LOOK_LONG_EDGE_PX, height: LOOK_LONG_EDGE_PX, fit: 'inside', kernel: 'linear' })
    .greyscale()
    .raw()
    .toBuffer({ resolveWithObject: true })
  return { data: grey.data, width: grey.info.width, height: grey.info.height }
}

/** Looks at an upright picture. */
export async function lookAt(picture: Sharp): Promise<PictureLook> {
  const { data, info } = await picture.toColourspace('srgb').removeAlpha().raw().toBuffer({ resolveWithObject: true })
  return lookAtPixels({ data, width: info.width, height: info.height, channels: info.channels })
}

/** Looks at a preview on the disk; null where it is not there or can't be read. */
export async function lookAtPreview(path: string): Promise<PictureLook | null> {
  return lookAt(openPicture(path, { failOn: 'none', ignoreIcc: true })).catch(() => null)
}
