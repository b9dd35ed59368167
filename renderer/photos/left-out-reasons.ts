import type { Photo } from '../../app/evidence/photo.ts'

const usual = [
  'blurred',
  'taken by accident',
  'same view as another',
  'shows people or private things',
  'not of this property',
] as const
/** So many can be chosen by a digit. */
const MOST = 9

/** Reasons for leaving photos out: those given in this job, the most used first, then the usual ones. */
export function leftOutReasons(photos: readonly Photo[]): readonly string[] {
  const uses = new Map<string, number>()
  for (const { tags } of photos) {
    const reason = tags.leftOutBecause
    // A near-double names another photo and is given from the list of near-doubles.
    if (reason !== null && !reason.startsWith('near-double of ')) uses.set(reason, (uses.get(reason) ?? 0) + 1)
  }
  const own = [...uses].toSorted(([, a], [, b]) => b - a).map(([reason]) => reason)
  return [...new Set([...own, ...usual])].slice(0, MOST)
}
