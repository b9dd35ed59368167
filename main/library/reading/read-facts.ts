import { createHash } from 'node:crypto'
import type { FileProblem, PhotoFile } from '../../../app/evidence/photo.ts'
import { readCamera } from './camera-facts.ts'
import { type ExifValues, textOf } from './exif-tags.ts'
import { type FileKind, recogniseFile } from './file-kind.ts'
import { contentNotes } from './content-notes.ts'
import { problemOfExtension } from './lying-extension.ts'
import { readPictureParts } from './picture-parts.ts'
import { readExif } from './read-exif.ts'
import { problemOfSize, readLook } from './read-look.ts'
import { readDirection, readPosition } from './read-place.ts'
import { readWrittenTime } from './read-written-time.ts'
import { readXmpFacts } from './xmp-facts.ts'

/** Everything that a file brings: its record, and whether it can be taken in as a picture. */
export type FileFacts = Pick<FileKind, 'kind' | 'typeLabel' | 'whyNotPicture'> & { file: PhotoFile }

/**
 * Reads the facts of a file from its bytes: hash, true type, size, and what the camera wrote. Whatever is damaged or
 * can't be believed becomes a problem in words; nothing throws, and no pixels are decoded.
 * @param input `nowMs` is the take-in moment, milliseconds since 1970: no photo can be from later; `sha256` spares the
 *   hashing where the caller has done it
 */
export async function readFacts(input: {
  bytes: Buffer
  fileName: string
  nowMs: number
  sha256?: string
}): Promise<FileFacts> {
  const { bytes, fileName, nowMs } = input
  const { mediaType, kind, typeLabel, whyNotPicture } = await recogniseFile(bytes)
  const parts = readPictureParts(bytes, mediaType)
  const exif = await readExifOf(parts.exif)
  const xmp = readXmpFacts(parts.xmp ?? textOf(exif.values, 'xmp'))
  const time = readWrittenTime({ exif: exif.values, xmp, nowMs })
  const place = readPosition(exif.values)
  const pointed = readDirection(exif.values)
  const { look, problems: lookProblems } = readLook(parts, exif.values)
  const problems = [
    problemOfExtension(fileName, { mediaType, kind, typeLabel, whyNotPicture }),
    kind === 'picture' && look.widthPx === null ? unreadableHeader(typeLabel) : null,
    problemOfSize(look),
    exif.problem,
    ...lookProblems,
    ...time.problems,
    ...place.problems,
    ...pointed.problems,
    ...(kind === 'picture' ? contentNotes({ bytes, mediaType, pictures: parts.pictures, xmp: parts.xmp }) : []),
  ]
  const file: PhotoFile = {
    sha256: input.sha256 ?? createHash('sha256').update(bytes).digest('hex'),
    bytes: bytes.length,
    fileName,
    mediaType,
    ...look,
    camera: readCamera(exif.values, xmp),
    written: time.written,
    position: place.position,
    direction: pointed.direction,
    problems: problems.filter((problem) => problem !== null),
  }
  return { file, kind, typeLabel, whyNotPicture }
}

/**
 * The record of a file that is too large to be read into memory as a whole: hash, size and true type alone. It is never a
 * picture of the job, since no camera photo is of that size.
 * @param input `head` is the file's beginning, a megabyte or so; `sha256` and `bytes` are those of the whole file
 */
export async function readLargeFacts(input: {
  head: Buffer
  bytes: number
  sha256: string
  fileName: string
}): Promise<FileFacts> {
  const { head, bytes, sha256, fileName } = input
  const recognised = await recogniseFile(head)
  const extensionProblem = problemOfExtension(fileName, recognised)
  const file: PhotoFile = {
    sha256,
    bytes,
    fileName,
    mediaType: recognised.mediaType,
    widthPx: null,
    heightPx: null,
    orientation: 1,
    camera: { make: '', model: '', serial: '' },
    written: { tag: null, raw: null, local: null, offsetMinutes: null, gpsUtcMs: null },
    position: null,
    direction: null,
    problems: extensionProblem === null ? [] : [extensionProblem],
  }
  const tooLarge = 'The file is larger than any photo; it is kept among the attachments.'
  return {
    file,
    kind: 'other',
    typeLabel: recognised.typeLabel,
    whyNotPicture: recognised.whyNotPicture ?? tooLarge,
  }
}

async function readExifOf(block: Buffer | null): Promise<{ values: ExifValues; problem: FileProblem | null }> {
  if (block === null) return { values: {}, problem: null }
  const { values, damaged } = await readExif(block)
  const text = "The camera's notes in the file are damaged; what could be read of them is used."
  return { values, problem: damaged ? { about: 'metadata', text } : null }
}

function unreadableHeader(typeLabel: string): FileProblem {
  return { about: 'picture', text: `The file starts like a ${typeLabel}, but its size can't be read: it is damaged.` }
}
