import type { FileProblem } from '../../../app/evidence/photo.ts'
import { largestPreview } from './embedded-preview.ts'
import { readTiffDirectories } from './tiff-directories.ts'

/** TIFF 6.0: NewSubfileType, bit 0 a reduced copy of another page. */
const SUBFILE_TYPE = 254
/** The motion photo's mark in XMP, of both editions of its format (developer.android.com, Motion Photo format 1.0). */
const MOTION_MARK = /(?:MotionPhoto|MicroVideo)(?:="|='|>)1/
/** The end of a JPEG to which a phone appended a block of its own with a clip in it. */
const TRAILER_MARK = 'SEFT'
const MOST_XMP_BYTES = 1024 * 1024

/** What a picture file holds beside the picture that is shown, in words; most hold nothing else. */
export function contentNotes(file: {
  bytes: Buffer
  mediaType: string
  pictures: number
  xmp: Buffer | null
}): FileProblem[] {
  const { bytes, mediaType } = file
  return [picturesNote(file), motionNote(file), mediaType === 'image/x-adobe-dng' ? rawNote(bytes) : null].flatMap(
    (text): FileProblem[] => (text === null ? [] : [{ about: 'contents', text }]),
  )
}

function picturesNote({ bytes, mediaType, pictures }: Parameters<typeof contentNotes>[0]): string | null {
  if (mediaType === 'image/tiff') {
    const pages = readTiffDirectories(bytes).pages.filter((page) => ((page.get(SUBFILE_TYPE)?.[0] ?? 0) & 1) === 0)
    return pages.length > 1 ? `The file holds ${pages.length} pages; the first is shown.` : null
  }
  if (mediaType === 'image/webp' && isMovingWebp(bytes)) return 'The file is an animation; its first picture is shown.'
  return pictures > 1 ? `The file holds ${pictures} pictures; the one its maker put first is shown.` : null
}

/** RFC 9649: the second lowest bit of VP8X's flags. */
function isMovingWebp(bytes: Buffer): boolean {
  return bytes.toString('latin1', 12, 16) === 'VP8X' && ((bytes[20] ?? 0) & 2) !== 0
}

function motionNote({ bytes, mediaType, xmp }: Parameters<typeof contentNotes>[0]): string | null {
  const isMarked = xmp !== null && xmp.length <= MOST_XMP_BYTES && MOTION_MARK.test(xmp.toString('latin1'))
  const hasTrailer = mediaType === 'image/jpeg' && bytes.toString('latin1', bytes.length - 4) === TRAILER_MARK
  const holdsClip = hasTrailer && bytes.includes('MotionPhoto_Data', Math.max(0, bytes.length - 64 * 1024 * 1024))
  return isMarked || holdsClip
    ? 'A short clip belongs to the picture (motion photo). The picture is shown; the clip stays inside the original.'
    : null
}

function rawNote(bytes: Buffer): string | null {
  const preview = largestPreview(bytes)
  return preview === null
    ? null
    : `A raw file: shown is the preview of ${preview.widthPx} by ${preview.heightPx} pixels that the camera put into it.`
}
