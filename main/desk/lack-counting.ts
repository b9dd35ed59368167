import { inTransaction } from '../store/database.ts'
import { setLacks } from '../store/jobs.ts'
import type { DeskWorld } from './desk-world.ts'
import { problemsOf } from './problems.ts'

/** Counts what jobs lack, a few at once and the rest one after another while nothing else is asked. */
export interface LackCounting {
  /** Begins an answer: what can be counted in a moment is counted at once. */
  readonly begin: () => void
  /** How many things stand between a job and its packet; null when it is counted later, and screens hear of it then. */
  readonly ask: (job: { readonly id: string; readonly photos: number }) => number | null
}

/** An answer waits for the counting of so many jobs, none of them with more photos than this. */
const AT_ONCE = { jobs: 3, photos: 500 }
/** The list is told anew this often while counting goes on. */
const TOLD_EVERY_MS = 1000

/** Sets the counting up; it stops by itself when the library is closed. */
export function createLackCounting(world: DeskWorld): LackCounting {
  const { library, now } = world
  const waiting = new Set<string>()
  let isRunning = false
  let countedNow = 0
  let toldAtMs = 0
  const count = (jobId: string): number => {
    // Notices may stand as they are.
    const lacks = problemsOf(library.db, jobId).filter(({ weight }) => weight !== 'notice').length
    inTransaction(library.db, (write) => setLacks(write, jobId, lacks))
    return lacks
  }
  const step = () => {
    const [next] = waiting
    if (next === undefined || !library.db.connection.open) {
      isRunning = false
      return
    }
    waiting.delete(next)
    try {
      count(next)
    } catch (cause) {
      world.reportCause(cause)
    }
    if (waiting.size === 0 || now() - toldAtMs > TOLD_EVERY_MS) {
      toldAtMs = now()
      world.announce({ type: 'jobs-changed' })
    }
    setImmediate(step)
  }
  return {
    begin: () => {
      countedNow = 0
    },
    ask: ({ id, photos }) => {
      if (countedNow < AT_ONCE.jobs && photos <= AT_ONCE.photos) {
        countedNow += 1
        return count(id)
      }
      waiting.add(id)
      if (!isRunning) {
        isRunning = true
        toldAtMs = now()
        setImmediate(step)
      }
      return null
    },
  }
}
