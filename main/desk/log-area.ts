import { findChainBreak } from '../../app/evidence/log-chain.ts'
import { lastEntry, logPage, wholeLog } from '../store/log.ts'
import { findWords } from '../store/search.ts'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'
import { needJob } from './snapshot.ts'

/** The evidence log, read and replayed. */
export function logArea(world: DeskWorld): Area<'log'> {
  const { db } = world.library
  return {
    'log.page': ({ jobId, afterSeq, limit }) => ({
      entries: logPage(db, jobId, { afterSeq, limit }),
      total: lastEntry(db, jobId)?.seq ?? 0,
    }),
    'log.verify': ({ jobId }) => {
      needJob(db, jobId)
      const last = lastEntry(db, jobId)
      const broken = findChainBreak(wholeLog(db, jobId))
      return {
        entries: last?.seq ?? 0,
        headHash: last?.hash ?? '',
        brokenAtSeq: broken?.seq ?? null,
        why: broken?.why ?? null,
      }
    },
  }
}

/** Search over the library. */
export function searchArea(world: DeskWorld): Area<'search'> {
  return { 'search.find': (query) => ({ hits: findWords(world.library.db, query) }) }
}
