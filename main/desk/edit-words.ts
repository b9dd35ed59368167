import type { PhotoTagsPatch } from '../../app/contract/edits.ts'
import type { CameraClock } from '../../app/evidence/camera.ts'
import { correctionWords } from '../../app/packet/format/times.ts'

/** What an edit of photos' tags is called in the log. */
export function taggingWords(set: PhotoTagsPatch, what: string, labelOf: (photoId: string) => string): string {
  if (set.leftOutBecause !== undefined) return `${set.leftOutBecause === null ? 'Take back in' : 'Leave out'} ${what}`
  if (set.placedBetween === null) return `Take back the place of ${what}`
  if (set.placedBetween !== undefined) {
    const { afterId, beforeId } = set.placedBetween
    const after = afterId === null ? null : labelOf(afterId)
    const before = beforeId === null ? null : labelOf(beforeId)
    const where =
      after === null ? `before ${before}` : before === null ? `after ${after}` : `between ${after} and ${before}`
    return `Place ${what} by hand ${where}, time not known`
  }
  if (set.repeatedHour === null) return `Take back which of two hours ${what} is from`
  if (set.repeatedHour !== undefined) return `Say that ${what} is from the ${set.repeatedHour} of two hours`
  return `Tag ${what}`
}

/** What an edit of a camera's clock is called in the log; `camera` names it and says how many photos it took. */
export function clockWords({ correctionMs, comparisons = [] }: CameraClock, camera: string): string {
  const [one, other] = comparisons
  if (one !== undefined && other !== undefined) {
    const line = `from ${correctionWords(one.correctionMs)} to ${correctionWords(other.correctionMs)}`
    return `Correct the clock of ${camera} in a straight line ${line}`
  }
  return correctionMs === 0
    ? `Take the clock of ${camera} as it is`
    : `Correct the clock of ${camera} by ${correctionWords(correctionMs)}`
}
