import { emptyAssessment } from '../../app/assessment/assessment.ts'
import type { CaseFile } from '../../app/evidence/case-file.ts'
import { emptySurvey } from '../../app/fieldtest/survey.ts'
import { emptyScope } from '../../app/scope/scope-record.ts'
import { NO_WEATHER } from '../../app/weather/weather-records.ts'
import { aJob } from './records.ts'

/** A case file with only a filled-in sheet; add the records a test is about. */
export function aCaseFile(given: Partial<CaseFile> = {}): CaseFile {
  return {
    job: given.job ?? aJob(),
    facets: [],
    photos: [],
    markups: [],
    cameras: [],
    findings: [],
    readings: [],
    survey: emptySurvey(),
    weather: NO_WEATHER,
    scope: { choices: emptyScope(), book: null },
    assessment: emptyAssessment(),
    narrations: [],
    ...given,
  }
}
