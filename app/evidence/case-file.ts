import type { Reading } from '../fieldtest/reading.ts'
import type { Job } from '../job/job.ts'
import type { Facet } from '../roof/facet.ts'
import type { JobWeather } from '../weather/weather-records.ts'
import type { Camera } from './camera.ts'
import type { Finding } from './finding.ts'
import type { Photo } from './photo.ts'

/** What is known of a roof: all that checks and packets are made from. */
export interface CaseFile {
  readonly job: Job
  readonly facets: readonly Facet[]
  readonly photos: readonly Photo[]
  readonly cameras: readonly Camera[]
  readonly findings: readonly Finding[]
  readonly readings: readonly Reading[]
  readonly weather: JobWeather
}
