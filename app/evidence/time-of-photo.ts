import type { JobSheet } from '../job/sheet.ts'
import { correctionAtMs } from './camera-clock.ts'
import type { Camera, CameraClock } from './camera.ts'
import { resolvePhotoTime, type PhotoTime } from './photo-time.ts'
import { zonesOfPhoto } from './photo-zone.ts'
import type { Photo } from './photo.ts'
import { timeOfFrame, type Video } from './video.ts'

/** When a photo was taken, with its camera's clock as it is corrected; null stands for a camera that is not known. */
export function timeOfPhoto(
  { file, tags }: Pick<Photo, 'file' | 'tags'>,
  clock: CameraClock | null,
  sheet: JobSheet,
): PhotoTime {
  return resolvePhotoTime(file.written, {
    ...zonesOfPhoto(file, sheet),
    correctionMs: clock === null ? 0 : correctionAtMs(clock, file.written.local),
    pass: tags.repeatedHour ?? null,
  })
}

/**
 * When a photo of a job was taken. A still's time follows from its video's, so that whatever is found out about the video
 * holds for it too.
 */
export function timeInJob(
  photo: Pick<Photo, 'file' | 'tags' | 'cameraId' | 'still'>,
  job: {
    readonly cameras: readonly Camera[]
    readonly videos: readonly Pick<Video, 'id' | 'time'>[]
    readonly sheet: JobSheet
  },
): PhotoTime {
  const { still } = photo
  const video = still === null ? undefined : job.videos.find(({ id }) => id === still.videoId)
  if (still !== null && video !== undefined) return timeOfFrame(video.time, still.offsetMs)
  const clock = job.cameras.find(({ id }) => id === photo.cameraId)?.clock ?? null
  return timeOfPhoto(photo, clock, job.sheet)
}
