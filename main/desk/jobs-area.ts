import type { JobSummary } from '../../app/contract/jobs.ts'
import { allJobs, jobTallies } from '../store/jobs.ts'
import { startDescribedJob } from './described-job.ts'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'
import { createLackCounting, type LackCounting } from './lack-counting.ts'
import { newJob } from './new-job.ts'
import { measureBrightness } from './measure-brightness.ts'
import { jobChanges, jobSnapshot } from './snapshot.ts'

/** Jobs: listed, opened, begun. */
export function jobsArea(world: DeskWorld): Area<'jobs'> {
  const counting = createLackCounting(world)
  return {
    'jobs.list': () => {
      counting.begin()
      return { jobs: summaries(world, counting) }
    },
    'jobs.open': ({ jobId }) => jobSnapshot(world.library.db, jobId),
    'jobs.changes': ({ jobId, since }) => jobChanges(world.library.db, jobId, since),
    'jobs.measure-brightness': async ({ jobId, photoIds }) => ({
      measured: await measureBrightness(world, jobId, photoIds),
    }),
    'jobs.new': (given) => {
      const job = newJob(world, given)
      return { jobId: job.id, number: job.number }
    },
    'jobs.new-from-folder': ({ folder }) => startDescribedJob(world, folder),
    'jobs.new-sample': () => startDescribedJob(world, world.sampleFolder),
  }
}

function summaries(world: DeskWorld, counting: LackCounting): JobSummary[] {
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
        lacks: tally.lacks ?? counting.ask({ id: job.id, photos: tally.photos }),
        changedAtMs: tally.changed_at_ms,
      },
    ]
  })
}
