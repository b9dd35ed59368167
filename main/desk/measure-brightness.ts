import { join } from 'node:path'
import type { JobId } from '../../app/job/ids.ts'
import { photosAtNight } from '../../app/evidence/sun-check.ts'
import { derivedNames } from '../library/layout.ts'
import { brightnessOf } from '../library/previews/measure-brightness.ts'
import { inTransaction } from '../store/database.ts'
import { findPhoto, setBrightness } from '../store/records/photos.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange } from './edit-job.ts'
import { jobSnapshot, needJobLayout } from './snapshot.ts'

/**
 * Measures how bright photos are, from their thumbnails, and keeps it; answers how many were measured. Brightness follows
 * from the picture alone, so it is no edit and has no log entry.
 */
export async function measureBrightness(world: DeskWorld, jobId: JobId, photoIds: readonly string[]): Promise<number> {
  const { db } = world.library
  const { derived } = needJobLayout(world.library, jobId)
  const measured: { id: string; brightness: number }[] = []
  for (const id of new Set(photoIds)) {
    const photo = findPhoto(db, id)
    if (photo === null || photo.jobId !== jobId || photo.preview === 'none' || photo.brightness !== null) continue
    const brightness = await brightnessOf(join(derived, derivedNames(id).thumbnail))
    if (brightness !== null) measured.push({ id, brightness })
  }
  if (measured.length === 0) return 0
  inTransaction(db, (write) => {
    for (const { id, brightness } of measured) setBrightness(write, id, brightness)
  })
  announceChange(world, jobId)
  return measured.length
}

/** Measures every photo of a job that needs it for the check of its time. */
export async function measureWhereNeeded(world: DeskWorld, jobId: JobId): Promise<void> {
  const { photos, job } = jobSnapshot(world.library.db, jobId)
  const waiting = photos.filter((photo) => photo.brightness === undefined && photo.preview === 'ready')
  const ids = photosAtNight(waiting, job).map(({ id }) => id)
  if (ids.length > 0) await measureBrightness(world, jobId, ids)
}
