import { mkdir, rm, writeFile } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { AppFailure } from '../../../app/contract/app-error.ts'
import type { JobId } from '../../../app/job/ids.ts'
import { inTransaction } from '../../store/database.ts'
import { fileFailure } from '../file-failure.ts'
import { derivedNames, type JobLayout } from '../layout.ts'
import type { Library } from '../open-library.ts'
import { bringIn, type Arrival } from './arrivals.ts'
import { addArrivedAttachment, addArrivedPhoto, knownAs, noteDouble } from './file-rows.ts'
import type { Waiting } from './find-files.ts'

/** What became of one file. */
export type Outcome =
  | { readonly kind: 'photo'; readonly fileName: string; readonly id: string }
  | { readonly kind: 'attachment'; readonly fileName: string; readonly why: string }
  | { readonly kind: 'double'; readonly fileName: string; readonly sameAs: string }
  | { readonly kind: 'failed'; readonly fileName: string; readonly reason: string }

export interface TakeInOptions {
  readonly places: JobLayout
  readonly actor: string
  readonly now: () => number
  readonly newId: () => string
  readonly signal: AbortSignal
  /** Told of every file once its row is committed. */
  readonly onOutcome: (outcome: Outcome) => void
}

type Settled = { readonly waiting: Waiting } & (
  | { readonly kind: 'arrived'; readonly arrival: Arrival }
  | { readonly kind: 'double'; readonly sha256: string }
  | { readonly kind: 'failed'; readonly reason: string }
)

/**
 * Takes files into a job: as many at a time as the machine has cores, rows committed in the order given. What is
 * committed stays, whatever happens to the rest; running it again adds only what is new. Stops between files when the
 * signal says so.
 *
 * @throws AppFailure `disk-full` when there is no room left
 */
export async function takeIn(
  library: Library,
  jobId: JobId,
  intake: TakeInOptions & { files: readonly Waiting[] },
): Promise<void> {
  const { places, files, signal } = intake
  for (const folder of [places.originals, places.derived, places.attachments]) await mkdir(folder, { recursive: true })
  const inFlight = new Set<string>()
  const isDouble = (sha256: string) => {
    if (inFlight.has(sha256) || knownAs(library.db, jobId, sha256) !== null) return true
    inFlight.add(sha256)
    return false
  }
  const settled = new Map<number, Settled>()
  let next = 0
  let committed = 0
  const commitReady = async () => {
    const ready: Settled[] = []
    for (let item = settled.get(committed); item !== undefined; item = settled.get(committed)) {
      ready.push(item)
      settled.delete(committed)
      committed += 1
    }
    if (ready.length > 0) await commit(library, jobId, { ...intake, ready })
  }
  const worker = async () => {
    while (next < files.length && !signal.aborted) {
      const index = next++
      const waiting = files[index]
      if (waiting === undefined) return
      settled.set(index, await settle(waiting, { places, nowMs: intake.now(), isDouble }))
      await commitReady()
    }
  }
  const crew = await Promise.allSettled(Array.from({ length: Math.max(2, availableParallelism()) }, worker))
  const stopped = crew.find((result) => result.status === 'rejected')
  if (stopped !== undefined) throw stopped.reason
}

async function settle(
  waiting: Waiting,
  options: { places: JobLayout; nowMs: number; isDouble: (sha256: string) => boolean },
): Promise<Settled> {
  try {
    const brought = await bringIn(waiting, options)
    return 'double' in brought
      ? { kind: 'double', waiting, sha256: brought.double }
      : { kind: 'arrived', waiting, arrival: brought }
  } catch (cause) {
    const error = fileFailure(cause, waiting.fileName)
    if (error === null) throw cause
    if (error.code === 'disk-full') throw new AppFailure(error, { cause })
    return { kind: 'failed', waiting, reason: error.message }
  }
}

async function commit(
  library: Library,
  jobId: JobId,
  intake: TakeInOptions & { ready: readonly Settled[] },
): Promise<void> {
  const { actor, now, newId, places } = intake
  const superfluous: string[] = []
  const pictures: { id: string; arrival: Arrival }[] = []
  const outcomes = inTransaction(library.db, (db) =>
    intake.ready.map((item): Outcome => {
      const { fileName } = item.waiting
      const by = { actor, newId, atMs: now() }
      if (item.kind === 'failed') return { kind: 'failed', fileName, reason: item.reason }
      const sha256 = item.kind === 'double' ? item.sha256 : item.arrival.file.sha256
      const known = knownAs(db, jobId, sha256)
      if (known !== null) {
        noteDouble(db, jobId, { ...by, fileName, sha256 })
        if (item.kind === 'arrived' && known.fileName !== fileName) superfluous.push(item.arrival.storedName)
        return { kind: 'double', fileName, sameAs: known.label }
      }
      if (item.kind === 'double')
        return { kind: 'failed', fileName, reason: 'The file with the same content could not be taken in.' }
      const { arrival } = item
      if (arrival.kind === 'other') {
        addArrivedAttachment(db, jobId, { ...by, arrival })
        return { kind: 'attachment', fileName, why: arrival.whyNotPicture ?? arrival.typeLabel }
      }
      const { id } = addArrivedPhoto(db, jobId, { ...by, arrival })
      pictures.push({ id, arrival })
      return { kind: 'photo', fileName, id }
    }),
  )
  // A copy that another program took in at the same moment under another name has no row of its own.
  for (const name of superfluous)
    await Promise.all([
      rm(join(places.originals, name), { force: true }),
      rm(join(places.attachments, name), { force: true }),
    ])
  for (const { id, arrival } of pictures) await writeDerived(places, id, arrival)
  for (const outcome of outcomes) intake.onOutcome(outcome)
}

async function writeDerived(places: JobLayout, id: string, { previews }: Arrival): Promise<void> {
  if (previews === null) return
  const names = derivedNames(id)
  await Promise.all([
    writeFile(join(places.derived, names.preview), previews.preview),
    writeFile(join(places.derived, names.thumbnail), previews.thumbnail),
  ])
}
