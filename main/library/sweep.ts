import { mkdir, readdir, rename, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { allJobs } from '../store/jobs.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { listPhotos } from '../store/records/photos.ts'
import { jobLayout, type LibraryLayout } from './layout.ts'
import type { Library } from './open-library.ts'
import { ARRIVING } from './write-file.ts'

/**
 * Puts a library in order after a stop in the middle of an intake: half-written files go, and whole files that no job
 * knows move to `unfiled/`. Running the same intake again then finishes it.
 *
 * @returns the names of the files moved to `unfiled/`
 */
export async function sweepLibrary(library: Library): Promise<readonly string[]> {
  const moved: string[] = []
  for (const { job, folder } of allJobs(library.db)) {
    const places = jobLayout(library.layout, folder)
    const photos = new Set(listPhotos(library.db, job.id).map((photo) => photo.storedName))
    const attachments = new Set(listAttachments(library.db, job.id).map((kept) => kept.storedName))
    moved.push(...(await sweepFolder(places.originals, { known: photos, layout: library.layout })))
    moved.push(...(await sweepFolder(places.attachments, { known: attachments, layout: library.layout })))
  }
  await rm(library.layout.incoming, { recursive: true, force: true })
  await mkdir(library.layout.incoming, { recursive: true })
  return moved
}

async function sweepFolder(
  folder: string,
  { known, layout }: { known: ReadonlySet<string>; layout: LibraryLayout },
): Promise<readonly string[]> {
  const moved: string[] = []
  for (const name of await readdir(folder).catch(() => [])) {
    if (known.has(name)) continue
    if (name.endsWith(ARRIVING)) {
      await rm(join(folder, name), { force: true })
      continue
    }
    await mkdir(layout.unfiled, { recursive: true })
    await rename(join(folder, name), join(layout.unfiled, name))
    moved.push(name)
  }
  return moved
}
