import { jobZone } from '../../app/evidence/job-zone.ts'
import type { Job } from '../../app/job/job.ts'

/** The zone that times are typed in: the job's where it is known, else this machine's. */
export function zoneOfEntries(job: Job): string {
  const { timeZone, position } = job.sheet.property
  const isKnown = timeZone !== '' || position !== null || job.frame.anchor !== null
  return isKnown ? jobZone(job) : Intl.DateTimeFormat().resolvedOptions().timeZone
}
