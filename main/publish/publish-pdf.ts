import { createWriteStream } from 'node:fs'
import { rm } from 'node:fs/promises'
import { buildPacket } from '../../app/packet/build-packet.ts'
import { keptBackPhotos } from '../../app/packet/kept-back.ts'
import type { PacketInput } from '../../app/packet/packet-input.ts'
import { filesDigest, sealText } from '../../app/packet/seal.ts'
import { hashesOf, type PacketFiles } from './packet-files.ts'
import { packetPictures } from './packet-pictures.ts'
import { renderPacket, type RenderedPacket } from './pdf/render-packet.ts'

/** Writes the packet's PDF to `target`. Leaves nothing there when it fails or is stopped. */
export async function publishPdf(
  target: string,
  packet: { input: PacketInput; files: PacketFiles; signal: AbortSignal; onPage: (page: number) => void },
): Promise<RenderedPacket> {
  const { input, files, signal, onPage } = packet
  const document = {
    ...buildPacket(input),
    keywords: sealText({
      logHead: input.headHash,
      filesDigest: filesDigest(hashesOf(files)),
      keptBackDigest: keptBackDigest(input, files),
    }),
  }
  try {
    return await renderPacket(
      document,
      { pictures: packetPictures(files), out: createWriteStream(target) },
      { signal, onPage },
    )
  } catch (cause) {
    await rm(target, { force: true })
    throw cause
  }
}

function keptBackDigest({ caseFile, options }: PacketInput, { photos }: PacketFiles): string | null {
  const keptBack = keptBackPhotos(caseFile, options)
  if (keptBack.size === 0) return null
  return filesDigest(photos.filter(({ id }) => keptBack.has(id)).map(({ file }) => file.sha256))
}
