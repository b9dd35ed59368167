import { mkdir, rename, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import type { ParsedInput } from '../../app/contract/contract.ts'
import type { JobSnapshot, PacketSummary } from '../../app/contract/jobs.ts'
import type { JobId } from '../../app/job/ids.ts'
import type { PacketInput } from '../../app/packet/packet-input.ts'
import type { PacketProblem } from '../../app/packet/problem.ts'
import { safeFileName } from '../library/file-names.ts'
import { hashFile } from '../library/verify-library.ts'
import { ARRIVING, syncFile, syncFolder } from '../library/write-file.ts'
import { bundleFiles } from '../publish/bundle-files.ts'
import { writeMarkedCopies } from '../publish/marked/write-marked-copies.ts'
import type { PacketFiles } from '../publish/packet-files.ts'
import { publishPdf } from '../publish/publish-pdf.ts'
import { writeBundle } from '../publish/write-bundle.ts'
import { inTransaction } from '../store/database.ts'
import { touchJob } from '../store/jobs.ts'
import { appendLog } from '../store/log.ts'
import { addPacket, listPackets } from '../store/packets.ts'
import type { DeskWorld } from './desk-world.ts'
import { announceChange } from './edit-job.ts'
import { measureWhereNeeded } from './measure-brightness.ts'
import { packetFiles, packetInput } from './packet-input.ts'
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
  await measureWhereNeeded(world, jobId)
  logOverrules(world, jobId, overruled(problemsOf(db, jobId), overrules))
  const snapshot = jobSnapshot(db, jobId)
  const revision = Math.max(0, ...listPackets(db, jobId).map((packet) => packet.revision)) + 1
  const input = packetInput(world, snapshot, { options, revision, issuedAtMs: world.now() })
  const places = needJobLayout(world.library, jobId)
  const files = packetFiles(world, jobId, options)
  const stem = safeFileName(snapshot.job.number)
  const names = { pdfName: `${stem}-packet-r${revision}.pdf`, bundleName: `${stem}-evidence-r${revision}.zip` }
  const arriving: Arriving = {
    pdf: join(places.issued, `${names.pdfName}${ARRIVING}`),
    bundle: join(places.issued, `${names.bundleName}${ARRIVING}`),
    marked: join(world.library.layout.incoming, `marked-${world.newId()}`),
  }
  await mkdir(places.issued, { recursive: true })
  await removeArriving(arriving)
  try {
    const written = await writeArriving(arriving, { input, files, handle })
    handle.signal.throwIfAborted()
    await rename(arriving.pdf, join(places.issued, names.pdfName))
    await rename(arriving.bundle, join(places.issued, names.bundleName))
    await syncFolder(places.issued)
    const packet = {
      id: world.newId(),
      revision,
      issuedAtMs: input.issuedAtMs,
      headHash: input.headHash,
      ...names,
      ...written,
    }
    freeze(world, jobId, { packet, snapshot })
    handle.update({ done: snapshot.photos.length * 2, packetId: packet.id, doing: '' })
  } finally {
    await removeArriving(arriving)
    announceChange(world, jobId)
  }
}

/** Where PDF and bundle stand until both are whole. */
interface Arriving {
  readonly pdf: string
  readonly bundle: string
  /** Annotated copies stand here until the bundle has them. */
  readonly marked: string
}

async function removeArriving({ pdf, bundle, marked }: Arriving): Promise<void> {
  await Promise.all([pdf, bundle, marked].map((path) => rm(path, { recursive: true, force: true })))
}

/** Writes PDF and bundle, synced, and tells what they came to. */
async function writeArriving(
  { pdf, bundle, marked: folder }: Arriving,
  { input, files, handle }: { input: PacketInput; files: PacketFiles; handle: TaskHandle },
): Promise<Pick<PacketSummary, 'pages' | 'pdfBytes' | 'pdfSha256' | 'bundleBytes'>> {
  const { signal, update } = handle
  update({ total: files.photos.length * 2, doing: 'Setting pages' })
  const made = await publishPdf(pdf, { input, files, signal, onPage: (page) => update({ doing: `Page ${page}` }) })
  update({ done: files.photos.length, doing: 'Packing the evidence bundle' })
  const marked = await writeMarkedCopies(folder, { files, signal })
  await writeBundle(bundle, {
    files: bundleFiles({ input, files, pdf, marked }),
    madeAtMs: input.issuedAtMs,
    signal,
    onFile: (name) => update({ doing: name }),
  })
  await Promise.all([syncFile(pdf), syncFile(bundle)])
  return {
    pages: made.pages,
    pdfBytes: (await stat(pdf)).size,
    pdfSha256: await hashFile(pdf),
    bundleBytes: (await stat(bundle)).size,
  }
}

/** The revision's row and its log entry, in one transaction. */
function freeze(
  { library, operator }: DeskWorld,
  jobId: JobId,
  { packet, snapshot }: { packet: PacketSummary; snapshot: JobSnapshot },
): void {
  const { revision, pdfSha256, bundleName, issuedAtMs } = packet
  inTransaction(library.db, (write) => {
    addPacket(write, jobId, { packet, snapshot })
    const event = { type: 'packet-issued', revision, pdfSha256, bundleName } as const
    appendLog(write, jobId, { actor: operator(), atMs: issuedAtMs, event })
    touchJob(write, jobId, issuedAtMs)
  })
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
