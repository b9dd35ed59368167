import type { JobSnapshot } from '../../app/contract/jobs.ts'
import { handovers } from '../../app/diary/handovers.ts'
import type { PacketInput } from '../../app/packet/packet-input.ts'
import type { PacketOptions } from '../../app/packet/options.ts'
import { wholeLog } from '../store/log.ts'
import { isInBundle } from '../../app/packet/videos-in-bundle.ts'
import type { PacketFiles } from '../publish/packet-files.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { markupTable } from '../store/records/markups.ts'
import { listPhotos } from '../store/records/photos.ts'
import { listVideos } from '../store/records/videos.ts'
import type { DeskWorld } from './desk-world.ts'
import { needJobLayout } from './snapshot.ts'

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
    videos: snapshot.videos,
    planImages: snapshot.planImages,
    handovers: given.options.handovers === 'include' ? handovers(snapshot.diary.entries) : [],
    log: [...wholeLog(world.library.db, snapshot.job.id)],
    headHash: snapshot.log.headHash,
    operator: world.operator(),
    programVersion: world.programVersion,
  }
}

/** The files that go with a packet, as the job stands now. */
export function packetFiles({ library }: DeskWorld, jobId: string, { videosInBundle }: PacketOptions): PacketFiles {
  return {
    photos: listPhotos(library.db, jobId),
    markups: markupTable.list(library.db, jobId),
    attachments: listAttachments(library.db, jobId),
    videos: listVideos(library.db, jobId).filter(({ file }) => isInBundle(file, videosInBundle)),
    places: needJobLayout(library, jobId),
  }
}
