import { renameSync, rmSync } from 'node:fs'
import { mkdir, rm } from 'node:fs/promises'
import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import { AppFailure } from '../../../app/contract/app-error.ts'
import type { JobId } from '../../../app/job/ids.ts'
import { inTransaction, type WriteDb } from '../../store/database.ts'
import { fileFailure, withFileWords } from '../file-failure.ts'
import { derivedNames, type JobLayout } from '../layout.ts'
import type { Library } from '../open-library.ts'
import { syncFolderNow, writeWhole } from '../write-file.ts'
import { bringIn, type Arrival } from './arrivals.ts'
import { addArrivedAttachment, addArrivedPhoto, addArrivedVideo, knownAs, noteDouble } from './file-rows.ts'
import type { Waiting } from './find-files.ts'
import { inOrder } from './in-order.ts'

/** What became of one file. */
export type Outcome =
  | { readonly kind: 'photo'; readonly fileName: string; readonly id: string }
  | { readonly kind: 'video'; readonly fileName: string; readonly number: number }
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
  /** Told of what nobody foresaw while a file was read; the file itself fails with words. */
  readonly onUnforeseen: (cause: unknown) => void
}

type Settled = { readonly fileName: string } & (
  | { readonly kind: 'arrived'; readonly arrival: Arrival }
  | { readonly kind: 'double'; readonly sha256: string }
  | { readonly kind: 'failed'; readonly reason: string }
)

/** Enough that one slow file does not hold the others up, few enough that their previews fit in memory. */
const AHEAD = 64

/**
 * Takes files into a job: as many at a time as the machine has cores, rows committed in the order given. What is
 * committed stays, whatever happens to the rest; running it again adds only what is new. Stops between files when the
 * signal says so.
 *
 * @throws AppFailure `disk-full` when there is no room left, or what else keeps the library from being written
 */
export async function takeIn(
  library: Library,
  jobId: JobId,
  intake: TakeInOptions & { files: readonly Waiting[] },
): Promise<void> {
  const { places, files, signal } = intake
  const isDouble = (sha256: string) => knownAs(library.db, jobId, sha256) !== null
  await withFileWords(library.layout.folder, async () => {
    for (const folder of [places.originals, places.derived, places.attachments])
      await mkdir(folder, { recursive: true })
    await inOrder(files, {
      width: Math.max(2, availableParallelism()),
      ahead: AHEAD,
      signal,
      work: (waiting) => settle(waiting, { ...intake, isDouble }),
      deliver: (ready) => commit(library, jobId, { ...intake, ready }),
      discard: removeArrived,
    })
  })
}

async function settle(
  waiting: Waiting,
  options: TakeInOptions & { isDouble: (sha256: string) => boolean },
): Promise<Settled> {
  const { fileName } = waiting
  try {
    const brought = await bringIn(waiting, { ...options, nowMs: options.now() })
    return 'double' in brought
      ? { kind: 'double', fileName, sha256: brought.double }
      : { kind: 'arrived', fileName, arrival: brought }
  } catch (cause) {
    const error = fileFailure(cause, fileName)
    if (error?.code === 'disk-full') throw new AppFailure(error, { cause })
    if (error !== null) return { kind: 'failed', fileName, reason: error.message }
    options.onUnforeseen(cause)
    return { kind: 'failed', fileName, reason: 'Something went wrong inside the program while this file was read.' }
  }
}

