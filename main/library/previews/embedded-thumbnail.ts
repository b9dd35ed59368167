import { numbersOf } from '../reading/exif-tags.ts'
import { recogniseFile } from '../reading/file-kind.ts'
import { readPictureParts } from '../reading/picture-parts.ts'
import { readExif } from '../reading/read-exif.ts'

/**
 * The small JPEG that most cameras put beside their facts (Exif IFD1), for the moment until the real thumbnail is made.
 * @returns the JPEG as stored and the picture's orientation, still to be applied; null where there is none. Never throws.
 */
export async function readEmbeddedThumbnail(bytes: Buffer): Promise<{ jpeg: Buffer; orientation: number } | null> {
  const { exif } = readPictureParts(bytes, (await recogniseFile(bytes)).mediaType)
  if (exif === null) return null
  const { values } = await readExif(exif)
  const [offset = 0] = numbersOf(values, 'thumbnailOffset')
  const [length = 0] = numbersOf(values, 'thumbnailLength')
  const jpeg = exif.subarray(offset, offset + length)
  const isJpeg = jpeg.length === length && jpeg.toString('latin1', 0, 3) === '\xff\xd8\xff'
  if (!isJpeg || length < 100) return null
  const [orientation = 1] = numbersOf(values, 'orientation')
  return { jpeg, orientation: orientation >= 1 && orientation <= 8 ? orientation : 1 }
}
