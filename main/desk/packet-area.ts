import { issuePacket } from './issue-packet.ts'
import { draftPacket } from './draft-packet.ts'
import { listPackets } from '../store/packets.ts'
import type { DeskWorld } from './desk-world.ts'
import type { Area } from './handlers.ts'
import { measureWhereNeeded } from './measure-brightness.ts'
import { problemsOf } from './problems.ts'
import { needJob } from './snapshot.ts'

/** Packets: what to mend, drafts to look at, revisions issued. */
export function packetArea(world: DeskWorld): Area<'packet'> {
  const { db } = world.library
  return {
    'packet.problems': async ({ jobId }) => {
      await measureWhereNeeded(world, jobId)
      return { problems: [...problemsOf(db, jobId)] }
    },
    'packet.draft': (asked) => draftPacket(world, asked),
    'packet.issue': ({ jobId, options, overrules }) => {
      const { job } = needJob(db, jobId)
      const taskId = world.tasks.start(
        { jobId, kind: 'issue', title: `Issuing the packet of job ${job.number}` },
        (handle) => issuePacket(world, { jobId, options, overrules, handle }),
      )
      return { taskId }
    },
    'packet.list': ({ jobId }) => ({ packets: listPackets(db, jobId) }),
  }
}
