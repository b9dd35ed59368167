import type { Assessment } from '../assessment/assessment.ts'
import type { FieldSurvey } from '../fieldtest/survey.ts'
import type { Reading } from '../fieldtest/reading.ts'
import type { Job } from '../job/job.ts'
import type { Narration } from '../narration/narration.ts'
import type { Facet } from '../roof/facet.ts'
import type { JobScope } from '../scope/scope-record.ts'
import type { JobWeather } from '../weather/weather-records.ts'
import type { Camera } from './camera.ts'
import type { Finding } from './finding.ts'
import type { Markup } from './markup.ts'
import type { Photo } from './photo.ts'

/** What is known of a roof: all that checks and packets are made from. */
export interface CaseFile {
  readonly job: Job
  readonly facets: readonly Facet[]
  readonly photos: readonly Photo[]
  /** What is drawn over photos; none for a photo without marks. */
  readonly markups: readonly Markup[]
  readonly cameras: readonly Camera[]
  readonly findings: readonly Finding[]
  readonly readings: readonly Reading[]
  readonly narrations: readonly Narration[]
  readonly survey: FieldSurvey
  readonly weather: JobWeather
  readonly scope: JobScope
  readonly assessment: Assessment
}