/** Gives settled files their rows and, in the same transaction, their lasting names. */
async function commit(
  library: Library,
  jobId: JobId,
  intake: TakeInOptions & { ready: readonly Settled[] },
): Promise<void> {
  const { places, ready, onOutcome } = intake
  const rows: { readonly outcome: Outcome; readonly arrival: Arrival | null }[] = []
  try {
    inTransaction(library.db, (db) => {
      for (const item of ready) rows.push(addRow(db, jobId, { ...intake, item }))
      // Inside the transaction, so that a sweep, which takes its turn with it, never meets a file whose row is still to come.
      putInPlace(
        places,
        rows.flatMap(({ arrival }) => arrival ?? []),
      )
    })
  } catch (cause) {
    // The transaction can still fail at its very end, when the files have their lasting names.
    takeBack(library, jobId, { places, ready })
    throw cause
  } finally {
    // Doubles have no file of their own, and after a failure nothing has.
    for (const item of ready) await removeArrived(item)
  }
  try {
    for (const { outcome, arrival } of rows)
      if (outcome.kind === 'photo' && arrival !== null) await writeDerived(places, outcome.id, arrival)
  } finally {
    for (const { outcome } of rows) onOutcome(outcome)
  }
}

function addRow(
  db: WriteDb,
  jobId: JobId,
  { item, ...intake }: TakeInOptions & { item: Settled },
): { outcome: Outcome; arrival: Arrival | null } {
  const { fileName } = item
  const by = { actor: intake.actor, newId: intake.newId, atMs: intake.now() }
  if (item.kind === 'failed') return { outcome: { kind: 'failed', fileName, reason: item.reason }, arrival: null }
  const sha256 = item.kind === 'double' ? item.sha256 : item.arrival.file.sha256
  const known = knownAs(db, jobId, sha256)
  if (known !== null) {
    noteDouble(db, jobId, { ...by, fileName, sha256 })
    return { outcome: { kind: 'double', fileName, sameAs: known.label }, arrival: null }
  }
  if (item.kind === 'double') {
    const reason = 'The file with the same content is no longer in the job.'
    return { outcome: { kind: 'failed', fileName, reason }, arrival: null }
  }
  const { arrival } = item
  switch (arrival.kind) {
    case 'picture': {
      const { id } = addArrivedPhoto(db, jobId, { ...by, arrival })
      return { outcome: { kind: 'photo', fileName, id }, arrival }
    }
    case 'video': {
      const { number } = addArrivedVideo(db, jobId, { ...by, arrival })
      return { outcome: { kind: 'video', fileName, number }, arrival }
    }
    case 'other':
      addArrivedAttachment(db, jobId, { ...by, arrival })
      return { outcome: { kind: 'attachment', fileName, why: arrival.whyNotPicture }, arrival }
  }
}

function putInPlace(places: JobLayout, arrivals: readonly Arrival[]): void {
  const folders = new Set<string>()
  for (const arrival of arrivals) {
    const folder = folderOf(places, arrival)
    renameSync(arrival.arrivedAt, join(folder, arrival.storedName))
    folders.add(folder)
  }
  for (const folder of folders) syncFolderNow(folder)
}

/**
 * Removes files whose rows could not be committed. In a transaction of its own, which keeps other programs from committing
 * the same file meanwhile; where not even that can begin, the next sweep finds them.
 */
function takeBack(library: Library, jobId: JobId, { places, ready }: { places: JobLayout; ready: readonly Settled[] }) {
  try {
    inTransaction(library.db, (db) => {
      for (const item of ready) {
        if (item.kind !== 'arrived' || knownAs(db, jobId, item.arrival.file.sha256) !== null) continue
        rmSync(join(folderOf(places, item.arrival), item.arrival.storedName), { force: true })
      }
    })
  } catch {
    // What the intake itself failed of is told; this adds nothing to it.
  }
}

function folderOf(places: JobLayout, { kind }: Arrival): string {
  return kind === 'other' ? places.attachments : places.originals
}

async function removeArrived(item: Settled): Promise<void> {
  if (item.kind === 'arrived') await rm(item.arrival.arrivedAt, { force: true })
}

async function writeDerived(places: JobLayout, id: string, arrival: Arrival): Promise<void> {
  const previews = arrival.kind === 'picture' ? arrival.previews : null
  if (previews === null) return
  const names = derivedNames(id)
  await Promise.all([
    writeWhole(join(places.derived, names.preview), previews.preview),
    writeWhole(join(places.derived, names.thumbnail), previews.thumbnail),
  ])
}
