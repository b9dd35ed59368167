import { z } from 'zod'
import { refuse } from '../../../app/contract/app-error.ts'
import { photoFileSchema, photoTagsSchema, type PhotoFile, type PhotoTags } from '../../../app/evidence/photo.ts'
import { stillSchema, type Still } from '../../../app/evidence/still.ts'
import {
  cameraIdSchema,
  jobIdSchema,
  photoIdSchema,
  type CameraId,
  type JobId,
  type PhotoId,
} from '../../../app/job/ids.ts'
import { row, rows, run, type ReadDb, type WriteDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import { keepingRows } from './kept-rows.ts'
import type { RecordTable } from './record-table.ts'

/** A photo as it is kept: facts, tags and where its files are. When it was taken is worked out from these. */
export interface StoredPhoto {
  readonly id: PhotoId
  readonly jobId: JobId
  readonly number: number
  readonly storedName: string
  readonly cameraId: CameraId | null
  readonly file: PhotoFile
  readonly tags: PhotoTags
  readonly preview: 'ready' | 'none'
  readonly takenInAtMs: number
  /** Where the picture is a frame of a video; null for a photo. */
  readonly still: Still | null
  /** Mean brightness of the picture, 0 to 1; null where nobody measured it. */
  readonly brightness?: number | null
}

const photoRowSchema = z.object({
  id: photoIdSchema,
  job_id: jobIdSchema,
  number: z.number(),
  stored_name: z.string(),
  camera_id: cameraIdSchema.nullable(),
  file: z.string(),
  tags: z.string(),
  preview: z.enum(['ready', 'none']),
  taken_in_at_ms: z.number(),
  still: z.string().nullable(),
  brightness: z.number().nullable(),
})
/** Photos of a large job are read again and again while a few of them change. */
const keptPhotos = keepingRows(toPhoto)

const COLUMNS =
  'select id, job_id, number, stored_name, camera_id, file, tags, preview, taken_in_at_ms, still, brightness from photos'

/** A photo's tags: the only thing about a photo that people set. */
export const photoTagsTable: RecordTable<PhotoTags> = {
  get: (db, { jobId, id }) => {
    const found = row(db, 'select tags from photos where id = :id and job_id = :jobId', { id, jobId })
    return found === null
      ? null
      : fromJson(photoTagsSchema, z.object({ tags: z.string() }).parse(found).tags, 'photo tags')
  },
  put: (db, { jobId, id }, tags) => {
    if (tags === null) refuse('invalid', 'A photo is never removed. Leave it out of the packet instead.')
    const written = run(db, 'update photos set tags = :tags where id = :id and job_id = :jobId', {
      id,
      jobId,
      tags: JSON.stringify(tags),
    })
    if (written === 0) refuse('not-found', 'This photo is not in the job.')
  },
  parse: (value) => photoTagsSchema.parse(value),
}

/** The photos of a job in the order of their numbers. */
export function listPhotos(db: ReadDb, jobId: string): StoredPhoto[] {
  const found = rows(db, `${COLUMNS} where job_id = :jobId order by number`, { jobId })
  return keptPhotos(db, jobId, found)
}

/** The photos of a job that changed after a revision. */
export function photosChangedSince(db: ReadDb, jobId: string, revision: number): StoredPhoto[] {
  const found = rows(db, `${COLUMNS} where job_id = :jobId and changed_in > :revision`, { jobId, revision })
  return keptPhotos(db, jobId, found)
}

/** Notes how bright a photo's picture is, 0 to 1. */
export function setBrightness(db: WriteDb, id: string, brightness: number): void {
  run(db, 'update photos set brightness = :brightness where id = :id', { id, brightness })
}

/** The names under which a job's photos are kept; read from an index alone and in one piece, since it is asked of every job at each start. */
export function storedPhotoNames(db: ReadDb, jobId: string): ReadonlySet<string> {
  const found = row(db, 'select json_group_array(stored_name) as names from photos where job_id = :jobId', { jobId })
  const { names } = z.object({ names: z.string() }).parse(found)
  return new Set(fromJson(z.array(z.string()), names, 'names of photos'))
}

/** One photo by identity, in whichever job it is. */
export function findPhoto(db: ReadDb, id: string): StoredPhoto | null {
  const found = row(db, `${COLUMNS} where id = :id`, { id })
  return found === null ? null : toPhoto(found)
}

/** The photo of a job that has these bytes, or null. */
export function photoByHash(db: ReadDb, jobId: string, sha256: string): StoredPhoto | null {
  const found = row(db, `${COLUMNS} where job_id = :jobId and sha256 = :sha256`, { jobId, sha256 })
  return found === null ? null : toPhoto(found)
}

/** Adds a photo; its tags start empty. */
export function addPhoto(db: WriteDb, photo: StoredPhoto): void {
  run(
    db,
    `insert into photos (id, job_id, number, sha256, stored_name, camera_id, file, tags, preview, taken_in_at_ms, still)
     values (:id, :jobId, :number, :sha256, :storedName, :cameraId, :file, :tags, :preview, :takenInAtMs, :still)`,
    {
      id: photo.id,
      jobId: photo.jobId,
      number: photo.number,
      storedName: photo.storedName,
      cameraId: photo.cameraId,
      preview: photo.preview,
      takenInAtMs: photo.takenInAtMs,
      sha256: photo.file.sha256,
      file: JSON.stringify(photo.file),
      tags: JSON.stringify(photo.tags),
      still: photo.still === null ? null : JSON.stringify(photo.still),
    },
  )
}

function toPhoto(found: unknown): StoredPhoto {
  const photo = photoRowSchema.parse(found)
  return {
    id: photo.id,
    jobId: photo.job_id,
    number: photo.number,
    storedName: photo.stored_name,
    cameraId: photo.camera_id,
    file: fromJson(photoFileSchema, photo.file, `facts of photo ${photo.number}`),
    tags: fromJson(photoTagsSchema, photo.tags, `tags of photo ${photo.number}`),
    preview: photo.preview,
    takenInAtMs: photo.taken_in_at_ms,
    still: photo.still === null ? null : fromJson(stillSchema, photo.still, `origin of photo ${photo.number}`),
    brightness: photo.brightness,
  }
}
