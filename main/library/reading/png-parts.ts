import { inflateSync } from 'node:zlib'
import { NO_PARTS, type PictureParts } from './container-parts.ts'

const SIGNATURE_LENGTH = 8
const XMP_KEYWORD = 'XML:com.adobe.xmp'
const MAX_XMP_BYTES = 4 * 1024 * 1024

/** Walks a PNG's chunks (PNG specification, third edition): size from IHDR, EXIF from eXIf, XMP from iTXt. */
export function readPngParts(bytes: Buffer): PictureParts {
  let { exif, xmp, stored }: PictureParts = NO_PARTS
  for (const { type, body } of chunks(bytes)) {
    if (type === 'IHDR' && stored === null && body.length >= 8) {
      const widthPx = body.readUInt32BE(0)
      const heightPx = body.readUInt32BE(4)
      if (widthPx > 0 && heightPx > 0) stored = { widthPx, heightPx }
    } else if (type === 'eXIf' && exif === null) {
      exif = body
    } else if (type === 'iTXt' && xmp === null) {
      xmp = readXmpText(body)
    }
  }
  return { ...NO_PARTS, exif, xmp, stored }
}

function* chunks(bytes: Buffer): Generator<{ type: string; body: Buffer }> {
  let at = SIGNATURE_LENGTH
  while (at + 8 <= bytes.length) {
    const length = bytes.readUInt32BE(at)
    const type = bytes.toString('latin1', at + 4, at + 8)
    if (!/^[A-Za-z]{4}$/.test(type)) return
    yield { type, body: bytes.subarray(at + 8, at + 8 + length) }
    if (type === 'IEND') return
    at += 12 + length
  }
}

/** iTXt: keyword, 0, compression flag, compression method, language, 0, translated keyword, 0, text. */
function readXmpText(body: Buffer): Buffer | null {
  const keywordEnd = body.indexOf(0)
  if (body.toString('latin1', 0, Math.max(keywordEnd, 0)) !== XMP_KEYWORD) return null
  const languageEnd = body.indexOf(0, keywordEnd + 3)
  const translatedEnd = languageEnd < 0 ? -1 : body.indexOf(0, languageEnd + 1)
  if (translatedEnd < 0) return null
  const text = body.subarray(translatedEnd + 1)
  if (body[keywordEnd + 1] === 0) return text
  try {
    return inflateSync(text, { maxOutputLength: MAX_XMP_BYTES })
  } catch {
    return null
  }
}
