import type { FileProblem } from '../../../app/evidence/photo.ts'
import type { FileKind } from './file-kind.ts'

/** Extensions that promise something, with the media types that keep the promise. */
const PROMISES: Record<string, readonly string[]> = {
  jpg: ['image/jpeg'],
  jpeg: ['image/jpeg'],
  jpe: ['image/jpeg'],
  jfif: ['image/jpeg'],
  mpo: ['image/jpeg'],
  png: ['image/png'],
  webp: ['image/webp'],
  tif: ['image/tiff'],
  tiff: ['image/tiff'],
  heic: ['image/heic', 'image/heif', 'image/heic-sequence', 'image/heif-sequence'],
  heif: ['image/heic', 'image/heif', 'image/heic-sequence', 'image/heif-sequence'],
  hif: ['image/heic', 'image/heif', 'image/heic-sequence', 'image/heif-sequence'],
  avif: ['image/avif'],
  dng: ['image/x-adobe-dng', 'image/tiff'],
  mp4: ['video/mp4', 'video/x-m4v', 'video/quicktime'],
  m4v: ['video/mp4', 'video/x-m4v'],
  mov: ['video/quicktime', 'video/mp4'],
  pdf: ['application/pdf'],
  vtt: ['text/vtt'],
  srt: ['application/x-subrip'],
}

/** Says so where a file's extension promises something else than the file is. */
export function problemOfExtension(fileName: string, file: FileKind): FileProblem | null {
  const extension = /\.([^.]+)$/.exec(fileName)?.[1]?.toLowerCase() ?? ''
  const promised = PROMISES[extension]
  if (promised === undefined || promised.includes(file.mediaType)) return null
  return { about: 'picture', text: `The name ends in .${extension}, but by its content it is: ${file.typeLabel}.` }
}
