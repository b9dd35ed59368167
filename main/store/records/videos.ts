import { z } from 'zod'
import { refuse } from '../../../app/contract/app-error.ts'
import { videoFileSchema, videoTagsSchema, type VideoFile, type VideoTags } from '../../../app/evidence/video.ts'
import {
  cameraIdSchema,
  jobIdSchema,
  videoIdSchema,
  type CameraId,
  type JobId,
  type VideoId,
} from '../../../app/job/ids.ts'
import { row, rows, run, type ReadDb, type WriteDb } from '../database.ts'
import { fromJson } from '../json-column.ts'
import type { RecordTable } from './record-table.ts'

/** A video as it is kept: facts, tags and where its file is. When it begins is worked out from these. */
export interface StoredVideo {
  readonly id: VideoId
  readonly jobId: JobId
  readonly number: number
  readonly storedName: string
  readonly cameraId: CameraId | null
  readonly file: VideoFile
  readonly tags: VideoTags
  readonly takenInAtMs: number
}

const videoRowSchema = z.object({
  id: videoIdSchema,
  job_id: jobIdSchema,
  number: z.number(),
  stored_name: z.string(),
  camera_id: cameraIdSchema.nullable(),
  file: z.string(),
  tags: z.string(),
  taken_in_at_ms: z.number(),
})

const COLUMNS = 'select id, job_id, number, stored_name, camera_id, file, tags, taken_in_at_ms from videos'

/** A video's tags: the only thing about a video that people set. */
export const videoTagsTable: RecordTable<VideoTags> = {
  get: (db, { jobId, id }) => {
    const found = row(db, 'select tags from videos where id = :id and job_id = :jobId', { id, jobId })
    return found === null
      ? null
      : fromJson(videoTagsSchema, z.object({ tags: z.string() }).parse(found).tags, 'video tags')
  },
  put: (db, { jobId, id }, tags) => {
    if (tags === null) refuse('invalid', 'A video is never removed.')
    const written = run(db, 'update videos set tags = :tags where id = :id and job_id = :jobId', {
      id,
      jobId,
      tags: JSON.stringify(tags),
    })
    if (written === 0) refuse('not-found', 'This video is not in the job.')
  },
  parse: (value) => videoTagsSchema.parse(value),
}

/** The videos of a job in the order of their numbers. */
export function listVideos(db: ReadDb, jobId: string): StoredVideo[] {
  return rows(db, `${COLUMNS} where job_id = :jobId order by number`, { jobId }).map(toVideo)
}

/** One video by identity, in whichever job it is. */
export function findVideo(db: ReadDb, id: string): StoredVideo | null {
  const found = row(db, `${COLUMNS} where id = :id`, { id })
  return found === null ? null : toVideo(found)
}

/** The video of a job that has these bytes, or null. */
export function videoByHash(db: ReadDb, jobId: string, sha256: string): StoredVideo | null {
  const found = row(db, `${COLUMNS} where job_id = :jobId and sha256 = :sha256`, { jobId, sha256 })
  return found === null ? null : toVideo(found)
}

/** Adds a video; its tags start empty. */
export function addVideo(db: WriteDb, video: StoredVideo): void {
  run(
    db,
    `insert into videos (id, job_id, number, sha256, stored_name, camera_id, file, tags, taken_in_at_ms)
     values (:id, :jobId, :number, :sha256, :storedName, :cameraId, :file, :tags, :takenInAtMs)`,
    { ...video, sha256: video.file.sha256, file: JSON.stringify(video.file), tags: JSON.stringify(video.tags) },
  )
}

function toVideo(found: unknown): StoredVideo {
  const video = videoRowSchema.parse(found)
  return {
    id: video.id,
    jobId: video.job_id,
    number: video.number,
    storedName: video.stored_name,
    cameraId: video.camera_id,
    file: fromJson(videoFileSchema, video.file, `facts of video ${video.number}`),
    tags: fromJson(videoTagsSchema, video.tags, `tags of video ${video.number}`),
    takenInAtMs: video.taken_in_at_ms,
  }
}
