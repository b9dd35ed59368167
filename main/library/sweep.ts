import { existsSync, mkdirSync, readdirSync, renameSync, rmSync } from 'node:fs'
import { join, parse } from 'node:path'
import { inTransaction } from '../store/database.ts'
import { allJobFolders } from '../store/jobs.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { storedPhotoNames } from '../store/records/photos.ts'
import { listVideos } from '../store/records/videos.ts'
import { jobLayout, type LibraryLayout } from './layout.ts'
import type { Library } from './open-library.ts'
import { isLeftBehind } from './process-mark.ts'
import { ARRIVING } from './write-file.ts'

/**
 * Puts a library in order after a stop in the middle of an intake: half-written files go, and whole files that no job
 * knows move to `unfiled/`. Running the same intake again then finishes it. What a running program is in the middle of
 * is left alone: its half-written files carry its mark, and a whole file gets its name inside the transaction that gives
 * it its row, which this waits for.
 *
 * @returns the names of the files moved to `unfiled/`
 */
export function sweepLibrary(library: Library): readonly string[] {
  const { layout } = library
  const moved = inTransaction(library.db, (db) =>
    allJobFolders(db).flatMap(({ id, folder }) => {
      const places = jobLayout(layout, folder)
      const pictures = () => storedPhotoNames(db, id)
      const originals = () => new Set([...pictures(), ...namesOf(listVideos(db, id))])
      removeHalfWritten(places.derived)
      return [
        ...moveUnknown(places.originals, { known: originals, layout }),
        ...moveUnknown(places.stills, { known: pictures, layout }),
        ...moveUnknown(places.attachments, { known: () => namesOf(listAttachments(db, id)), layout }),
      ]
    }),
  )
  for (const name of namesIn(layout.allIncoming))
    if (isLeftBehind(name)) rmSync(join(layout.allIncoming, name), { recursive: true, force: true })
  return moved
}

function namesOf(kept: readonly { readonly storedName: string }[]): ReadonlySet<string> {
  return new Set(kept.map(({ storedName }) => storedName))
}

function moveUnknown(
  folder: string,
  { known, layout }: { known: () => ReadonlySet<string>; layout: LibraryLayout },
): readonly string[] {
  removeHalfWritten(folder)
  // Some file systems hand names back in another normal form than they were given.
  const names = namesIn(folder).filter((name) => !name.endsWith(ARRIVING))
  if (names.length === 0) return []
  const kept = known()
  const unknown = names.filter((name) => !kept.has(name.normalize('NFC')))
  if (unknown.length > 0) mkdirSync(layout.unfiled, { recursive: true })
  for (const name of unknown) renameSync(join(folder, name), freePath(layout.unfiled, name))
  return unknown
}

function removeHalfWritten(folder: string): void {
  for (const name of namesIn(folder))
    if (name.endsWith(ARRIVING) && isLeftBehind(name)) rmSync(join(folder, name), { force: true })
}

/** What stands in `unfiled/` already is never written over. */
function freePath(folder: string, fileName: string): string {
  const { name, ext } = parse(fileName)
  for (let copy = 1; ; copy++) {
    const path = join(folder, copy === 1 ? fileName : `${name}-${copy}${ext}`)
    if (!existsSync(path)) return path
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder)
  } catch {
    return []
  }
}
