import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { open, readFile, rm, stat } from 'node:fs/promises'
import type { PictureLook } from '../../../app/evidence/near-doubles/picture-look.ts'
import type { PhotoFile } from '../../../app/evidence/photo.ts'
import type { VideoFile } from '../../../app/evidence/video.ts'
import { storedName } from '../file-names.ts'
import type { JobLayout } from '../layout.ts'
import { makePreviews } from '../previews/make-previews.ts'
import { recogniseFile } from '../reading/file-kind.ts'
import { type FileFacts, readFacts, readLargeFacts } from '../reading/read-facts.ts'
import { readVideo } from '../reading/video/read-video.ts'
import { writeArriving } from '../write-file.ts'
import type { Waiting } from './find-files.ts'

/** Files above this are copied as a stream and kept as attachments or videos; no camera photo comes near it. */
const LARGE_BYTES = 256 * 1024 * 1024

/** Above this a file is looked at before it is read whole: a video never is. No camera's JPEG comes near it. */
const LOOKED_AT_BYTES = 24 * 1024 * 1024

/** How much of a large file is looked at to tell what it is. */
const HEAD_BYTES = 1024 * 1024

/** A file whose bytes stand in the job's folders, synced, under an arriving name; no row knows it yet. */
export type Arrival = {
  /** Where the bytes stand now. */
  readonly arrivedAt: string
  /** The name they get with their row. */
  readonly storedName: string
} & (
  | {
      readonly kind: 'picture'
      readonly file: PhotoFile
      readonly previews: { readonly preview: Buffer; readonly thumbnail: Buffer; readonly look: PictureLook } | null
    }
  | { readonly kind: 'video'; readonly file: VideoFile }
  | { readonly kind: 'other'; readonly file: PhotoFile; readonly typeLabel: string; readonly whyNotPicture: string }
)

export interface ArrivalOptions {
  readonly places: JobLayout
  readonly nowMs: number
  /** Asked as soon as the hash is known; true stops before anything is written, since the bytes are in the job already. */
  readonly isDouble: (sha256: string) => boolean
}

/**
 * Brings one file in: reads it once, hashes, reads its facts, writes the synced copy and makes previews, all from that one
 * reading. Answers the hash alone when the job has these bytes already.
 */
export async function bringIn(
  waiting: Waiting,
  options: ArrivalOptions,
): Promise<Arrival | { readonly double: string }> {
  const { size } = await stat(waiting.path)
  if (size > LARGE_BYTES || (size > LOOKED_AT_BYTES && (await isVideo(waiting.path))))
    return bringInLarge(waiting, options)
  const bytes = await readFile(waiting.path)
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  if (options.isDouble(sha256)) return { double: sha256 }
  const facts = await readFacts({ bytes, sha256, fileName: waiting.fileName, nowMs: options.nowMs })
  if (facts.kind !== 'picture') {
    const arrivedAt = await writeArriving(options.places.attachments, [bytes])
    return arrivalOf(facts, { arrivedAt, nowMs: options.nowMs })
  }
  const [arrivedAt, made] = await Promise.all([
    writeArriving(options.places.originals, [bytes]),
    makePreviews(bytes, facts.file),
  ])
  const arrival = { kind: 'picture' as const, arrivedAt, storedName: storedName(sha256, waiting.fileName) }
  if (!made.ok) return { ...arrival, file: withProblem(facts.file, made.problem), previews: null }
  const file = made.problem === null ? facts.file : withProblem(facts.file, made.problem)
  return { ...arrival, file, previews: { preview: made.preview, thumbnail: made.thumbnail, look: made.look } }
}

async function isVideo(path: string): Promise<boolean> {
  const file = await open(path, 'r')
  try {
    const head = Buffer.alloc(HEAD_BYTES)
    const { bytesRead } = await file.read(head, 0, HEAD_BYTES, 0)
    return (await recogniseFile(head.subarray(0, bytesRead))).kind === 'video'
  } finally {
    await file.close()
  }
}

async function bringInLarge(waiting: Waiting, options: ArrivalOptions): Promise<Arrival | { readonly double: string }> {
  const hash = createHash('sha256')
  const head: Buffer[] = []
  let bytes = 0
  const looking = async function* () {
    for await (const chunk of createReadStream(waiting.path, { highWaterMark: HEAD_BYTES })) {
      const part = Buffer.from(chunk)
      if (bytes < HEAD_BYTES) head.push(part.subarray(0, HEAD_BYTES - bytes))
      bytes += part.length
      hash.update(part)
      yield part
    }
  }
  const arrivedAt = await writeArriving(options.places.attachments, looking())
  const sha256 = hash.digest('hex')
  if (options.isDouble(sha256)) {
    await rm(arrivedAt, { force: true })
    return { double: sha256 }
  }
  const facts = await readLargeFacts({ head: Buffer.concat(head), bytes, sha256, fileName: waiting.fileName })
  return arrivalOf(facts, { arrivedAt, nowMs: options.nowMs })
}

/** A video where it can be read as one, else an attachment that says why it is no more than that. */
async function arrivalOf(facts: FileFacts, at: { arrivedAt: string; nowMs: number }): Promise<Arrival> {
  const { file, typeLabel, whyNotPicture } = facts
  const { sha256, bytes, fileName, mediaType, problems } = file
  const kept = { arrivedAt: at.arrivedAt, storedName: storedName(sha256, fileName) }
  const plain = { ...kept, kind: 'other' as const, file, typeLabel, whyNotPicture: whyNotPicture ?? typeLabel }
  if (facts.kind !== 'video') return plain
  const read = await readVideo(at.arrivedAt, { sha256, bytes, fileName, mediaType, problems, nowMs: at.nowMs })
  if (read.ok) return { ...kept, kind: 'video', file: read.file }
  return {
    ...plain,
    whyNotPicture: `This looks like a ${typeLabel}, but ${read.why}; it is kept among the attachments.`,
  }
}

function withProblem(file: PhotoFile, problem: PhotoFile['problems'][number]): PhotoFile {
  const known = file.problems.some((known) => known.about === problem.about && known.text === problem.text)
  return known ? file : { ...file, problems: [...file.problems, problem] }
}
