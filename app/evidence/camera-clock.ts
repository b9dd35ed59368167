import type { CameraClock } from './camera.ts'
import { localAsUtcMs, type WrittenTime } from './photo-time.ts'
import { wallClockMs } from './offset-at-local.ts'

const MINUTE_MS = 60_000

/**
 * What has to be added to a local time that a camera wrote, milliseconds.
 *
 * Between two comparisons the correction follows a straight line, since a clock that runs fast or slow does so evenly;
 * before the first and after the last it stays what it was there, because nothing is known of the clock outside.
 * (Common practice, no source.)
 *
 * @param cameraLocal what the camera wrote, ISO 8601 without a zone; null gives the plain correction
 */
export function correctionAtMs(clock: CameraClock, cameraLocal: string | null): number {
  const [one, other] = clock.comparisons ?? []
  if (one === undefined || other === undefined || cameraLocal === null) return clock.correctionMs
  const fromMs = localAsUtcMs(one.cameraLocal)
  const toMs = localAsUtcMs(other.cameraLocal)
  if (fromMs === toMs) return clock.correctionMs
  const share = (localAsUtcMs(cameraLocal) - fromMs) / (toMs - fromMs)
  const between = Math.min(Math.max(share, 0), 1)
  return Math.round(one.correctionMs + between * (other.correctionMs - one.correctionMs)) + 0
}

/** A clock with something added to its correction, for another reason; comparisons that were made keep their worth. */
export function shiftedClock(clock: CameraClock, addMs: number, why: string): CameraClock {
  const { comparisons } = clock
  const correctionMs = clock.correctionMs + addMs
  if (comparisons === undefined) return { correctionMs, why }
  const shifted = comparisons.map((one) => ({ ...one, correctionMs: one.correctionMs + addMs }))
  return { correctionMs, why, comparisons: shifted }
}

/** How fast a camera's clock loses or gains between its two comparisons, seconds a day; null without two. */
export function driftSecondsADay(clock: CameraClock): number | null {
  const [one, other] = clock.comparisons ?? []
  if (one === undefined || other === undefined) return null
  const days = (localAsUtcMs(other.cameraLocal) - localAsUtcMs(one.cameraLocal)) / 86_400_000
  return days === 0 ? null : (other.correctionMs - one.correctionMs) / 1000 / days
}

/**
 * The correction of a camera's clock that makes a photo's time come out at a known instant; null where the file has no
 * local time, or where nothing says which zone that time is in.
 *
 * @param trueMs the instant at which the photo was taken, milliseconds since 1970
 * @param zone the zone of the photo's place, else the job's; used where the camera wrote no offset
 */
export function correctionFor(written: WrittenTime, trueMs: number, zone: string | null): number | null {
  if (written.local === null) return null
  const wallMs =
    written.offsetMinutes === null
      ? zone === null
        ? null
        : wallClockMs(trueMs, zone)
      : trueMs + written.offsetMinutes * MINUTE_MS
  return wallMs === null ? null : wallMs - localAsUtcMs(written.local)
}
