import { useMemo } from 'react'
import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { Finding } from '../../app/evidence/finding.ts'
import { recordingStartMs } from '../../app/narration/aligned.ts'
import { decisionOf } from '../../app/narration/decisions.ts'
import type { Draft } from '../../app/narration/draft.ts'
import type { DraftDecision, Narration } from '../../app/narration/narration.ts'
import { readNarration } from '../../app/narration/read-narration.ts'
import { useJob } from '../state/job-state.tsx'

/** A draft and what became of it. */
export interface StandingDraft {
  readonly draft: Draft
  readonly decision: DraftDecision | null
  /** The finding that it became, unless that was removed. */
  readonly finding: Finding | null
}

/** A narration read against the roof plan as it is now. */
export interface ReadNarration {
  readonly narration: Narration
  /** When its recording began; null while nothing ties it to a clock. */
  readonly startMs: number | null
  readonly drafts: readonly StandingDraft[]
}

/** The job's narrations with their drafts. The plan decides places, so that open drafts follow it; decided ones are findings. */
export function useNarrations(): readonly ReadNarration[] {
  const { narrations, photos, videos, facets, outlines, job, draftDecisions, findings } = useJob()
  const { covering, property } = job.sheet
  const { upAzimuthDeg } = job.frame
  const { frontAzimuthDeg, doorAt } = property
  const readings = useMemo(() => {
    const house = { facets, outlines, upAzimuthDeg, frontAzimuthDeg, doorAt }
    return narrations.map((narration) => readNarration(narration.cues, { house, covering: covering.class }))
  }, [narrations, facets, outlines, upAzimuthDeg, frontAzimuthDeg, doorAt, covering.class])
  return useMemo(
    () =>
      narrations.map((narration, at) => ({
        narration,
        startMs: recordingStartMs(narration, { photos, videos }),
        drafts: (readings[at]?.drafts ?? []).map((draft) => standing(draft, { draftDecisions, findings })),
      })),
    [narrations, readings, photos, videos, draftDecisions, findings],
  )
}

function standing(
  draft: Draft,
  { draftDecisions, findings }: Pick<JobSnapshot, 'draftDecisions' | 'findings'>,
): StandingDraft {
  const decision = decisionOf(draft, draftDecisions)
  return { draft, decision, finding: findings.find(({ id }) => id === decision?.findingId) ?? null }
}
