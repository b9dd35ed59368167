import type { JobChanges, JobSnapshot } from '../../app/contract/jobs.ts'
import type { Photo } from '../../app/evidence/photo.ts'
import { timeInJob } from '../../app/evidence/time-of-photo.ts'

/**
 * A job as it is after changes. Photos that did not change stay the very same objects, so that what is worked out from
 * one photo need not be worked out again; their times follow from cameras and sheet.
 */
export function withChanges(held: JobSnapshot, { changedPhotos, ...parts }: JobChanges): JobSnapshot {
  const isRetimed = timeMark(held) !== timeMark(parts)
  if (changedPhotos.length === 0 && !isRetimed) return { ...parts, photos: held.photos }
  const changed = new Map(changedPhotos.map((photo) => [photo.id, photo]))
  const known = held.photos.map((photo) => {
    const after = changed.get(photo.id)
    changed.delete(photo.id)
    return after ?? (isRetimed ? retimed(photo, parts) : photo)
  })
  const photos = changed.size === 0 ? known : [...known, ...changed.values()].sort((a, b) => a.number - b.number)
  return { ...parts, photos }
}

type Clocks = Pick<JobSnapshot, 'job' | 'cameras' | 'videos'>

/** All that the times of photos rest on beside the photos themselves. */
function timeMark({ job, cameras, videos }: Clocks): string {
  const { position, timeZone } = job.sheet.property
  const starts = videos.map(({ id, time }) => [id, time])
  return JSON.stringify([position, timeZone, cameras.map(({ id, clock }) => [id, clock]), starts])
}

function retimed(photo: Photo, { job, cameras, videos }: Clocks): Photo {
  const time = timeInJob(photo, { cameras, videos, sheet: job.sheet })
  const { time: before } = photo
  const isSame =
    time.instantMs === before.instantMs &&
    time.offsetMinutes === before.offsetMinutes &&
    time.basis === before.basis &&
    time.correctionMs === before.correctionMs &&
    time.changeOfClocks === before.changeOfClocks
  return isSame ? photo : { ...photo, time }
}
