import { describe, expect, it } from 'vitest'
import { labelledRuns } from './labelled-cues.ts'
import { precisionOf, recallOf, type Score } from './score-drafts.ts'
import { scoreRuns } from './score-runs.ts'

/** Bars of the design: precision 0.90 and recall 0.75 for component and condition; drafts from silent cues under 5 %. */
const PRECISION = 0.9
const RECALL = 0.75
const SILENT_SHARE = 0.05

const development = [...labelledRuns('dev'), ...labelledRuns('dev2')]
const fresh = labelledRuns('fresh')

function expectBars(score: Score): void {
  for (const field of ['component', 'condition', 'component and condition'] as const) {
    expect(precisionOf(score[field]), `precision of ${field}`).toBeGreaterThanOrEqual(PRECISION)
    expect(recallOf(score[field]), `recall of ${field}`).toBeGreaterThanOrEqual(RECALL)
  }
}

describe('drafts of labelled cues', () => {
  it('are enough cues, of four speakers’ habits, with labels of their own', () => {
    expect(development.length).toBeGreaterThanOrEqual(8)
    expect(development.reduce((sum, run) => sum + run.cues.length, 0)).toBeGreaterThanOrEqual(120)
    expect(labelledRuns('nothing').every((run) => run.findings.every((labels) => labels.length === 0))).toBe(true)
  })

  it('reach the bars for part and condition on all our own cues', () => {
    expectBars(scoreRuns([...development, ...fresh]).score)
  })

  it.skipIf(fresh.length === 0)('reach the same bars on fresh cues by themselves, which nobody tuned on', () => {
    expectBars(scoreRuns(fresh).score)
  })

  it('are hardly ever made from cues that describe nothing or take something back', () => {
    const { silentCues, silentCuesWithDraft } = scoreRuns([...labelledRuns('nothing'), ...development, ...fresh])
    expect(silentCues).toBeGreaterThan(60)
    expect(silentCuesWithDraft / silentCues).toBeLessThan(SILENT_SHARE)
  })

  it.skipIf(fresh.length === 0)('are hardly ever made from the silent cues of the fresh set', () => {
    const { silentCues, silentCuesWithDraft } = scoreRuns(fresh)
    expect(silentCues).toBeGreaterThan(0)
    expect(silentCuesWithDraft / silentCues).toBeLessThan(SILENT_SHARE)
  })
})
