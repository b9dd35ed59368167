import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { join } from 'node:path'
import { AppFailure } from '../../app/contract/app-error.ts'
import { allJobs } from '../store/jobs.ts'
import { listPackets } from '../store/packets.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { listPhotos } from '../store/records/photos.ts'
import { listVideos } from '../store/records/videos.ts'
import { fileFailure } from './file-failure.ts'
import { jobLayout, photoFolder, type JobLayout } from './layout.ts'
import type { Library } from './open-library.ts'
import { replayLog, type Replay } from './replay-log.ts'

/** Something that is not as it was when it was taken in or written. */
export interface Difference {
  readonly job: string
  readonly what: string
  readonly problem: string
}

/** What a check of a library looked at and found. */
export interface LibraryCheck {
  readonly filesChecked: number
  readonly entriesChecked: number
  readonly differences: readonly Difference[]
}

/**
 * Reads every original, still, video, attachment and issued packet again, compares hashes, replays every evidence log, and compares what
 * the log says came in with what is there. A record that can't be read is a difference too.
 */
export async function verifyLibrary(library: Library): Promise<LibraryCheck> {
  const differences: Difference[] = []
  let filesChecked = 0
  let entriesChecked = 0
  for (const { job, folder } of allJobs(library.db)) {
    const note = (what: string, problem: string) => differences.push({ job: job.number, what, problem })
    // Rows and log are read at one moment; files are hashed after it, while work may go on.
    const files = readable(() => keptFiles(library, job.id, jobLayout(library.layout, folder)), note)
    const log = replayLog(library.db, job.id)
    entriesChecked += log.entries
    if (log.problem !== null) note(`evidence log, entry ${log.problem.seq}`, log.problem.why)
    else if (files !== null) for (const { what, problem } of unlikeLog(files, log.takenIn)) note(what, problem)
    for (const file of files ?? []) {
      filesChecked += 1
      const problem = await fileProblem(file)
      if (problem !== null) note(file.name, problem)
    }
  }
  return { filesChecked, entriesChecked, differences }
}

interface KeptFile {
  /** Photos, videos and attachments have an entry of the log under this identity; issued packets have none. */
  readonly id: string | null
  readonly path: string
  readonly name: string
  readonly sha256: string
}

function keptFiles(library: Library, jobId: string, places: JobLayout): readonly KeptFile[] {
  return [
    ...listPhotos(library.db, jobId).map((photo) => ({
      id: photo.id,
      path: join(photoFolder(places, photo), photo.storedName),
      name: photo.file.fileName,
      sha256: photo.file.sha256,
    })),
    ...listVideos(library.db, jobId).map(({ id, storedName, file }) => ({
      id,
      path: join(places.originals, storedName),
      name: file.fileName,
      sha256: file.sha256,
    })),
    ...listAttachments(library.db, jobId).map(({ storedName, attachment }) => ({
      id: attachment.id,
      path: join(places.attachments, storedName),
      name: attachment.file.fileName,
      sha256: attachment.file.sha256,
    })),
    ...listPackets(library.db, jobId).map(({ pdfName, pdfSha256 }) => ({
      id: null,
      path: join(places.issued, pdfName),
      name: pdfName,
      sha256: pdfSha256,
    })),
  ]
}

/** Runs a reading of stored records; when they can't be read, notes that and answers null. */
function readable<T>(read: () => T, note: (what: string, problem: string) => void): T | null {
  try {
    return read()
  } catch (cause) {
    if (fileFailure(cause, '') !== null) throw cause
    note('records', cause instanceof AppFailure ? cause.message : 'A stored record is not of the expected shape.')
    return null
  }
}

/** Where rows and log tell different stories. */
function unlikeLog(
  files: readonly KeptFile[],
  takenIn: Replay['takenIn'],
): readonly Pick<Difference, 'what' | 'problem'>[] {
  const kept = new Set(files.map((file) => file.id))
  return [
    ...files.flatMap(({ id, name, sha256 }) => {
      if (id === null) return []
      const entry = takenIn.get(id)
      if (entry === undefined) return [{ what: name, problem: 'The evidence log has no entry of its taking in.' }]
      return entry.sha256 === sha256 ? [] : [{ what: name, problem: 'The evidence log has another hash for it.' }]
    }),
    ...[...takenIn].flatMap(([id, { fileName }]) =>
      kept.has(id)
        ? []
        : [{ what: fileName, problem: 'The evidence log says it was taken in; the job has no record of it.' }],
    ),
  ]
}

async function fileProblem(file: KeptFile): Promise<string | null> {
  try {
    return (await hashFile(file.path)) === file.sha256 ? null : 'The file has changed since it was taken in.'
  } catch {
    return 'The file is missing or cannot be read.'
  }
}

/** SHA-256 of a file, read as a stream. */
export async function hashFile(path: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(path)) hash.update(chunk)
  return hash.digest('hex')
}
