import { replayLog } from '../library/replay-log.ts'
import { lastEntry, logPage } from '../store/log.ts'
import { findWords } from '../store/search.ts'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'
import { needJob } from './snapshot.ts'

/** The evidence log, read and replayed. */
export function logArea(world: DeskWorld): Area<'log'> {
  const { db } = world.library
  return {
    'log.page': ({ jobId, afterSeq, limit }) => {
      needJob(db, jobId)
      return { entries: logPage(db, jobId, { afterSeq, limit }), total: lastEntry(db, jobId)?.seq ?? 0 }
    },
    'log.verify': ({ jobId }) => {
      needJob(db, jobId)
      const { entries, headHash, problem } = replayLog(db, jobId)
      return { entries, headHash, brokenAtSeq: problem?.seq ?? null, why: problem?.why ?? null }
    },
  }
}

/** Search over the library. */
export function searchArea(world: DeskWorld): Area<'search'> {
  return { 'search.find': (query) => ({ hits: findWords(world.library.db, query) }) }
}
