import { refuse } from '../../app/contract/app-error.ts'
import { attachmentTagsSchema } from '../../app/evidence/attachment.ts'
import { videoLabel } from '../../app/evidence/video-label.ts'
import { timeOfFrame } from '../../app/evidence/video.ts'
import { storeStill } from '../library/intake/store-still.ts'
import type { ReadDb } from '../store/database.ts'
import { findAttachment } from '../store/records/attachments.ts'
import { findVideo, type StoredVideo } from '../store/records/videos.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange, editJob } from './edit-job.ts'
import type { Area } from './handlers.ts'
import { jobSnapshot, needJobLayout } from './snapshot.ts'

/** What people say of videos and attachments, and stills taken out of videos. */
export function videosArea(world: DeskWorld): Area<'videos'> & Area<'attachments'> {
  const { library } = world
  return {
    'videos.tag': ({ jobId, id, set }) =>
      editJob(world, jobId, (db) => {
        const { number, tags } = needVideo(db, jobId, id)
        const { caption = tags.caption, startSet = tags.startSet } = set
        const what =
          set.startSet === undefined ? 'Describe' : startSet === null ? 'Forget the start of' : 'Set the start of'
        return {
          summary: `${what} video ${videoLabel(number)}`,
          writes: [{ record: 'video', id, after: { caption, startSet } }],
          result: {},
        }
      }),
    'videos.take-still': async ({ jobId, id, offsetMs, picture }) => {
      const video = needVideo(library.db, jobId, id)
      const start = jobSnapshot(library.db, jobId).videos.find((one) => one.id === id)?.time
      const instantMs = start === undefined ? null : timeOfFrame(start, offsetMs).instantMs
      const stored = await storeStill(
        library,
        { places: needJobLayout(library, jobId), video, offsetMs, instantMs, bytes: Buffer.from(picture, 'base64') },
        { actor: world.operator(), atMs: world.now(), newId: world.newId },
      )
      announceChange(world, jobId)
      return { photoId: stored.id, number: stored.number }
    },
    'attachments.describe': ({ jobId, id, description }) =>
      editJob(world, jobId, (db) => {
        const kept = findAttachment(db, id)
        if (kept?.jobId !== jobId) refuse('not-found', 'This file is not in the job.')
        return {
          summary: `Describe ${kept.attachment.file.fileName}`,
          writes: [{ record: 'attachment', id, after: attachmentTagsSchema.parse({ description }) }],
          result: {},
        }
      }),
  }
}

function needVideo(db: ReadDb, jobId: string, id: string): StoredVideo {
  const video = findVideo(db, id)
  return video === null || video.jobId !== jobId ? refuse('not-found', 'This video is not in the job.') : video
}
