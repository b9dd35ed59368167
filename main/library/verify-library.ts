import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { join } from 'node:path'
import { findChainBreak } from '../../app/evidence/log-chain.ts'
import { allJobs } from '../store/jobs.ts'
import { wholeLog } from '../store/log.ts'
import { listPackets } from '../store/packets.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { listPhotos } from '../store/records/photos.ts'
import { jobLayout, type JobLayout } from './layout.ts'
import type { Library } from './open-library.ts'

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

/** Reads every original, attachment and issued packet again, compares hashes, and replays every evidence log. */
export async function verifyLibrary(library: Library): Promise<LibraryCheck> {
  const differences: Difference[] = []
  let filesChecked = 0
  let entriesChecked = 0
  for (const { job, folder } of allJobs(library.db)) {
    const note = (what: string, problem: string) => differences.push({ job: job.number, what, problem })
    for (const file of keptFiles(library, job.id, jobLayout(library.layout, folder))) {
      filesChecked += 1
      const problem = await fileProblem(file)
      if (problem !== null) note(file.name, problem)
    }
    let seen = 0
    const counted = function* () {
      for (const entry of wholeLog(library.db, job.id)) {
        seen += 1
        yield entry
      }
    }
    const broken = findChainBreak(counted())
    entriesChecked += seen
    if (broken !== null) note(`evidence log, entry ${broken.seq}`, broken.why)
  }
  return { filesChecked, entriesChecked, differences }
}

interface KeptFile {
  readonly path: string
  readonly name: string
  readonly sha256: string
}

function keptFiles(library: Library, jobId: string, places: JobLayout): readonly KeptFile[] {
  return [
    ...listPhotos(library.db, jobId).map(({ storedName, file }) => ({
      path: join(places.originals, storedName),
      name: file.fileName,
      sha256: file.sha256,
    })),
    ...listAttachments(library.db, jobId).map(({ storedName, attachment }) => ({
      path: join(places.attachments, storedName),
      name: attachment.file.fileName,
      sha256: attachment.file.sha256,
    })),
    ...listPackets(library.db, jobId).map(({ pdfName, pdfSha256 }) => ({
      path: join(places.issued, pdfName),
      name: pdfName,
      sha256: pdfSha256,
    })),
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
