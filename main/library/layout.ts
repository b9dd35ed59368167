import { join } from 'node:path'
import { ownMark } from './process-mark.ts'

/** Where things stand in a library folder. A person can find every file without the program. */
export interface LibraryLayout {
  readonly folder: string
  readonly database: string
  readonly jobs: string
  readonly backups: string
  /** Files found in a job's folder that no job knows: left by a stop in the middle of an intake. */
  readonly unfiled: string
  /** Files on their way in from a browser, and drafts, of every program that has the library open. */
  readonly allIncoming: string
  /** Those of this program. */
  readonly incoming: string
  readonly logs: string
}

/** The folders of one job. */
export interface JobLayout {
  readonly folder: string
  readonly originals: string
  readonly derived: string
  readonly attachments: string
  readonly issued: string
}

/** The layout of the library in `folder`. */
export function libraryLayout(folder: string): LibraryLayout {
  return {
    folder,
    database: join(folder, 'battenbook.db'),
    jobs: join(folder, 'jobs'),
    backups: join(folder, 'backups'),
    unfiled: join(folder, 'unfiled'),
    allIncoming: join(folder, 'incoming'),
    incoming: join(folder, 'incoming', ownMark),
    logs: join(folder, 'logs'),
  }
}

/** The layout of the job kept under `jobs/<name>`. */
export function jobLayout(library: LibraryLayout, name: string): JobLayout {
  const folder = join(library.jobs, name)
  return {
    folder,
    originals: join(folder, 'originals'),
    derived: join(folder, 'derived'),
    attachments: join(folder, 'attachments'),
    issued: join(folder, 'issued'),
  }
}

/** The two pictures made from a photo; both can be made again. */
export function derivedNames(photoId: string): { readonly preview: string; readonly thumbnail: string } {
  return { preview: `${photoId}-preview.jpg`, thumbnail: `${photoId}-thumbnail.jpg` }
}

/** The picture made for drawing over, of an image under the plan; it can be made again. */
export function underlayName(planImageId: string): string {
  return `${planImageId}-underlay.jpg`
}
