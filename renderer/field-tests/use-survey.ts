import type { SurveyPatch } from '../../app/contract/field-tests.ts'
import type { FieldSurvey } from '../../app/fieldtest/survey.ts'
import { useEdit, useJob } from '../state/job-state.tsx'

interface SurveyState {
  readonly survey: FieldSurvey
  /** Saves parts of the survey as one step; answers whether the desk took them. */
  readonly save: (set: SurveyPatch) => Promise<boolean>
}

/** The open job's field survey and the way to change it. */
export function useSurvey(): SurveyState {
  const { survey } = useJob()
  const edit = useEdit()
  return { survey, save: async (set) => (await edit('survey.save', { set })) !== null }
}
