import { useRef, useState } from 'react'
import { type Assessment, assessmentSchema } from '../../app/assessment/assessment.ts'
import type { AssessmentPatch } from '../../app/contract/assessment.ts'
import { useEdit, useJob } from '../state/job-state.tsx'

interface AssessmentState {
  /** With what was just changed, before the desk has answered. */
  readonly assessment: Assessment
  /** Saves parts of the assessment as one step; answers whether the desk took them. */
  readonly save: (set: AssessmentPatch) => Promise<boolean>
}

/**
 * What is stated for the open job's assessment, and the way to change it. A list is saved whole, so the next change must
 * start from the one before it, not from what the desk last told.
 */
export function useAssessment(): AssessmentState {
  const { assessment } = useJob()
  const edit = useEdit()
  const [ahead, setAhead] = useState<Assessment | null>(null)
  const latest = useRef<Assessment | null>(null)
  async function save(set: AssessmentPatch): Promise<boolean> {
    const next = assessmentSchema.safeParse({ ...(latest.current ?? assessment), ...set })
    latest.current = next.success ? next.data : latest.current
    if (next.success) setAhead(next.data)
    const isSaved = (await edit('assessment.save', { set })) !== null
    if (next.success && latest.current === next.data) {
      latest.current = null
      setAhead(null)
    }
    return isSaved
  }
  return { assessment: ahead ?? assessment, save }
}
