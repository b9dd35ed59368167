import { createHash } from 'node:crypto'
import { renameSync } from 'node:fs'
import { mkdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../../app/contract/app-error.ts'
import { photoFileSchema, photoTagsSchema, type PhotoFile } from '../../../app/evidence/photo.ts'
import type { Still } from '../../../app/evidence/still.ts'
import { frameTimeWords, videoLabel } from '../../../app/evidence/video-label.ts'
import { photoIdSchema, type PhotoId } from '../../../app/job/ids.ts'
import { nextNumber } from '../../store/counters.ts'
import { inTransaction, type WriteDb } from '../../store/database.ts'
import { touchJob } from '../../store/jobs.ts'
import { appendLog } from '../../store/log.ts'
import { addPhoto } from '../../store/records/photos.ts'
import type { StoredVideo } from '../../store/records/videos.ts'
import { indexPhoto } from '../../store/search-index.ts'
import { storedName } from '../file-names.ts'
import { derivedNames, type JobLayout } from '../layout.ts'
import type { Library } from '../open-library.ts'
import { makePreviews } from '../previews/make-previews.ts'
import { recogniseFile } from '../reading/file-kind.ts'
import { readPictureParts } from '../reading/picture-parts.ts'
import { syncFolderNow, writeArriving, writeWhole } from '../write-file.ts'
import { type FileAuthor, knownAs } from './file-rows.ts'

interface Given {
  readonly places: JobLayout
  readonly video: StoredVideo
  readonly offsetMs: number
  /** The frame's instant as it is known now, for the log. */
  readonly instantMs: number | null
  readonly bytes: Buffer
}

/**
 * Stores a frame of a video as a picture: file, row, number, log entry and previews.
 *
 * @throws AppFailure `invalid` where it is no picture of the video's size, or the moment lies behind its end; `conflict`
 *   where the very same picture is in the job
 */
export async function storeStill(
  library: Library,
  given: Given,
  by: FileAuthor,
): Promise<{ id: PhotoId; number: number }> {
  const { places, video, offsetMs, bytes } = given
  const still: Still = { videoId: video.id, videoNumber: video.number, videoSha256: video.file.sha256, offsetMs }
  const file = await stillFile(given)
  const made = await makePreviews(bytes, file)
  if (!made.ok || made.problem !== null) refuse('invalid', 'The picture of this frame is damaged. Take it again.')
  for (const folder of [places.stills, places.derived]) await mkdir(folder, { recursive: true })
  const arrivedAt = await writeArriving(places.stills, [bytes])
  try {
    const added = inTransaction(library.db, (db) => {
      const known = knownAs(db, video.jobId, file.sha256)
      if (known !== null) refuse('conflict', `This very picture is in the job already, as ${known.label}.`)
      const row = addRow(db, { ...given, still, file }, by)
      renameSync(arrivedAt, join(places.stills, storedName(file.sha256, file.fileName)))
      syncFolderNow(places.stills)
      return row
    })
    const names = derivedNames(added.id)
    await writeWhole(join(places.derived, names.preview), made.preview)
    await writeWhole(join(places.derived, names.thumbnail), made.thumbnail)
    return added
  } finally {
    await rm(arrivedAt, { force: true })
  }
}

async function stillFile({ video, offsetMs, bytes }: Given): Promise<PhotoFile> {
  const { durationMs, widthPx, heightPx, camera, position } = video.file
  // The last frame lasts until the end, and players round.
  if (durationMs > 0 && offsetMs > durationMs + 1000)
    refuse('invalid', `${videoLabel(video.number)} is shorter than that.`, { about: 'offsetMs' })
  const { mediaType } = await recogniseFile(bytes)
  if (mediaType !== 'image/jpeg' && mediaType !== 'image/png')
    refuse('invalid', 'A still has to be a JPEG or PNG picture.', { about: 'picture' })
  const { stored } = readPictureParts(bytes, mediaType)
  if (stored?.widthPx !== widthPx || stored.heightPx !== heightPx)
    refuse('invalid', `A still of this video has to be ${widthPx} by ${heightPx} pixels.`, { about: 'picture' })
  const at = frameTimeWords(offsetMs).replaceAll(':', '-')
  return photoFileSchema.parse({
    sha256: createHash('sha256').update(bytes).digest('hex'),
    bytes: bytes.length,
    fileName: `${videoLabel(video.number)} at ${at}.${mediaType === 'image/png' ? 'png' : 'jpg'}`,
    mediaType,
    widthPx,
    heightPx,
    orientation: 1,
    camera,
    written: { tag: null, raw: null, local: null, offsetMinutes: null, gpsUtcMs: null },
    position,
    direction: null,
    problems: [],
  })
}

function addRow(
  db: WriteDb,
  { video, instantMs, still, file }: Given & { still: Still; file: PhotoFile },
  by: FileAuthor,
): { id: PhotoId; number: number } {
  const { jobId } = video
  const id = photoIdSchema.parse(by.newId())
  const number = nextNumber(db, jobId, 'photo')
  const { fileName, sha256, bytes } = file
  addPhoto(db, {
    id,
    jobId,
    number,
    storedName: storedName(sha256, fileName),
    cameraId: video.cameraId,
    file,
    tags: photoTagsSchema.parse({}),
    preview: 'ready',
    takenInAtMs: by.atMs,
    still,
  })
  appendLog(db, jobId, {
    ...by,
    event: { type: 'still-taken', photoId: id, number, fileName, sha256, bytes, ...still, instantMs },
  })
  indexPhoto(db, id)
  touchJob(db, jobId, by.atMs)
  return { id, number }
}
