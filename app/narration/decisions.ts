import type { Draft } from './draft.ts'
import type { DraftDecision } from './narration.ts'

/** A subtitle file written anew from the same recording may shift its cues a little. */
const SAME_MOMENT_MS = 2000

/** The decision about a draft; null while nobody has decided. The same words at the same moment are the same draft. */
export function decisionOf<D extends DraftDecision>(
  draft: Pick<Draft, 'key' | 'startMs'>,
  decisions: readonly D[],
): D | null {
  return (
    decisions.find(({ key, startMs }) => key === draft.key && Math.abs(startMs - draft.startMs) <= SAME_MOMENT_MS) ??
    null
  )
}
