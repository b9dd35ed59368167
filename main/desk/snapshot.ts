import { refuse } from '../../app/contract/app-error.ts'
import type { JobChanges, JobSnapshot } from '../../app/contract/jobs.ts'
import type { Camera } from '../../app/evidence/camera.ts'
import { timeInJob } from '../../app/evidence/time-of-photo.ts'
import { correctionAtMs } from '../../app/evidence/camera-clock.ts'
import { zonesOfPhoto } from '../../app/evidence/photo-zone.ts'
import { resolveVideoTime, type Video } from '../../app/evidence/video.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import type { Job } from '../../app/job/job.ts'
import { jobLayout, type JobLayout } from '../library/layout.ts'
import type { Library } from '../library/open-library.ts'
import type { ReadDb } from '../store/database.ts'
import { findJob, jobRevision, type StoredJob } from '../store/jobs.ts'
import { lastEntry } from '../store/log.ts'
import { listPackets } from '../store/packets.ts'
import { historyState } from '../store/record-edits.ts'
import { assessmentOf } from '../store/records/assessment.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { listCameras } from '../store/records/cameras.ts'
import { diaryEntryTable, jobClocksOf } from '../store/records/diary.ts'
import { fieldSurveyOf } from '../store/records/field-survey.ts'
import { markupTable } from '../store/records/markups.ts'
import { listPhotos, photosChangedSince, type StoredPhoto } from '../store/records/photos.ts'
import { scopeOf } from '../store/records/scope.ts'
import { listVideos, type StoredVideo } from '../store/records/videos.ts'
import {
  draftDecisionTable,
  facetTable,
  findingTable,
  narrationTable,
  outlineTable,
  planImageTable,
  readingTable,
} from '../store/records/tables.ts'
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
  const parts = allButPhotos(db, jobId)
  return { ...parts, photos: timedPhotos(listPhotos(db, jobId), parts) }
}

/** What changed in a job since a revision. */
export function jobChanges(db: ReadDb, jobId: string, since: number): JobChanges {
  const parts = allButPhotos(db, jobId)
  return { ...parts, changedPhotos: timedPhotos(photosChangedSince(db, jobId, since), parts) }
}

function allButPhotos(db: ReadDb, jobId: string): Omit<JobSnapshot, 'photos'> {
  const { job } = needJob(db, jobId)
  const cameras = listCameras(db, jobId)
  const videos = listVideos(db, jobId).map((video) => timedVideo(video, { job, cameras }))
  const last = lastEntry(db, jobId)
  return {
    revision: jobRevision(db, jobId),
    job,
    outlines: outlineTable.list(db, jobId),
    facets: facetTable.list(db, jobId),
    videos,
    markups: markupTable.list(db, jobId),
    cameras,
    findings: findingTable.list(db, jobId),
    readings: readingTable.list(db, jobId),
    planImages: planImageTable.list(db, jobId),
    narrations: narrationTable.list(db, jobId),
    draftDecisions: draftDecisionTable.list(db, jobId),
    survey: fieldSurveyOf(db, jobId),
    weather: jobWeather(db, jobId),
    scope: scopeOf(db, jobId),
    diary: { entries: diaryEntryTable.list(db, jobId), clocks: jobClocksOf(db, jobId) },
    assessment: assessmentOf(db, jobId),
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

type AllClocks = Clocks & { readonly videos: readonly Video[] }

/** Photos with their times, by what was stored and the clocks that held; most of a large job stays as it is from edit to edit. */
const timedBefore = new WeakMap<StoredPhoto, { readonly mark: string; readonly photo: Photo }>()

function timedPhotos(photos: readonly StoredPhoto[], clocks: AllClocks): Photo[] {
  const mark = clockMark(clocks)
  return photos.map((stored) => {
    const before = timedBefore.get(stored)
    if (before?.mark === mark) return before.photo
    const photo = timedPhoto(stored, clocks)
    timedBefore.set(stored, { mark, photo })
    return photo
  })
}

/** All that the times of photos rest on beside the photos themselves. */
function clockMark({ job, cameras, videos }: AllClocks): string {
  const starts = videos.map(({ id, time }) => [id, time])
  return JSON.stringify([job.sheet.property, cameras.map(({ id, clock }) => [id, clock]), starts])
}

function timedPhoto(photo: StoredPhoto, { job, ...clocks }: AllClocks): Photo {
  const { id, number, cameraId, file, tags, takenInAtMs, preview, still, brightness } = photo
  const time = timeInJob(photo, { ...clocks, sheet: job.sheet })
  const measured = brightness === null || brightness === undefined ? {} : { brightness }
  return { id, number, cameraId, file, tags, time, takenInAtMs, preview, still, ...measured }
}

/** A video with the time at which it begins. */
function timedVideo(video: StoredVideo, { job, cameras }: Clocks): Video {
  const { id, number, cameraId, file, tags, takenInAtMs } = video
  const clock = cameras.find((one) => one.id === cameraId)?.clock ?? null
  const given = {
    ...zonesOfPhoto(file, job.sheet),
    correctionMs: clock === null ? 0 : correctionAtMs(clock, file.written.local),
  }
  return { id, number, cameraId, file, tags, time: resolveVideoTime(video, given), takenInAtMs }
}
