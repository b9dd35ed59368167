import { writtenTimeSchema } from '../../../app/evidence/photo-time.ts'
import { recogniseFile } from '../reading/file-kind.ts'
import type { FileFacts } from '../reading/read-facts.ts'

/**
 * The facts of a file too large to hold in memory, such as a long video: what it is by its first bytes, size and hash.
 *
 * @param input `head` is the file's beginning, `bytes` its whole length
 */
export async function largeFileFacts(input: {
  head: Buffer
  bytes: number
  sha256: string
  fileName: string
}): Promise<FileFacts> {
  const { mediaType, typeLabel, whyNotPicture } = await recogniseFile(input.head)
  return {
    kind: 'other',
    typeLabel,
    whyNotPicture:
      whyNotPicture ?? 'The file is larger than any camera picture; it is kept whole among the attachments.',
    file: {
      sha256: input.sha256,
      bytes: input.bytes,
      fileName: input.fileName,
      mediaType,
      widthPx: null,
      heightPx: null,
      orientation: 1,
      camera: { make: '', model: '', serial: '' },
      written: writtenTimeSchema.parse({ tag: null, raw: null, local: null, offsetMinutes: null, gpsUtcMs: null }),
      position: null,
      direction: null,
      problems: [],
    },
  }
}
