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
  /** Photos and videos, byte for byte as the cameras wrote them. */
  readonly originals: string
  /** Pictures that people took out of videos. */
  readonly stills: string
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
    stills: join(folder, 'stills'),
    derived: join(folder, 'derived'),
    attachments: join(folder, 'attachments'),
    issued: join(folder, 'issued'),
  }
}

/** The pictures made from a photo; all can be made again. `full` only where browsers can't show the original. */
export function derivedNames(photoId: string): Record<'preview' | 'thumbnail' | 'full', string> {
  return {
    preview: `${photoId}-preview.jpg`,
    thumbnail: `${photoId}-thumbnail.jpg`,
    full: `${photoId}-full.jpg`,
  }
}

/** Where a photo's file is kept: with the originals, or with the stills where it is a frame of a video. */
export function photoFolder(places: JobLayout, photo: { readonly still: unknown }): string {
  return photo.still === null ? places.originals : places.stills
}

/** The picture made for drawing over, of an image under the plan; it can be made again. */
export function underlayName(planImageId: string): string {
  return `${planImageId}-underlay.jpg`
}
