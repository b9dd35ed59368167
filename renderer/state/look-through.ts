import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { packetProblems } from '../../app/evidence/coverage.ts'
import { photosAtNight } from '../../app/evidence/sun-check.ts'
import type { PhotoId } from '../../app/job/ids.ts'
import type { PacketProblem } from '../../app/packet/problem.ts'

/** What a job lacks, and the photos whose brightness would tell more: those that are in the dark by their clock. */
export function lookThrough(job: JobSnapshot): {
  readonly problems: readonly PacketProblem[]
  readonly toMeasure: readonly PhotoId[]
} {
  const waiting = job.photos.filter((photo) => photo.brightness === undefined && photo.preview === 'ready')
  return { problems: packetProblems(job), toMeasure: photosAtNight(waiting, job.job).map(({ id }) => id) }
}
