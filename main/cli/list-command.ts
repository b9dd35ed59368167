import { print } from './print.ts'
import { withDesk } from './with-desk.ts'

/** `battenbook list LIBRARY` */
export async function listCommand(json: boolean, library: string): Promise<number> {
  const { jobs } = await withDesk(library, { make: false }, ({ ask }) => ask('jobs.list', {}))
  if (json) {
    print(JSON.stringify({ ok: true, jobs }))
    return 0
  }
  if (jobs.length === 0) print('No jobs yet. Begin one with: battenbook new LIBRARY')
  for (const job of jobs) {
    print(
      [
        job.number,
        job.owner === '' ? 'owner not stated' : job.owner,
        job.address === '' ? 'address not stated' : job.address,
        `${job.photos} photos`,
        `${job.findings} findings`,
        job.lacks === null ? 'not counted yet' : `${job.lacks} to mend`,
        `${job.packets} packets`,
      ].join('  |  '),
    )
  }
  return 0
}
