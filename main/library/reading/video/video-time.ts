import type { FileProblem } from '../../../../app/evidence/photo.ts'
import type { VideoFile } from '../../../../app/evidence/video.ts'
import { canBeTaken, readCalendarTime, readOffsetMinutes } from '../calendar-time.ts'
import { asWritten } from '../written-text.ts'

/** From 1904-01-01, where the container counts from, to 1970-01-01. */
const FROM_1904_S = 2_082_844_800
/** Two clocks of one device that were read a moment apart. */
const SAME_MS = 2_000

/**
 * Reads when a video says it was recorded: the date that the camera wrote beside the picture, and the container's own time.
 * Where both are there and differ, both are kept and the difference is told.
 *
 * @param given `recorded` is the first date found and the tag it stands in; `createdS` counts from 1904, 0 is none
 */
export function readVideoTime(given: {
  recorded: { tag: string; text: string } | null
  createdS: number
  nowMs: number
}): Pick<VideoFile, 'written' | 'containerUtcMs'> & { problems: FileProblem[] } {
  const { recorded, createdS, nowMs } = given
  const problems: FileProblem[] = []
  const note = (text: string) => problems.push({ about: 'time', text })
  const statedMs = createdS === 0 ? null : (createdS - FROM_1904_S) * 1000
  const containerUtcMs = statedMs !== null && canBeTaken(statedMs, nowMs) ? statedMs : null
  if (statedMs !== null && containerUtcMs === null)
    note("The container's creation time is not used: no camera can have written that day. Check the camera's clock.")
  const nothing = { tag: null, raw: null, local: null, offsetMinutes: null, gpsUtcMs: null }
  if (recorded === null) return { written: nothing, containerUtcMs, problems }
  const time = readCalendarTime(recorded.text, '')
  const raw = asWritten(recorded.text)
  if (time === null || !canBeTaken(time.asUtcMs, nowMs)) {
    note(`The date "${raw}" (${recorded.tag}) is not used: no camera can have written it.`)
    return { written: { ...nothing, raw }, containerUtcMs, problems }
  }
  const offsetMinutes = time.zone === '' ? null : readOffsetMinutes(time.zone.replace(/^([+-]\d\d)(\d\d)$/, '$1:$2'))
  const recordedUtcMs = offsetMinutes === null ? null : time.asUtcMs - offsetMinutes * 60_000
  if (recordedUtcMs !== null && containerUtcMs !== null && Math.abs(containerUtcMs - recordedUtcMs) > SAME_MS) {
    const apart = Math.round((containerUtcMs - recordedUtcMs) / 1000)
    const order = apart > 0 ? `${apart} s later than` : `${-apart} s before`
    note(
      `The container's time is ${order} the date of recording. The date of recording is used: it is written when recording begins, the container's often when the file is finished.`,
    )
  }
  return {
    written: { tag: recorded.tag, raw, local: time.local, offsetMinutes, gpsUtcMs: null },
    containerUtcMs,
    problems,
  }
}
