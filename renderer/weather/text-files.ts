import type { Attachment } from '../../app/evidence/attachment.ts'

/** True for kept files that may hold station reports. */
export function isTextFile({ file }: Attachment): boolean {
  return file.mediaType === 'text/plain' || /\.(csv|txt|tsv|dat|metar)$/i.test(file.fileName)
}
