import { mkdir, stat } from 'node:fs/promises'
import type { CallOutput, ParsedInput } from '../../app/contract/contract.ts'
import { publishPdf } from '../publish/publish-pdf.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { markupTable } from '../store/records/markups.ts'
import { listPhotos } from '../store/records/photos.ts'
import type { DeskWorld } from './desk-world.ts'
import { draftPath } from './drafts.ts'
import { packetInput } from './packet-input.ts'
import { jobSnapshot, needJobLayout } from './snapshot.ts'

/** Makes the PDF as it would be issued now, marked as a draft, for the preview to show. */
export async function draftPacket(
  world: DeskWorld,
  { jobId, options }: ParsedInput<'packet.draft'>,
): Promise<CallOutput<'packet.draft'>> {
  const { db, layout } = world.library
  const input = packetInput(world, jobSnapshot(db, jobId), { options, revision: null, issuedAtMs: world.now() })
  const draftId = world.newId()
  const path = draftPath(world, draftId)
  await mkdir(layout.incoming, { recursive: true })
  const made = await publishPdf(path, {
    input,
    files: {
      photos: listPhotos(db, jobId),
      markups: markupTable.list(db, jobId),
      attachments: listAttachments(db, jobId),
      places: needJobLayout(world.library, jobId),
    },
    signal: new AbortController().signal,
    onPage: () => undefined,
  })
  const { size } = await stat(path)
  return { draftId, pages: made.pages, bytes: size, outline: [...made.outline] }
}
