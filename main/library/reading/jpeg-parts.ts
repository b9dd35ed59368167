import { NO_PARTS, type PictureParts } from './container-parts.ts'

const EXIF_LABEL = Buffer.from('Exif\0\0', 'latin1')
const XMP_LABEL = Buffer.from('http://ns.adobe.com/xap/1.0/\0', 'latin1')
const APP1 = 0xe1
const START_OF_SCAN = 0xda
const END_OF_IMAGE = 0xd9

/**
 * Walks a JPEG's marker segments (ITU-T T.81 annex B) up to the picture data: size from the frame header, EXIF and XMP
 * from APP1. Also reads a bare run of such segments (EXV: the camera facts without the picture).
 */
export function readJpegParts(bytes: Buffer): PictureParts {
  let { exif, xmp, stored }: PictureParts = NO_PARTS
  for (const { marker, body } of segments(bytes)) {
    if (marker === APP1) {
      if (exif === null && startsWith(body, EXIF_LABEL)) exif = body.subarray(EXIF_LABEL.length)
      if (xmp === null && startsWith(body, XMP_LABEL)) xmp = body.subarray(XMP_LABEL.length)
    } else if (stored === null && isFrameHeader(marker) && body.length >= 5) {
      stored = sizeOrNull(body.readUInt16BE(3), body.readUInt16BE(1))
    }
  }
  return { ...NO_PARTS, exif, xmp, stored }
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
