import { copyFile, mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { refuse } from '../../app/contract/app-error.ts'
import { firstIssueSentence } from '../../app/contract/schema-sentence.ts'
import { packetOptionsSchema } from '../../app/packet/options.ts'
import { withFileWords } from '../library/file-failure.ts'
import { print } from './print.ts'
import { progressLine } from './task-lines.ts'
import { withDesk, type TerminalDesk } from './with-desk.ts'

export interface PacketFlags {
  readonly out: string
  readonly paper: string
  readonly photosPerPage: string
  readonly cost?: true
  readonly overrule?: string
}

/** `battenbook packet LIBRARY JOB --out DIR`: issues a revision and copies it to DIR. */
export async function packetCommand(
  json: boolean,
  { library, job, flags }: { library: string; job: string; flags: PacketFlags },
): Promise<number> {
  const options = packetOptionsSchema.safeParse({
    paper: flags.paper,
    photosPerPage: Number(flags.photosPerPage),
    cost: flags.cost === true,
  })
  if (!options.success)
    refuse('invalid', `--${firstIssueSentence(options.error).field}: this value is not known.`, {
      help: 'See: battenbook packet --help',
    })
  return withDesk(library, { make: false }, async (terminal) => {
    const { id } = await terminal.jobByNumber(job)
    const { problems } = await terminal.ask('packet.problems', { jobId: id })
    const overrules =
      flags.overrule === undefined
        ? []
        : problems.map((problem) => ({ problemId: problem.id, reason: flags.overrule ?? '' }))
    const { taskId } = await terminal.ask('packet.issue', { jobId: id, options: options.data, overrules })
    const task = await terminal.follow(taskId, progressLine(json))
    const { packets } = await terminal.ask('packet.list', { jobId: id })
    const packet =
      packets.find((one) => one.id === task.packetId) ??
      refuse('internal', 'The packet was not found after it was issued.')
    const pdf = await copyOut(terminal, { kind: 'packet', id: packet.id, folder: flags.out, name: packet.pdfName })
    const bundle = await copyOut(terminal, {
      kind: 'bundle',
      id: packet.id,
      folder: flags.out,
      name: packet.bundleName,
    })
    if (json) print(JSON.stringify({ ok: true, packet, pdf, bundle, problems }))
    else {
      print(`Revision ${packet.revision} issued: ${packet.pages} pages, log head ${packet.headHash.slice(0, 12)}.`)
      if (problems.length > 0)
        print(`${problems.length} things could still be mended; the packet workspace lists them.`)
      print(`Packet: ${pdf}`)
      print(`Bundle: ${bundle}`)
    }
    return 0
  })
}

async function copyOut(
  { desk }: TerminalDesk,
  { kind, id, folder, name }: { kind: 'packet' | 'bundle'; id: string; folder: string; name: string },
): Promise<string> {
  const file = (await desk.file({ kind, id })) ?? refuse('not-found', `${name} is not in the library.`)
  const target = join(folder, name)
  await withFileWords(folder, async () => {
    await mkdir(folder, { recursive: true })
    await copyFile(file.path, target)
  })
  return target
}
