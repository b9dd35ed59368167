import type { Photo } from '../../app/evidence/photo.ts'
import type { Job } from '../../app/job/job.ts'
import { connect, inTransaction, type ReadDb } from '../../main/store/database.ts'
import { addJob } from '../../main/store/jobs.ts'
import { migrate } from '../../main/store/migrate.ts'
import { cameraFor } from '../../main/store/records/cameras.ts'
import { addPhoto } from '../../main/store/records/photos.ts'
import { indexJob, indexPhoto } from '../../main/store/search-index.ts'
import { aJob, aPhoto } from './records.ts'

/** An empty database in memory, brought up to date. */
export function anEmptyStore(): ReadDb {
  const db = connect(':memory:')
  migrate(db, { backup: () => undefined })
  return db
}

/** Adds a job to a store, as opening a job does. */
export function aStoredJob(db: ReadDb, job: Job = aJob()): Job {
  inTransaction(db, (write) => {
    addJob(write, { job, folder: job.id })
    indexJob(write, job.id)
  })
  return job
}

/** Adds a photo and its camera to a job, as taking a file in does. */
export function aStoredPhoto(db: ReadDb, job: Job, photo: Photo = aPhoto()): Photo {
  return inTransaction(db, (write) => {
    const cameraId = cameraFor(write, job.id, {
      camera: photo.file.camera,
      newId: () => `camera-of-${photo.id}`,
    })
    addPhoto(write, { ...photo, jobId: job.id, cameraId, storedName: photo.file.fileName })
    indexPhoto(write, photo.id)
    return { ...photo, cameraId }
  })
}
