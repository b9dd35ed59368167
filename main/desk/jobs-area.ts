import type { JobSummary } from '../../app/contract/jobs.ts'
import { inTransaction } from '../store/database.ts'
import { allJobs, jobTallies, setLacks } from '../store/jobs.ts'
import { startDescribedJob } from './described-job.ts'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'
import { newJob } from './new-job.ts'
import { problemsOf } from './problems.ts'
import { jobSnapshot } from './snapshot.ts'

/** Jobs: listed, opened, begun. */
export function jobsArea(world: DeskWorld): Area<'jobs'> {
  return {
    'jobs.list': () => ({ jobs: summaries(world) }),
    'jobs.open': ({ jobId }) => jobSnapshot(world.library.db, jobId),
    'jobs.new': (given) => {
      const job = newJob(world, given)
      return { jobId: job.id, number: job.number }
    },
    'jobs.new-from-folder': ({ folder }) => startDescribedJob(world, folder),
    'jobs.new-sample': () => startDescribedJob(world, world.sampleFolder),
  }
}

function summaries(world: DeskWorld): JobSummary[] {
  const { db } = world.library
  const tallies = jobTallies(db)
  return allJobs(db).flatMap(({ job }): JobSummary[] => {
    const tally = tallies.get(job.id)
    if (tally === undefined) return []
    const { property, owner, insurance, loss } = job.sheet
    return [
      {
        id: job.id,
        number: job.number,
        owner: owner.name,
        address: [property.address, property.city].filter((part) => part !== '').join(', '),
        claimNumber: insurance.claimNumber,
        lossDate: loss.date,
        photos: tally.photos,
        findings: tally.findings,
        facets: tally.facets,
        packets: tally.packets,
        lacks: tally.lacks ?? countLacks(world, job.id),
        changedAtMs: tally.changed_at_ms,
      },
    ]
  })
}

/** Counted when asked for after a change, then kept until the next one. */
function countLacks(world: DeskWorld, jobId: string): number {
  const lacks = problemsOf(world.library.db, jobId).length
  inTransaction(world.library.db, (write) => setLacks(write, jobId, lacks))
  return lacks
}
