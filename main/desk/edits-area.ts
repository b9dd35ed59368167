import { refuse } from '../../app/contract/app-error.ts'
import { findingLabel, findingSchema } from '../../app/evidence/finding.ts'
import { photoLabel } from '../../app/evidence/photo.ts'
import { findingIdSchema } from '../../app/job/ids.ts'
import { inTransaction } from '../store/database.ts'
import { redoStep, undoStep, type Write } from '../store/record-edits.ts'
import { listCameras } from '../store/records/cameras.ts'
import { findPhoto } from '../store/records/photos.ts'
import { findingTable, readingTable } from '../store/records/tables.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange, editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { needRecords } from './need-records.ts'
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
    'frame.save': ({ jobId, frame }) =>
      editJob(world, jobId, (db) => ({
        summary: "Change the plan's place and direction",
        writes: [{ record: 'frame', id: jobId, after: frame }, ...facetsInFrame(db, jobId, frame)],
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
        needRecords(db, jobId, { facetId: set.facetId ?? null })
        const [first] = photos
        const what =
          photos.length === 1 && first !== undefined ? `photo ${photoLabel(first.number)}` : `${photos.length} photos`
        return {
          summary: `${set.leftOutBecause === undefined ? 'Tag' : set.leftOutBecause === null ? 'Take back in' : 'Leave out'} ${what}`,
          writes: photos.map((photo): Write => ({
            record: 'photo',
            id: photo.id,
            after: { ...photo.tags, ...onlyGiven(set) },
          })),
          result: {},
        }
      }),
    'cameras.set-clock': ({ jobId, id, clock }) =>
      editJob(world, jobId, (db) => {
        const camera =
          listCameras(db, jobId).find((one) => one.id === id) ?? refuse('not-found', 'This camera is not in the job.')
        const name = [camera.make, camera.model].filter((part) => part !== '').join(' ')
        return {
          summary: `Correct the clock of ${name === '' ? 'the unnamed camera' : name}`,
          writes: [{ record: 'camera', id, after: clock }],
          result: {},
        }
      }),
  }
}

/** A field that is there but undefined, as the window's channel can carry it, is not a change. */
function onlyGiven<T extends object>(patch: T): Partial<T> {
  const given: Partial<T> = { ...patch }
  for (const key in given) if (given[key] === undefined) delete given[key]
  return given
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
