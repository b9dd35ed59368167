import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { readFile, rm, stat } from 'node:fs/promises'
import type { PictureLook } from '../../../app/evidence/near-doubles/picture-look.ts'
import type { PhotoFile } from '../../../app/evidence/photo.ts'
import { storedName } from '../file-names.ts'
import type { JobLayout } from '../layout.ts'
import { makePreviews } from '../previews/make-previews.ts'
import { readFacts, readLargeFacts } from '../reading/read-facts.ts'
import { writeArriving } from '../write-file.ts'
import type { Waiting } from './find-files.ts'

/** Files above this are copied as a stream and kept as attachments; no camera photo comes near it. */
const LARGE_BYTES = 256 * 1024 * 1024

/** How much of a large file is looked at to tell what it is. */
const HEAD_BYTES = 1024 * 1024

/** A file whose bytes stand in the job's folders, synced, under an arriving name; no row knows it yet. */
export interface Arrival {
  readonly kind: 'picture' | 'other'
  readonly file: PhotoFile
  readonly typeLabel: string
  /** Why the file is no photo of the job; null for pictures. */
  readonly whyNotPicture: string | null
  /** Where the bytes stand now. */
  readonly arrivedAt: string
  /** The name they get with their row. */
  readonly storedName: string
  readonly previews: { readonly preview: Buffer; readonly thumbnail: Buffer; readonly look: PictureLook } | null
}

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
  if (size > LARGE_BYTES) return bringInLarge(waiting, options)
  const bytes = await readFile(waiting.path)
  const sha256 = createHash('sha256').update(bytes).digest('hex')
  if (options.isDouble(sha256)) return { double: sha256 }
  const facts = await readFacts({ bytes, sha256, fileName: waiting.fileName, nowMs: options.nowMs })
  const folder = facts.kind === 'picture' ? options.places.originals : options.places.attachments
  const [arrivedAt, made] = await Promise.all([
    writeArriving(folder, [bytes]),
    facts.kind === 'picture' ? makePreviews(bytes, facts.file) : null,
  ])
  const arrival = { ...facts, arrivedAt, storedName: storedName(sha256, waiting.fileName) }
  if (made === null) return { ...arrival, previews: null }
  if (!made.ok) return { ...arrival, file: withProblem(facts.file, made.problem), previews: null }
  const file = made.problem === null ? facts.file : withProblem(facts.file, made.problem)
  return { ...arrival, file, previews: { preview: made.preview, thumbnail: made.thumbnail, look: made.look } }
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
  return { ...facts, arrivedAt, storedName: storedName(sha256, waiting.fileName), previews: null }
}

function withProblem(file: PhotoFile, problem: PhotoFile['problems'][number]): PhotoFile {
  const known = file.problems.some((known) => known.about === problem.about && known.text === problem.text)
  return known ? file : { ...file, problems: [...file.problems, problem] }
}
