import { findChainBreak, type ChainBreak } from '../../app/evidence/log-chain.ts'
import type { LogEntry } from '../../app/evidence/log-entry.ts'
import type { ReadDb } from '../store/database.ts'
import { wholeLog } from '../store/log.ts'
import { fileFailure } from './file-failure.ts'

/** What a replay of a job's evidence log comes to. */
export interface Replay {
  /** How many entries could be read, and the hash of the last of them. */
  readonly entries: number
  readonly headHash: string
  /** The first entry that does not fit or can't be read. */
  readonly problem: ChainBreak | null
  /** Hash and name, by identity, of everything that the log says was taken in. */
  readonly takenIn: ReadonlyMap<string, { readonly sha256: string; readonly fileName: string }>
}

/** Replays a job's evidence log from its first entry. */
export function replayLog(db: ReadDb, jobId: string): Replay {
  const takenIn = new Map<string, { sha256: string; fileName: string }>()
  let entries = 0
  let headHash = ''
  const read = function* (): Generator<LogEntry> {
    for (const entry of wholeLog(db, jobId)) {
      entries += 1
      headHash = entry.hash
      const { event } = entry
      if (event.type === 'photo-taken-in') takenIn.set(event.photoId, event)
      if (event.type === 'video-taken-in') takenIn.set(event.videoId, event)
      if (event.type === 'still-taken') takenIn.set(event.photoId, event)
      if (event.type === 'attachment-taken-in') takenIn.set(event.attachmentId, event)
      yield entry
    }
  }
  try {
    const problem = findChainBreak(read())
    return { entries, headHash, problem, takenIn }
  } catch (cause) {
    if (fileFailure(cause, '') !== null) throw cause
    const seq = entries + 1
    const problem = { seq, why: `Entry ${seq} can't be read: it has been changed after it was written.` }
    return { entries, headHash, problem, takenIn }
  }
}
