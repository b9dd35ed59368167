import { useRef, useState } from 'react'
import type { SurveyPatch } from '../../app/contract/field-tests.ts'
import { fieldSurveySchema, type FieldSurvey } from '../../app/fieldtest/survey.ts'
import { useEdit, useJob } from '../state/job-state.tsx'

interface SurveyState {
  /** With what was just changed, before the desk has answered. */
  readonly survey: FieldSurvey
  /** Saves parts of the survey as one step; answers whether the desk took them. */
  readonly save: (set: SurveyPatch) => Promise<boolean>
}

/**
 * The open job's field survey and the way to change it. A list is saved whole, so the next change must start from the one
 * before it, not from what the desk last told.
 */
export function useSurvey(): SurveyState {
  const { survey } = useJob()
  const edit = useEdit()
  const [ahead, setAhead] = useState<FieldSurvey | null>(null)
  const latest = useRef<FieldSurvey | null>(null)
  async function save(set: SurveyPatch): Promise<boolean> {
    const next = fieldSurveySchema.parse({ ...(latest.current ?? survey), ...set })
    latest.current = next
    setAhead(next)
    const isSaved = (await edit('survey.save', { set })) !== null
    if (latest.current === next) {
      latest.current = null
      setAhead(null)
    }
    return isSaved
  }
  return { survey: ahead ?? survey, save }
}
