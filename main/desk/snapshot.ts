import { refuse } from '../../app/contract/app-error.ts'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { Camera } from '../../app/evidence/camera.ts'
import { resolvePhotoTime } from '../../app/evidence/photo-time.ts'
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
import { facetTable, findingTable, outlineTable, readingTable } from '../store/records/tables.ts'
import { jobWeather } from './job-weather.ts'

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
  const last = lastEntry(db, jobId)
  return {
    job,
    outlines: outlineTable.list(db, jobId),
    facets: facetTable.list(db, jobId),
    photos: listPhotos(db, jobId).map((photo) => timedPhoto(photo, { job, cameras })),
    cameras,
    findings: findingTable.list(db, jobId),
    readings: readingTable.list(db, jobId),
    weather: jobWeather(db, jobId),
    attachments: listAttachments(db, jobId).map((kept) => kept.attachment),
    packets: listPackets(db, jobId),
    history: historyState(db, jobId),
    log: { entries: last?.seq ?? 0, headHash: last?.hash ?? '' },
  }
}

function timedPhoto(photo: StoredPhoto, { job, cameras }: { job: Job; cameras: readonly Camera[] }): Photo {
  const camera = cameras.find((one) => one.id === photo.cameraId)
  const { property } = job.sheet
  const place = photo.file.position ?? property.position
  return {
    id: photo.id,
    number: photo.number,
    cameraId: photo.cameraId,
    file: photo.file,
    tags: photo.tags,
    time: resolvePhotoTime(photo.file.written, {
      placeZone: place === null ? null : zoneAt(place),
      jobZone: property.timeZone === '' ? null : property.timeZone,
      correctionMs: camera?.clock.correctionMs ?? 0,
    }),
    takenInAtMs: photo.takenInAtMs,
    preview: photo.preview,
  }
}
