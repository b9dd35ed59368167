import type { Job } from '../job/job.ts'
import { zoneAt } from './zone-at.ts'

/** IANA name of the zone in which a job's times are given: the sheet's, else the place's, else UTC. */
export function jobZone(job: Job): string {
  const { timeZone, position } = job.sheet.property
  if (timeZone !== '') return timeZone
  const place = position ?? job.frame.anchor
  return (place === null ? null : zoneAt(place)) ?? 'UTC'
}
