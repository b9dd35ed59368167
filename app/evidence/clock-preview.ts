import type { Camera, CameraClock } from './camera.ts'
import type { CaseFile } from './case-file.ts'
import type { Photo } from './photo.ts'
import { timeOfPhoto } from './time-of-photo.ts'
import { inWalkOrder } from './walk-order.ts'

/** What another correction of a camera's clock would change, before it is made. */
export interface ClockPreview {
  /** Photos of this camera whose time changes, with their new times, in the order of the walk. */
  readonly changed: readonly { readonly before: Photo; readonly after: Photo }[]
  /** Photos of this camera whose time is not known either way. */
  readonly untimed: number
  /** Photos of this camera that fall between the first and the last of the other cameras. */
  readonly amongOthers: { readonly before: number; readonly after: number; readonly others: number }
  /** Photos of the job that change their place in the order of the walk relative to their neighbours. */
  readonly order: { readonly before: readonly Photo[]; readonly after: readonly Photo[] }
}

/** Works out what a camera's photos would become with another correction of its clock. */
export function clockPreview(
  { job, photos }: Pick<CaseFile, 'job' | 'photos'>,
  camera: Camera,
  clock: CameraClock,
): ClockPreview {
  const retimed = photos.map((photo) =>
    photo.cameraId === camera.id ? { ...photo, time: timeOfPhoto(photo, clock, job.sheet) } : photo,
  )
  const own = photos.flatMap((before, at) => {
    const after = retimed[at]
    return before.cameraId === camera.id && after !== undefined ? [{ before, after }] : []
  })
  const others = photos.filter(({ cameraId }) => cameraId !== camera.id)
  const changed = own.filter(({ before, after }) => !sameTime(before, after))
  const newTime = new Map(own.map(({ after }) => [after.id, after]))
  const walk = inWalkOrder(changed.map(({ before }) => before))
  return {
    changed: walk.map((before) => ({ before, after: newTime.get(before.id) ?? before })),
    untimed: own.filter(({ after }) => after.time.instantMs === null).length,
    amongOthers: {
      before: countAmong(
        own.map(({ before }) => before),
        others,
      ),
      after: countAmong(
        own.map(({ after }) => after),
        others,
      ),
      others: others.filter(({ time }) => time.instantMs !== null).length,
    },
    order: { before: inWalkOrder(photos), after: inWalkOrder(retimed) },
  }
}

function sameTime({ time: a }: Photo, { time: b }: Photo): boolean {
  return a.instantMs === b.instantMs && a.offsetMinutes === b.offsetMinutes && a.correctionMs === b.correctionMs
}

function countAmong(own: readonly Photo[], others: readonly Photo[]): number {
  let first = Infinity
  let last = -Infinity
  for (const { time } of others) {
    if (time.instantMs === null) continue
    first = Math.min(first, time.instantMs)
    last = Math.max(last, time.instantMs)
  }
  return own.filter(({ time }) => time.instantMs !== null && time.instantMs >= first && time.instantMs <= last).length
}
