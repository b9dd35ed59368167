import type { CameraClock, ClockComparison } from '../../app/evidence/camera.ts'
import { correctionWords } from '../../app/packet/format/times.ts'

/**
 * The clock that follows from a new comparison: alone, or together with the one made before, in a straight line between
 * the two. Two at the same moment of the camera make no line; the new one then stands alone.
 */
export function clockFromComparison(
  before: CameraClock,
  comparison: ClockComparison,
  how: { readonly together: boolean; readonly why: string },
): CameraClock {
  const first = lineStart(before, comparison)
  const why = how.why.trim() === '' ? usualReason(comparison) : how.why.trim()
  if (!how.together || first === null) {
    return { correctionMs: comparison.correctionMs, why, comparisons: [comparison] }
  }
  const line = [first, comparison].toSorted((a, b) => (a.cameraLocal < b.cameraLocal ? -1 : 1))
  return { correctionMs: line[0]?.correctionMs ?? comparison.correctionMs, why, comparisons: line }
}

/** The comparison made before that a new one can make a line with: the earliest that was made at another moment. */
export function lineStart(before: CameraClock, comparison: ClockComparison): ClockComparison | null {
  return (before.comparisons ?? []).find(({ cameraLocal }) => cameraLocal !== comparison.cameraLocal) ?? null
}

/** What is given as the reason when a person types none. */
export function usualReason({ by, trueWords, correctionMs }: ClockComparison): string {
  switch (by) {
    case 'clock-photo':
      return `Photo of a clock that showed ${trueWords}`
    case 'linked-photo':
      return `The same moment as ${trueWords}`
    case 'gps-time':
      return `Its own GPS time, ${trueWords}`
    case 'typed':
      return `Typed: ${correctionWords(correctionMs)}`
  }
}
