import { findingLabel } from '../../app/evidence/finding.ts'
import { type Photo, photoLabel } from '../../app/evidence/photo.ts'
import { type JobClock, timeWords } from '../state/job-clock.ts'

/** A photo and its time: `P-012 at 14:03:27`. */
export function whenWords(photo: Photo, clock: JobClock): string {
  const { instantMs } = photo.time
  const label = photoLabel(photo.number)
  return instantMs === null ? `${label}, time not known` : `${label} at ${timeWords(instantMs, clock)}`
}

/** What a tick says when the pointer rests on it. */
export function tickWords(photo: Photo, clock: JobClock): string {
  const caption = photo.tags.caption === '' ? photo.file.fileName : photo.tags.caption
  return `${whenWords(photo, clock)}. ${caption}`
}

/** What a finding's mark says when the pointer rests on it. */
export function findingWords(number: number, observation: string): string {
  return observation === '' ? findingLabel(number) : `${findingLabel(number)}. ${observation}`
}
