import { z } from 'zod'
import { attachmentSchema } from '../../../app/evidence/attachment.ts'
import { photoLabel, photoTagsSchema } from '../../../app/evidence/photo.ts'
import { videoLabel } from '../../../app/evidence/video-label.ts'
import { videoTagsSchema } from '../../../app/evidence/video.ts'
import { attachmentIdSchema, photoIdSchema, videoIdSchema, type JobId } from '../../../app/job/ids.ts'
import { nextNumber } from '../../store/counters.ts'
import { row, rows, run, type ReadDb, type WriteDb } from '../../store/database.ts'
import { touchJob } from '../../store/jobs.ts'
import { appendLog, type Author } from '../../store/log.ts'
import { addAttachment, attachmentByHash } from '../../store/records/attachments.ts'
import { cameraFor } from '../../store/records/cameras.ts'
import { putLook } from '../../store/records/picture-looks.ts'
import { addPhoto, photoByHash } from '../../store/records/photos.ts'
import { addVideo, videoByHash } from '../../store/records/videos.ts'
import { indexAttachment, indexPhoto, indexVideo } from '../../store/search-index.ts'
import type { Arrival } from './arrivals.ts'

type Arrived<Kind extends Arrival['kind']> = FileAuthor & { arrival: Extract<Arrival, { kind: Kind }> }

export interface FileAuthor extends Author {
  readonly newId: () => string
}

/** Gives a picture its row, number and log entry. */
export function addArrivedPhoto(db: WriteDb, jobId: JobId, { arrival, ...by }: Arrived<'picture'>): { id: string } {
  const id = photoIdSchema.parse(by.newId())
  const number = nextNumber(db, jobId, 'photo')
  addPhoto(db, {
    id,
    jobId,
    number,
    storedName: arrival.storedName,
    cameraId: cameraFor(db, jobId, { camera: arrival.file.camera, newId: by.newId }),
    file: arrival.file,
    tags: photoTagsSchema.parse({}),
    preview: arrival.previews === null ? 'none' : 'ready',
    takenInAtMs: by.atMs,
    still: null,
  })
  if (arrival.previews !== null) putLook(db, id, arrival.previews.look)
  const { fileName, sha256, bytes } = arrival.file
  appendLog(db, jobId, { ...by, event: { type: 'photo-taken-in', photoId: id, number, fileName, sha256, bytes } })
  indexPhoto(db, id)
  touchJob(db, jobId, by.atMs)
  return { id }
}

/** Gives a video its row, number and log entry. */
export function addArrivedVideo(db: WriteDb, jobId: JobId, { arrival, ...by }: Arrived<'video'>): { number: number } {
  const id = videoIdSchema.parse(by.newId())
  const number = nextNumber(db, jobId, 'video')
  const { file, storedName } = arrival
  const cameraId = cameraFor(db, jobId, { camera: file.camera, newId: by.newId })
  const tags = videoTagsSchema.parse({})
  addVideo(db, { id, jobId, number, storedName, cameraId, file, tags, takenInAtMs: by.atMs })
  const { fileName, sha256, bytes } = file
  appendLog(db, jobId, { ...by, event: { type: 'video-taken-in', videoId: id, number, fileName, sha256, bytes } })
  indexVideo(db, id)
  touchJob(db, jobId, by.atMs)
  return { number }
}

/** Gives any other file its row and log entry. */
export function addArrivedAttachment(db: WriteDb, jobId: JobId, { arrival, ...by }: Arrived<'other'>): void {
  const attachment = attachmentSchema.parse({
    id: attachmentIdSchema.parse(by.newId()),
    file: arrival.file,
    typeLabel: arrival.typeLabel,
    why: arrival.whyNotPicture,
    takenInAtMs: by.atMs,
  })
  addAttachment(db, { jobId, storedName: arrival.storedName, attachment })
  const { fileName, sha256, bytes } = arrival.file
  appendLog(db, jobId, {
    ...by,
    event: { type: 'attachment-taken-in', attachmentId: attachment.id, fileName, sha256, bytes },
  })
  indexAttachment(db, attachment.id)
  touchJob(db, jobId, by.atMs)
}

/** What in the job has these bytes already, as people name it; null when nothing has. */
export function knownAs(
  db: ReadDb,
  jobId: string,
  sha256: string,
): { id: string; label: string; fileName: string } | null {
  const photo = photoByHash(db, jobId, sha256)
  if (photo !== null) return { id: photo.id, label: photoLabel(photo.number), fileName: photo.file.fileName }
  const video = videoByHash(db, jobId, sha256)
  if (video !== null) return { id: video.id, label: videoLabel(video.number), fileName: video.file.fileName }
  const kept = attachmentByHash(db, jobId, sha256)
  if (kept === null) return null
  const { id, file } = kept.attachment
  return { id, label: file.fileName, fileName: file.fileName }
}

const doubleRowSchema = z.object({ fileName: z.string(), sha256: z.string() })

/** Every other name under which bytes of the job were handed over. */
export function doublesOf(db: ReadDb, jobId: string): readonly { fileName: string; sha256: string }[] {
  return rows(db, 'select file_name as fileName, sha256 from doubles where job_id = :jobId', { jobId }).map((found) =>
    doubleRowSchema.parse(found),
  )
}

/** Logs a double once: the same bytes under another name. Handing over the very same file again is no event. */
export function noteDouble(db: WriteDb, jobId: string, double: Author & { fileName: string; sha256: string }): void {
  const known = knownAs(db, jobId, double.sha256)
  if (known === null || known.fileName === double.fileName) return
  const { fileName, sha256 } = double
  const seen = row(db, 'select 1 from doubles where job_id = :jobId and sha256 = :sha256 and file_name = :fileName', {
    jobId,
    sha256,
    fileName,
  })
  if (seen !== null) return
  run(db, 'insert into doubles (job_id, sha256, file_name) values (:jobId, :sha256, :fileName)', {
    jobId,
    sha256,
    fileName,
  })
  appendLog(db, jobId, { ...double, event: { type: 'double-seen', photoId: known.id, fileName, sha256 } })
}
