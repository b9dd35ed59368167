import { createHash } from 'node:crypto'
import { refuse } from '../../app/contract/app-error.ts'
import { findingLabel, findingSchema } from '../../app/evidence/finding.ts'
import { findingIdSchema, type AttachmentId, type JobId } from '../../app/job/ids.ts'
import { type DraftDecision, draftDecisionSchema, type Narration } from '../../app/narration/narration.ts'
import type { ReadDb } from '../store/database.ts'
import { findAttachment, type StoredAttachment } from '../store/records/attachments.ts'
import { findPhoto } from '../store/records/photos.ts'
import { narrationTable } from '../store/records/tables.ts'
import { findVideo } from '../store/records/videos.ts'
import type { DeskWorld } from './desk-world.ts'
import { editJob } from './edit-job.ts'
import { needRecords } from './need-records.ts'
import type { Area } from './handlers.ts'
import { keptNarration } from './kept-narration.ts'

/** Narration, and the drafts that are read from it. */
export function narrationArea(world: DeskWorld): Area<'narrations'> & Area<'drafts'> {
  return { ...narrations(world), ...drafts(world) }
}

function narrations(world: DeskWorld): Area<'narrations'> {
  return {
    'narrations.import': async ({ jobId, attachmentId, start }) => {
      const kept = needAttachment(world.library.db, jobId, attachmentId)
      const narration = await keptNarration(world, kept, start)
      return editJob(world, jobId, (db) => {
        const known = narrationTable.list(db, jobId)
        if (known.some((other) => other.attachmentId === attachmentId || other.name === narration.name)) {
          refuse('conflict', `The narration of "${narration.name}" is in the job already.`, {
            about: 'attachmentId',
            help: 'Remove it first to import it anew. What was decided about its drafts stays.',
          })
        }
        needAligned(db, jobId, narration)
        return {
          summary: `Import the narration of ${narration.name}, ${narration.cues.length} cues`,
          writes: [{ record: 'narration', id: narration.id, after: narration }],
          result: { id: narration.id, cues: narration.cues.length, problems: narration.problems.length },
        }
      })
    },
    'narrations.align': ({ jobId, id, start }) =>
      editJob(world, jobId, (db) => {
        const after = { ...needNarration(db, jobId, id), start }
        needAligned(db, jobId, after)
        return {
          summary: `${start.kind === 'not-known' ? 'Take' : 'Set'} the narration of ${after.name} ${start.kind === 'not-known' ? 'off the clock' : 'in time'}`,
          writes: [{ record: 'narration', id, after }],
          result: {},
        }
      }),
    'narrations.remove': ({ jobId, id }) =>
      editJob(world, jobId, (db) => ({
        summary: `Remove the narration of ${needNarration(db, jobId, id).name}`,
        writes: [{ record: 'narration', id, after: null }],
        result: {},
      })),
  }
}

function drafts(world: DeskWorld): Area<'drafts'> {
  return {
    'drafts.accept': ({ jobId, draft, finding }) =>
      editJob(world, jobId, (db, newNumber) => {
        needRecords(db, jobId, { facetId: finding.facetId, photoIds: finding.photos.map(({ photoId }) => photoId) })
        const number = newNumber('finding')
        const after = findingSchema.parse({ ...finding, id: findingIdSchema.parse(world.newId()), number })
        return {
          summary: `Add finding ${findingLabel(number)} from the narration`,
          writes: [
            { record: 'finding', id: after.id, after },
            { record: 'draft-decision', id: decisionId(jobId, draft), after: { ...draft, findingId: after.id } },
          ],
          result: { id: after.id, number },
        }
      }),
    'drafts.drop': ({ jobId, drafts: dropped }) =>
      editJob(world, jobId, () => ({
        summary:
          dropped.length === 1 ? 'Drop a draft of the narration' : `Drop ${dropped.length} drafts of the narration`,
        writes: dropped.map((draft) => ({
          record: 'draft-decision' as const,
          id: decisionId(jobId, draft),
          after: draftDecisionSchema.parse({ ...draft, findingId: null }),
        })),
        result: {},
      })),
    'drafts.reopen': ({ jobId, draft }) =>
      editJob(world, jobId, () => ({
        summary: 'Take up a draft of the narration again',
        writes: [{ record: 'draft-decision', id: decisionId(jobId, draft), after: null }],
        result: {},
      })),
  }
}

/** The same words at the same moment of a job have one decision. */
function decisionId(jobId: JobId, { key, startMs }: Pick<DraftDecision, 'key' | 'startMs'>): string {
  return createHash('sha256')
    .update(JSON.stringify([jobId, startMs, key]))
    .digest('hex')
    .slice(0, 40)
}

function needNarration(db: ReadDb, jobId: JobId, id: string): Narration {
  return narrationTable.get(db, { jobId, id }) ?? refuse('not-found', 'This narration is no longer in the job.')
}

function needAttachment(db: ReadDb, jobId: JobId, id: AttachmentId): StoredAttachment {
  const kept = findAttachment(db, id)
  return kept === null || kept.jobId !== jobId
    ? refuse('not-found', 'This file is not among the job’s attachments.', { about: 'attachmentId' })
    : kept
}

/** Refuses a pin on a cue, a photo or a video that is not there. */
function needAligned(db: ReadDb, jobId: JobId, { cues, start }: Narration): void {
  if ((start.kind === 'clock' || start.kind === 'photo') && start.cue >= cues.length) {
    refuse('not-found', 'This cue is not in the narration.', { about: 'start.cue' })
  }
  if (start.kind === 'video' && findVideo(db, start.videoId)?.jobId !== jobId) {
    refuse('not-found', 'This video is not in the job.', { about: 'start.videoId' })
  }
  if (start.kind === 'photo') needRecords(db, jobId, { facetId: null, photoIds: [start.photoId] })
  if (start.kind === 'photo' && findPhoto(db, start.photoId)?.file.written.local === null) {
    refuse('invalid', 'This photo has no time of its own to pin the narration to.', { about: 'start.photoId' })
  }
}
