import { renameSync } from 'node:fs'
import { mkdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../../app/contract/app-error.ts'
import { pictureTypeSchema, type PhotoFile } from '../../../app/evidence/photo.ts'
import type { JobId } from '../../../app/job/ids.ts'
import type { PlanImage } from '../../../app/roof/plan-image.ts'
import { inTransaction, type ReadDb } from '../../store/database.ts'
import { attachmentByHash } from '../../store/records/attachments.ts'
import { photoByHash } from '../../store/records/photos.ts'
import { withFileWords } from '../file-failure.ts'
import type { JobLayout } from '../layout.ts'
import type { Library } from '../open-library.ts'
import { syncFolderNow } from '../write-file.ts'
import { bringIn, type Arrival } from './arrivals.ts'
import { addArrivedAttachment, knownAs, noteDouble, type FileAuthor } from './file-rows.ts'
import type { Waiting } from './find-files.ts'

/** A picture of the job that can be laid under the plan. */
export type SupportingPicture = Pick<PlanImage, 'file' | 'widthPx' | 'heightPx'>

interface SupportingIntake {
  readonly places: JobLayout
  readonly waiting: Waiting
  readonly actor: string
  readonly now: () => number
  readonly newId: () => string
}

/**
 * Takes one picture into a job as a supporting picture: kept, hashed and logged as every file is, but an attachment and
 * never a photo. Where the job has the same bytes already, those are used.
 *
 * @throws AppFailure `unreadable-file` when it is no picture that can be shown; nothing of it is kept then
 */
export async function takeInSupporting(
  library: Library,
  jobId: JobId,
  intake: SupportingIntake,
): Promise<SupportingPicture> {
  const { places, waiting } = intake
  return withFileWords(waiting.fileName, async () => {
    for (const folder of [places.originals, places.attachments]) await mkdir(folder, { recursive: true })
    const isDouble = (sha256: string) => knownAs(library.db, jobId, sha256) !== null
    const brought = await bringIn(waiting, { places, nowMs: intake.now(), isDouble })
    const by = { actor: intake.actor, newId: intake.newId, atMs: intake.now() }
    if ('double' in brought) return doubleOf(library, jobId, { ...by, waiting, sha256: brought.double })
    try {
      return keep(library, jobId, { ...by, places, arrival: brought })
    } finally {
      // Gone from there when it got its lasting name; left behind when it was refused.
      await rm(brought.arrivedAt, { force: true })
    }
  })
}

function keep(
  library: Library,
  jobId: JobId,
  { places, arrival, ...by }: FileAuthor & { places: JobLayout; arrival: Arrival },
): SupportingPicture {
  const { file, storedName, arrivedAt } = arrival
  if (arrival.kind !== 'picture') refuseOtherFile(file.fileName)
  const size = neededSize(arrival.file, arrival.previews !== null)
  inTransaction(library.db, (db) => {
    addArrivedAttachment(db, jobId, {
      ...by,
      arrival: {
        kind: 'other',
        file: arrival.file,
        arrivedAt,
        storedName,
        typeLabel: `${file.mediaType.replace('image/', '').toUpperCase()} picture, supporting picture`,
        whyNotPicture: 'It was taken in to be laid under the roof plan. It is no evidence photo.',
      },
    })
    renameSync(arrivedAt, join(places.attachments, storedName))
    syncFolderNow(places.attachments)
  })
  return needed(library.db, jobId, { sha256: file.sha256, size })
}

function doubleOf(
  library: Library,
  jobId: JobId,
  { waiting, sha256, ...by }: FileAuthor & { waiting: Waiting; sha256: string },
): SupportingPicture {
  const photo = photoByHash(library.db, jobId, sha256)
  const file = photo?.file ?? attachmentByHash(library.db, jobId, sha256)?.attachment.file
  if (file === undefined) refuse('not-found', 'The file with the same content is no longer in the job.')
  const size = neededSize(file, photo === null || photo.preview === 'ready')
  inTransaction(library.db, (db) => noteDouble(db, jobId, { ...by, fileName: waiting.fileName, sha256 }))
  return needed(library.db, jobId, { sha256, size })
}

function needed(
  db: ReadDb,
  jobId: JobId,
  { sha256, size }: { sha256: string; size: Pick<SupportingPicture, 'widthPx' | 'heightPx'> },
): SupportingPicture {
  const photo = photoByHash(db, jobId, sha256)
  if (photo !== null) return { file: { kind: 'photo', id: photo.id }, ...size }
  const kept = attachmentByHash(db, jobId, sha256)
  if (kept === null) refuse('not-found', 'The picture is no longer in the job.')
  return { file: { kind: 'attachment', id: kept.attachment.id }, ...size }
}

function neededSize(file: PhotoFile, isShowable: boolean): Pick<SupportingPicture, 'widthPx' | 'heightPx'> {
  const { fileName, mediaType, widthPx, heightPx, problems } = file
  if (!pictureTypeSchema.safeParse(mediaType).success) refuseOtherFile(fileName)
  if (!isShowable || widthPx === null || heightPx === null) {
    const why = problems.find(({ about }) => about === 'preview' || about === 'picture')?.text
    refuse('unreadable-file', `"${fileName}" can't be shown. ${why ?? 'Its size can not be read.'}`, {
      help: 'Open it in another program, save it again, smaller if it is huge, and add that.',
      about: fileName,
    })
  }
  return { widthPx, heightPx }
}

function refuseOtherFile(fileName: string): never {
  refuse('unreadable-file', `"${fileName}" is not a picture, so it can't be laid under the plan.`, {
    help: 'Export it as a picture from the program that made it. A page of a PDF can be saved as a picture.',
    about: fileName,
  })
}
