import type { CauseOpinion } from '../../app/evidence/finding.ts'

/** What is said of an indicator: seen, looked for and not seen, or nothing. */
export type IndicatorState = 'seen' | 'not-seen' | 'open'

type Marked = Pick<CauseOpinion, 'indicatorsSeen' | 'indicatorsLookedForNotSeen'>

/** The catalog's indicators and those that a person added, each with what is said of it. */
export function indicatorLines(
  marked: Marked,
  offered: readonly string[],
): readonly { readonly text: string; readonly state: IndicatorState }[] {
  const texts = new Set([...offered, ...marked.indicatorsSeen, ...marked.indicatorsLookedForNotSeen])
  return [...texts].map((text) => ({ text, state: stateOf(marked, text) }))
}

/** The marks with one indicator marked anew: it stands in one list at most. */
export function withIndicator(marked: Marked, text: string, state: IndicatorState): Marked {
  const without = (list: readonly string[]) => list.filter((other) => other !== text)
  const seen = without(marked.indicatorsSeen)
  const notSeen = without(marked.indicatorsLookedForNotSeen)
  return {
    indicatorsSeen: state === 'seen' ? [...seen, text] : seen,
    indicatorsLookedForNotSeen: state === 'not-seen' ? [...notSeen, text] : notSeen,
  }
}

function stateOf(marked: Marked, text: string): IndicatorState {
  if (marked.indicatorsSeen.includes(text)) return 'seen'
  return marked.indicatorsLookedForNotSeen.includes(text) ? 'not-seen' : 'open'
}
