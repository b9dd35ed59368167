import { NO_PARTS, type PictureParts } from './container-parts.ts'

const EXIF_LABEL = Buffer.from('Exif\0\0', 'latin1')
const XMP_LABEL = Buffer.from('http://ns.adobe.com/xap/1.0/\0', 'latin1')
const APP1 = 0xe1
const APP2 = 0xe2
const MPF_LABEL = Buffer.from('MPF\0', 'latin1')
/** CIPA DC-007, 5.2.3: tag MPEntry, 16 bytes a picture, whose first word's low 24 bits say what it is. */
const MP_ENTRY = 0xb002
const LARGE_THUMBNAILS = [0x010001, 0x010002]
const START_OF_SCAN = 0xda
const END_OF_IMAGE = 0xd9

/**
 * Walks a JPEG's marker segments (ITU-T T.81 annex B) up to the picture data: size from the frame header, EXIF and XMP
 * from APP1. Also reads a bare run of such segments (EXV: the camera facts without the picture).
 */
export function readJpegParts(bytes: Buffer): PictureParts {
  let { exif, xmp, stored, pictures }: PictureParts = NO_PARTS
  for (const { marker, body } of segments(bytes)) {
    if (marker === APP1) {
      if (exif === null && startsWith(body, EXIF_LABEL)) exif = body.subarray(EXIF_LABEL.length)
      if (xmp === null && startsWith(body, XMP_LABEL)) xmp = body.subarray(XMP_LABEL.length)
    } else if (marker === APP2 && startsWith(body, MPF_LABEL)) {
      pictures = countPictures(body.subarray(MPF_LABEL.length))
    } else if (stored === null && isFrameHeader(marker) && body.length >= 5) {
      stored = sizeOrNull(body.readUInt16BE(3), body.readUInt16BE(1))
    }
  }
  return { ...NO_PARTS, exif, xmp, stored, pictures }
}

function* segments(bytes: Buffer): Generator<{ marker: number; body: Buffer }> {
  let at = bytes.toString('latin1', 2, 7) === 'Exiv2' ? 7 : 2
  while (true) {
    at = bytes.indexOf(0xff, at)
    if (at < 0) return
    while (bytes[at] === 0xff) at += 1
    const marker = bytes[at]
    if (marker === undefined || marker === START_OF_SCAN || marker === END_OF_IMAGE) return
    at += 1
    const standsAlone = marker === 0 || marker === 1 || (marker >= 0xd0 && marker <= 0xd8)
    if (standsAlone) continue
    if (at + 2 > bytes.length) return
    const length = bytes.readUInt16BE(at)
    if (length < 2) continue
    yield { marker, body: bytes.subarray(at + 2, at + length) }
    at += length
  }
}

/** SOF0 to SOF15 without DHT (C4), JPG (C8) and DAC (CC). */
function isFrameHeader(marker: number): boolean {
  return marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc
}

function startsWith(body: Buffer, label: Buffer): boolean {
  return body.subarray(0, label.length).equals(label)
}

function sizeOrNull(widthPx: number, heightPx: number): PictureParts['stored'] {
  return widthPx > 0 && heightPx > 0 ? { widthPx, heightPx } : null
}

/** Pictures of a multi-picture file that are more than a small copy of the first; undefined kinds are gain maps mostly. */
function countPictures(block: Buffer): number {
  const isLittle = block[0] === 0x49
  const u16 = (at: number): number =>
    at + 2 > block.length ? 0 : isLittle ? block.readUInt16LE(at) : block.readUInt16BE(at)
  const u32 = (at: number): number =>
    at + 4 > block.length ? 0 : isLittle ? block.readUInt32LE(at) : block.readUInt32BE(at)
  const directory = u32(4)
  for (let k = 0; k < Math.min(u16(directory), 100); k += 1) {
    const entry = directory + 2 + 12 * k
    if (u16(entry) !== MP_ENTRY) continue
    const count = Math.min(u32(entry + 4) / 16, 100)
    const others = Array.from(
      { length: Math.max(0, count - 1) },
      (_, n) => u32(u32(entry + 8) + 16 * (n + 1)) & 0xffffff,
    )
    return 1 + others.filter((kind) => kind !== 0 && !LARGE_THUMBNAILS.includes(kind)).length
  }
  return 1
}
