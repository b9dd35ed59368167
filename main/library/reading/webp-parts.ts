import { NO_PARTS, type PictureParts } from './container-parts.ts'

const EXIF_LABEL = 'Exif\0\0'

/** Walks a WebP's RIFF chunks (RFC 9649): size from VP8X, VP8 or VP8L, EXIF and XMP from their own chunks. */
export function readWebpParts(bytes: Buffer): PictureParts {
  let { exif, xmp, stored }: PictureParts = NO_PARTS
  for (const { type, body } of chunks(bytes)) {
    if (type === 'EXIF' && exif === null) {
      exif = body.toString('latin1', 0, 6) === EXIF_LABEL ? body.subarray(6) : body
    } else if (type === 'XMP ' && xmp === null) {
      xmp = body
    } else if (stored === null) {
      stored = readSize(type, body)
    }
  }
  return { ...NO_PARTS, exif, xmp, stored }
}

function* chunks(bytes: Buffer): Generator<{ type: string; body: Buffer }> {
  let at = 12
  while (at + 8 <= bytes.length) {
    const length = bytes.readUInt32LE(at + 4)
    yield { type: bytes.toString('latin1', at, at + 4), body: bytes.subarray(at + 8, at + 8 + length) }
    at += 8 + length + (length % 2)
  }
}

function readSize(type: string, body: Buffer): PictureParts['stored'] {
  if (body.length < 10) return null
  if (type === 'VP8X') return { widthPx: body.readUIntLE(4, 3) + 1, heightPx: body.readUIntLE(7, 3) + 1 }
  if (type === 'VP8L' && body[0] === 0x2f) {
    const packed = body.readUInt32LE(1)
    return { widthPx: (packed & 0x3fff) + 1, heightPx: ((packed >>> 14) & 0x3fff) + 1 }
  }
  if (type === 'VP8 ' && body.readUIntBE(3, 3) === 0x9d012a) {
    const widthPx = body.readUInt16LE(6) & 0x3fff
    const heightPx = body.readUInt16LE(8) & 0x3fff
    return widthPx > 0 && heightPx > 0 ? { widthPx, heightPx } : null
  }
  return null
}
