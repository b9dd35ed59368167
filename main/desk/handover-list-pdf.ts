import { createWriteStream } from 'node:fs'
import { mkdir } from 'node:fs/promises'
import type { CallOutput, ParsedInput } from '../../app/contract/contract.ts'
import { handovers } from '../../app/diary/handovers.ts'
import { jobZone } from '../../app/evidence/job-zone.ts'
import { handoverList } from '../../app/packet/handover-list.ts'
import { renderPacket } from '../publish/pdf/render-packet.ts'
import { diaryEntryTable } from '../store/records/diary.ts'
import type { DeskWorld } from './desk-world.ts'
import { draftPath } from './drafts.ts'
import { needJob } from './snapshot.ts'

/** Makes the list of documents received and handed over as a PDF, kept like a draft until the program starts again. */
export async function handoverListPdf(
  world: DeskWorld,
  { jobId, paper }: ParsedInput<'diary.handover-list'>,
): Promise<CallOutput<'diary.handover-list'>> {
  const { db, layout } = world.library
  const { job } = needJob(db, jobId)
  const document = handoverList({
    job,
    handovers: handovers(diaryEntryTable.list(db, jobId)),
    paper,
    madeAtMs: world.now(),
    zone: jobZone(job),
    operator: world.operator(),
  })
  const draftId = world.newId()
  await mkdir(layout.incoming, { recursive: true })
  const made = await renderPacket(
    document,
    { pictures: { load: async () => null }, out: createWriteStream(draftPath(world, draftId)) },
    { signal: new AbortController().signal, onPage: () => undefined },
  )
  return { draftId, pages: made.pages }
}
