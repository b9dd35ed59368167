import { readNarration } from '../../app/narration/read-narration.ts'
import type { LabelledRun } from './labelled-cues.ts'
import { marrowQuay } from './marrow-quay.ts'
import { emptyScore, type Score, scoreCue } from './score-drafts.ts'

/** The score of labelled runs, each read by itself, and how many cues without a finding got a draft all the same. */
export interface RunsScore {
  readonly score: Score
  readonly cues: number
  readonly silentCues: number
  readonly silentCuesWithDraft: number
  readonly differences: readonly string[]
}

/** Reads runs and compares them with their labels. A draft belongs to the cue in which its condition is said. */
export function scoreRuns(runs: readonly LabelledRun[]): RunsScore {
  const score = emptyScore()
  const differences: string[] = []
  let silentCues = 0
  let silentCuesWithDraft = 0
  for (const run of runs) {
    const { drafts } = readNarration(run.cues, { house: marrowQuay, covering: 'concrete-tile' })
    for (const [at, labels] of run.findings.entries()) {
      const own = drafts.filter((draft) => draft.condition.from[0]?.cue === at)
      if (labels.length === 0) {
        silentCues += 1
        if (own.length > 0) silentCuesWithDraft += 1
      }
      scoreCue(score, { drafts: own, labels, letterOf: (id) => id.replace('facet-', '') }, (difference) => {
        differences.push(`${difference} — ${run.cues[at]?.text ?? ''}`)
      })
    }
  }
  const cues = runs.reduce((sum, run) => sum + run.cues.length, 0)
  return { score, cues, silentCues, silentCuesWithDraft, differences }
}
