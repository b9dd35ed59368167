import { refuse } from '../../app/contract/app-error.ts'
import { patchedTags } from '../../app/contract/edits.ts'
import { findingLabel, findingSchema } from '../../app/evidence/finding.ts'
import { cameraName } from '../../app/evidence/camera-name.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { findingIdSchema } from '../../app/job/ids.ts'
import { inTransaction } from '../store/database.ts'
import { redoStep, undoStep, type Write } from '../store/record-edits.ts'
import { listCameras } from '../store/records/cameras.ts'
import { findPhoto, listPhotos } from '../store/records/photos.ts'
import { findingTable, readingTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange, editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { clockWords, taggingWords } from './edit-words.ts'
import { needRecords } from './need-records.ts'
import { planImagesInFrame } from './plan-images-area.ts'
import { facetsInFrame } from './roof-area.ts'
import { needJob } from './snapshot.ts'

/** Sheet and plan frame. */
export function sheetArea(world: DeskWorld): Area<'sheet'> & Area<'frame'> {
  return {
    'sheet.save': ({ jobId, sheet }) =>
      editJob(world, jobId, () => ({
        summary: 'Change the job sheet',
        writes: [{ record: 'sheet', id: jobId, after: sheet }],
        result: {},
      })),
    'sheet.mark-door': ({ jobId, doorAt }) =>
      editJob(world, jobId, (db) => {
        const { sheet } = needJob(db, jobId).job
        const before = sheet.property.doorAt
        return {
          summary:
            doorAt === null
              ? "Take the front door's mark off the plan"
              : `${before === null ? 'Mark' : 'Move'} the front door on the plan`,
          writes: [{ record: 'sheet', id: jobId, after: { ...sheet, property: { ...sheet.property, doorAt } } }],
          result: {},
        }
      }),
    'frame.save': ({ jobId, frame }) =>
      editJob(world, jobId, (db) => ({
        summary: "Change the plan's place and direction",
        writes: [
          { record: 'frame', id: jobId, after: frame },
          ...facetsInFrame(db, jobId, frame),
          ...planImagesInFrame(db, jobId, frame),
        ],
        result: {},
      })),
  }
}

/** Tags of photos and clocks of cameras. */
export function photosArea(world: DeskWorld): Area<'photos'> & Area<'cameras'> {
  return {
    'photos.tag': ({ jobId, photoIds, set }) =>
      editJob(world, jobId, (db) => {
        const photos = [...new Set(photoIds)].map((id) => {
          const photo = findPhoto(db, id)
          return photo === null || photo.jobId !== jobId
            ? refuse('not-found', 'A photo of the selection is not in this job.')
            : photo
        })
        const { afterId = null, beforeId = null } = set.placedBetween ?? {}
        const beside = [afterId, beforeId].flatMap((id) => id ?? [])
        if (beside.some((id) => photoIds.includes(id)))
          refuse('invalid', 'A photo can’t be placed beside itself.', { about: 'placedBetween' })
        needRecords(db, jobId, { facetId: set.facetId ?? null, photoIds: beside })
        const [first] = photos
        const what =
          photos.length === 1 && first !== undefined ? `photo ${photoLabel(first.number)}` : `${photos.length} photos`
        return {
          summary: taggingWords(set, what, (id) => photoLabel(findPhoto(db, id)?.number ?? 0)),
          writes: photos.map((photo): Write => ({
            record: 'photo',
            id: photo.id,
            after: patchedTags(photo.tags, set),
          })),
          result: {},
        }
      }),
    'cameras.set-clock': ({ jobId, id, clock }) =>
      editJob(world, jobId, (db) => {
        const camera =
          listCameras(db, jobId).find((one) => one.id === id) ?? refuse('not-found', 'This camera is not in the job.')
        const photos = listPhotos(db, jobId).filter((photo) => photo.cameraId === id).length
        return {
          summary: clockWords(clock, `${cameraName(camera)} (${photos === 1 ? '1 photo' : `${photos} photos`})`),
          writes: [{ record: 'camera', id, after: clock }],
          result: {},
        }
      }),
  }
}

/** Findings. */
export function findingsArea(world: DeskWorld): Area<'findings'> {
  return {
    'findings.save': ({ jobId, id, finding }) =>
      editJob(world, jobId, (db, newNumber) => {
        const known =
          id === null
            ? null
            : (findingTable.get(db, { jobId, id }) ?? refuse('not-found', 'This finding is no longer in the job.'))
        needRecords(db, jobId, { facetId: finding.facetId, photoIds: finding.photos.map((shown) => shown.photoId) })
        const after = findingSchema.parse({
          ...finding,
          id: known?.id ?? findingIdSchema.parse(world.newId()),
          number: known?.number ?? newNumber('finding'),
        })
        return {
          summary: `${known === null ? 'Add' : 'Change'} finding ${findingLabel(after.number)}`,
          writes: [{ record: 'finding', id: after.id, after }],
          result: { id: after.id, number: after.number },
        }
      }),
    'findings.remove': ({ jobId, id }) =>
      editJob(world, jobId, (db) => {
        const finding =
          findingTable.get(db, { jobId, id }) ?? refuse('not-found', 'This finding is no longer in the job.')
        const readings = readingTable
          .list(db, jobId)
          .filter((reading) => reading.findingId === id)
          .map((reading): Write => ({ record: 'reading', id: reading.id, after: { ...reading, findingId: null } }))
        return {
          summary: `Remove finding ${findingLabel(finding.number)}`,
          writes: [{ record: 'finding', id, after: null }, ...readings],
          result: {},
        }
      }),
  }
}

/** Undo and redo. */
export function historyArea(world: DeskWorld): Area<'history'> {
  const { db } = world.library
  const author = () => ({ actor: world.operator(), atMs: world.now() })
  return {
    'history.undo': ({ jobId }) => {
      needJob(db, jobId)
      const summary = inTransaction(db, (write) => undoStep(write, jobId, author()))
      if (summary !== null) announceChange(world, jobId)
      return { summary }
    },
    'history.redo': ({ jobId }) => {
      needJob(db, jobId)
      const summary = inTransaction(db, (write) => redoStep(write, jobId, author()))
      if (summary !== null) announceChange(world, jobId)
      return { summary }
    },
  }
}
