import { isUtf8 } from 'node:buffer'
import { fileTypeFromBuffer } from 'file-type'
import { pictureTypeSchema } from '../../../app/evidence/photo.ts'

/** What a file truly is, by its content. */
export type FileKind = {
  mediaType: string
  /** Plain words for people: "JPEG picture", "PDF document". */
  typeLabel: string
  kind: 'picture' | 'video' | 'other'
  /** Why it can't be taken in as a picture; null for pictures. */
  whyNotPicture: string | null
}

const UNKNOWN_TYPE = 'application/octet-stream'

const LABELS: Record<string, string> = {
  'image/jpeg': 'JPEG picture',
  'image/png': 'PNG picture',
  'image/webp': 'WebP picture',
  'image/tiff': 'TIFF picture',
  'image/heic': 'HEIC picture (phone or camera)',
  'image/heic-sequence': 'HEIC picture (phone or camera)',
  'image/heif': 'HEIF picture (camera)',
  'image/heif-sequence': 'HEIF picture (camera)',
  'image/avif': 'AVIF picture',
  'image/x-adobe-dng': 'DNG raw picture',
  'image/x-exv': 'file of camera facts without a picture (EXV)',
  'application/pdf': 'PDF document',
  'text/plain': 'text file',
  'text/vtt': 'subtitle file (WebVTT)',
  'application/x-subrip': 'subtitle file (SRT)',
  [UNKNOWN_TYPE]: 'file of an unknown type',
}

/** Recognises a file by its content, never by its name. Never throws. */
export async function recogniseFile(bytes: Buffer): Promise<FileKind> {
  if (bytes.length === 0) {
    return {
      mediaType: UNKNOWN_TYPE,
      typeLabel: 'empty file',
      kind: 'other',
      whyNotPicture: 'The file is empty; copy it from the card again.',
    }
  }
  const { mediaType, extension } = (await recogniseWithLibrary(bytes)) ?? recogniseByStart(bytes)
  const typeLabel = LABELS[mediaType] ?? labelByFamily(mediaType, extension)
  const isPicture = pictureTypeSchema.safeParse(mediaType).success
  const whyNotPicture = isPicture ? null : explain(mediaType, typeLabel)
  const kind = isPicture ? 'picture' : mediaType.startsWith('video/') ? 'video' : 'other'
  return { mediaType, typeLabel, kind, whyNotPicture }
}

type Recognised = { mediaType: string; extension: string }

async function recogniseWithLibrary(bytes: Buffer): Promise<Recognised | null> {
  try {
    const found = await fileTypeFromBuffer(bytes)
    if (found === undefined) return null
    return { mediaType: found.mime === 'image/apng' ? 'image/png' : found.mime, extension: found.ext }
  } catch {
    return null
  }
}

/** Broken files that the library gives up on, by the first bytes that their standards ask for. */
function recogniseByStart(bytes: Buffer): Recognised {
  const start = bytes.toString('latin1', 0, 16)
  if (start.startsWith('\xff\xd8\xff')) return { mediaType: 'image/jpeg', extension: 'jpg' }
  if (start.startsWith('\x89PNG\r\n\x1a\n')) return { mediaType: 'image/png', extension: 'png' }
  if (/^(II[*U]\0|MM\0\*)/.test(start)) return { mediaType: 'image/tiff', extension: 'tif' }
  if (start.startsWith('\xff\x01Exiv2')) return { mediaType: 'image/x-exv', extension: 'exv' }
  if (start.startsWith('ftyp', 4)) return { mediaType: 'video/mp4', extension: 'mp4' }
  const head = bytes.subarray(0, 65_536)
  // A cut inside a character at the end of the head must not make a text file unknown.
  const isText = !head.includes(0) && [0, 1, 2, 3].some((cut) => isUtf8(head.subarray(0, head.length - cut)))
  return isText ? recogniseText(head.toString('utf8')) : { mediaType: UNKNOWN_TYPE, extension: '' }
}

/** WebVTT by its signature (W3C WebVTT, 4.1); SRT, which has no standard, by a first cue with a number and an arrow. */
function recogniseText(text: string): Recognised {
  if (/^\ufeff?WEBVTT(?=[ \t\r\n]|$)/.test(text)) return { mediaType: 'text/vtt', extension: 'vtt' }
  const isSrt = /^\ufeff?\s*\d+[ \t]*\r?\n\d{1,2}:\d\d:\d\d[,.]\d{1,3}[ \t]*-->[ \t]*\d{1,2}:\d\d:\d\d/.test(text)
  return isSrt ? { mediaType: 'application/x-subrip', extension: 'srt' } : { mediaType: 'text/plain', extension: 'txt' }
}

function labelByFamily(mediaType: string, extension: string): string {
  const short = extension.toUpperCase()
  if (mediaType.startsWith('image/')) return `${short} picture`
  if (mediaType.startsWith('video/')) return `video (${short})`
  if (mediaType.startsWith('audio/')) return `sound recording (${short})`
  return `${short} file`
}

function explain(mediaType: string, typeLabel: string): string {
  const kept = 'the file is kept among the attachments'
  if (mediaType === UNKNOWN_TYPE) return `The content is of no type that is known here; ${kept}.`
  if (mediaType === 'image/x-exv') return `The file holds camera facts but no picture; ${kept}.`
  if (mediaType.startsWith('image/')) {
    const name = typeLabel.replace(/ picture.*$/, '')
    return `${name} pictures can't be shown here; ${kept}.`
  }
  return `This is a ${typeLabel}, not a picture; ${kept}.`
}
