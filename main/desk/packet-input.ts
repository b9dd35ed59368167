import type { JobSnapshot } from '../../app/contract/jobs.ts'
import type { PacketInput } from '../../app/packet/packet-input.ts'
import type { PacketOptions } from '../../app/packet/options.ts'
import { wholeLog } from '../store/log.ts'
import type { DeskWorld } from './desk-world.ts'

/** Gathers what a packet is made from, as the job stands now. */
export function packetInput(
  world: DeskWorld,
  snapshot: JobSnapshot,
  given: { options: PacketOptions; revision: number | null; issuedAtMs: number },
): PacketInput {
  return {
    ...given,
    caseFile: snapshot,
    attachments: snapshot.attachments,
    planImages: snapshot.planImages,
    log: [...wholeLog(world.library.db, snapshot.job.id)],
    headHash: snapshot.log.headHash,
    operator: world.operator(),
    programVersion: world.programVersion,
  }
}
