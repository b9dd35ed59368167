import { mkdir, rename, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import type { ParsedInput } from '../../app/contract/contract.ts'
import type { PacketSummary } from '../../app/contract/jobs.ts'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { safeFileName } from '../library/file-names.ts'
import { hashFile } from '../library/verify-library.ts'
import { ARRIVING, syncFile, syncFolder } from '../library/write-file.ts'
import { bundleFiles } from '../publish/bundle-files.ts'
import { publishPdf } from '../publish/publish-pdf.ts'
import { writeBundle } from '../publish/write-bundle.ts'
import { inTransaction } from '../store/database.ts'
import { touchJob } from '../store/jobs.ts'
import { appendLog } from '../store/log.ts'
import { addPacket, listPackets } from '../store/packets.ts'
import { listAttachments } from '../store/records/attachments.ts'
import { listPhotos } from '../store/records/photos.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange } from './edit-job.ts'
import { packetInput } from './packet-input.ts'
import { problemsOf } from './problems.ts'
import { jobSnapshot, needJobLayout } from './snapshot.ts'
import type { TaskHandle } from './task-list.ts'

/**
 * Freezes the next revision: the PDF, the evidence bundle and the snapshot both were made from.
 *
 * @throws AppFailure `invalid` when a problem blocks the packet, or one that may be overruled has no reason given
 */
export async function issuePacket(
  world: DeskWorld,
  { jobId, options, overrules, handle }: ParsedInput<'packet.issue'> & { handle: TaskHandle },
): Promise<void> {
  const { db } = world.library
  logOverrules(world, jobId, overruled(problemsOf(db, jobId), overrules))
  const snapshot = jobSnapshot(db, jobId)
  const revision = Math.max(0, ...listPackets(db, jobId).map((packet) => packet.revision)) + 1
  const input = packetInput(world, snapshot, { options, revision, issuedAtMs: world.now() })
  const places = needJobLayout(world.library, jobId)
  const files = { photos: listPhotos(db, jobId), attachments: listAttachments(db, jobId), places }
  const stem = safeFileName(snapshot.job.number)
  const pdf = join(places.issued, `${stem}-packet-r${revision}.pdf`)
  const bundle = join(places.issued, `${stem}-evidence-r${revision}.zip`)
  const [pdfArriving, bundleArriving] = [`${pdf}${ARRIVING}`, `${bundle}${ARRIVING}`]
  await mkdir(places.issued, { recursive: true })
  await Promise.all([rm(pdfArriving, { force: true }), rm(bundleArriving, { force: true })])
  try {
    handle.update({ total: snapshot.photos.length * 2, doing: 'Setting pages' })
    const made = await publishPdf(pdfArriving, {
      input,
      files,
      signal: handle.signal,
      onPage: (page) => handle.update({ doing: `Page ${page}` }),
    })
    handle.update({ done: snapshot.photos.length, doing: 'Packing the evidence bundle' })
    const packed = bundleFiles({ input, files, pdf: pdfArriving })
    await writeBundle(bundleArriving, {
      files: packed,
      madeAtMs: input.issuedAtMs,
      signal: handle.signal,
      onFile: (name) => handle.update({ doing: name }),
    })
    await Promise.all([syncFile(pdfArriving), syncFile(bundleArriving)])
    const packet: PacketSummary = {
      id: world.newId(),
      revision,
      issuedAtMs: input.issuedAtMs,
      pages: made.pages,
      pdfBytes: (await stat(pdfArriving)).size,
      pdfSha256: await hashFile(pdfArriving),
      bundleBytes: (await stat(bundleArriving)).size,
      headHash: input.headHash,
      pdfName: `${stem}-packet-r${revision}.pdf`,
      bundleName: `${stem}-evidence-r${revision}.zip`,
    }
    handle.signal.throwIfAborted()
    await rename(pdfArriving, pdf)
    await rename(bundleArriving, bundle)
    await syncFolder(places.issued)
    inTransaction(db, (write) => {
      addPacket(write, jobId, { packet, snapshot })
      appendLog(write, jobId, {
        actor: world.operator(),
        atMs: input.issuedAtMs,
        event: { type: 'packet-issued', revision, pdfSha256: packet.pdfSha256, bundleName: packet.bundleName },
      })
      touchJob(write, jobId, input.issuedAtMs)
    })
    handle.update({ done: snapshot.photos.length * 2, packetId: packet.id, doing: '' })
  } finally {
    await Promise.all([rm(pdfArriving, { force: true }), rm(bundleArriving, { force: true })])
    announceChange(world, jobId)
  }
}

type Overrules = ParsedInput<'packet.issue'>['overrules']

/** The problems let stand, each with its reason. Refuses where one blocks or lacks a reason. */
function overruled(
  problems: readonly PacketProblem[],
  overrules: Overrules,
): readonly { problem: string; reason: string }[] {
  const blocking = problems.filter((problem) => problem.weight === 'blocking')
  const [first] = blocking
  if (first !== undefined) {
    refuse(
      'invalid',
      `The packet can't issue: ${first.sentence}${blocking.length > 1 ? ` (and ${blocking.length - 1} more)` : ''}`,
      {
        help: 'The packet workspace lists what has to be mended.',
      },
    )
  }
  const reasons = new Map(overrules.map(({ problemId, reason }) => [problemId, reason]))
  const toMend = problems.filter((problem) => problem.weight === 'mend')
  const open = toMend.filter((problem) => !reasons.has(problem.id))
  if (open[0] !== undefined) {
    refuse(
      'invalid',
      `${open.length} things are neither mended nor overruled with a reason. The first: ${open[0].sentence}`,
      {
        help: 'Mend them, or say for each why the packet may issue without it.',
      },
    )
  }
  return toMend.map(({ id, sentence }) => ({ problem: sentence, reason: reasons.get(id) ?? '' }))
}

function logOverrules(world: DeskWorld, jobId: string, standing: readonly { problem: string; reason: string }[]): void {
  inTransaction(world.library.db, (write) => {
    for (const { problem, reason } of standing) {
      appendLog(write, jobId, {
        actor: world.operator(),
        atMs: world.now(),
        event: { type: 'problem-overruled', problem, reason },
      })
    }
  })
}
