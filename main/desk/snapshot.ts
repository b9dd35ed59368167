import { refuse } from '../../app/contract/app-error.ts'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { Camera } from '../../app/evidence/camera.ts'
import { timeOfFrame, resolveVideoTime, type Video } from '../../app/evidence/video.ts'
import { resolvePhotoTime, type PhotoTime } from '../../app/evidence/photo-time.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import { zoneAt } from '../../app/evidence/zone-at.ts'
import type { Job } from '../../app/job/job.ts'
import { jobLayout, type JobLayout } from '../library/layout.ts'
import type { Library } from '../library/open-library.ts'
import type { ReadDb } from '../store/database.ts'
import { findJob, type StoredJob } from '../store/jobs.ts'
import { lastEntry } from '../store/log.ts'
import { listPackets } from '../store/packets.ts'
import { historyState } from '../store/record-edits.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { listCameras } from '../store/records/cameras.ts'
import { listPhotos, type StoredPhoto } from '../store/records/photos.ts'
import { listVideos, type StoredVideo } from '../store/records/videos.ts'
import { facetTable, findingTable, outlineTable, readingTable } from '../store/records/tables.ts'

/** A job by identity. @throws AppFailure `not-found` */
export function needJob(db: ReadDb, jobId: string): StoredJob {
  return findJob(db, jobId) ?? refuse('not-found', 'This job is not in the open library.')
}

/** The folders of a job. @throws AppFailure `not-found` */
export function needJobLayout(library: Library, jobId: string): JobLayout {
  return jobLayout(library.layout, needJob(library.db, jobId).folder)
}

/** Everything about a job, as the screens and the packet hold it. */
export function jobSnapshot(db: ReadDb, jobId: string): JobSnapshot {
  const { job } = needJob(db, jobId)
  const cameras = listCameras(db, jobId)
  const videos = listVideos(db, jobId).map((video) => timedVideo(video, { job, cameras }))
  const last = lastEntry(db, jobId)
  return {
    job,
    outlines: outlineTable.list(db, jobId),
    facets: facetTable.list(db, jobId),
    photos: listPhotos(db, jobId).map((photo) => timedPhoto(photo, { job, cameras, videos })),
    videos,
    cameras,
    findings: findingTable.list(db, jobId),
    readings: readingTable.list(db, jobId),
    attachments: listAttachments(db, jobId).map((kept) => kept.attachment),
    packets: listPackets(db, jobId),
    history: historyState(db, jobId),
    log: { entries: last?.seq ?? 0, headHash: last?.hash ?? '' },
  }
}

interface Clocks {
  readonly job: Job
  readonly cameras: readonly Camera[]
}

function timedPhoto(photo: StoredPhoto, { videos, ...clocks }: Clocks & { readonly videos: readonly Video[] }): Photo {
  const { id, number, cameraId, file, tags, takenInAtMs, preview, still } = photo
  const time = timeOfStill(photo, videos) ?? resolvePhotoTime(file.written, clockOf(photo, clocks))
  return { id, number, cameraId, file, tags, time, takenInAtMs, preview, still }
}

/** A still's time follows from its video's, so that whatever is found out about the video holds for it too. */
function timeOfStill({ still }: Pick<StoredPhoto, 'still'>, videos: readonly Video[]): PhotoTime | null {
  if (still === null) return null
  const video = videos.find((one) => one.id === still.videoId)
  return video === undefined ? null : timeOfFrame(video.time, still.offsetMs)
}

/** A video with the time at which it begins. */
function timedVideo(video: StoredVideo, clocks: Clocks): Video {
  const { id, number, cameraId, file, tags, takenInAtMs } = video
  return { id, number, cameraId, file, tags, time: resolveVideoTime(video, clockOf(video, clocks)), takenInAtMs }
}

function clockOf(
  { cameraId, file }: Pick<StoredPhoto, 'cameraId'> & { readonly file: Pick<StoredPhoto['file'], 'position'> },
  { job, cameras }: Clocks,
): { placeZone: string | null; jobZone: string | null; correctionMs: number } {
  const { property } = job.sheet
  const place = file.position ?? property.position
  return {
    placeZone: place === null ? null : zoneAt(place),
    jobZone: property.timeZone === '' ? null : property.timeZone,
    correctionMs: cameras.find((one) => one.id === cameraId)?.clock.correctionMs ?? 0,
  }
}
