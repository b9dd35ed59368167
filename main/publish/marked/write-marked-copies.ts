import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { photoLabel } from '../../../app/evidence/photo.ts'
import { writeWhole } from '../../library/write-file.ts'
import type { PacketFiles } from '../packet-files.ts'
import type { BundleFile } from '../write-bundle.ts'
import { markedCopy } from './marked-copy.ts'
import { photoFolder } from '../../library/layout.ts'

/**
 * Writes the annotated copies of a packet's photos into a folder, one after the other, for the bundle to take up as
 * `marked/P-012.jpg`. Photos left out of the packet have none.
 */
export async function writeMarkedCopies(
  folder: string,
  { files, signal }: { files: PacketFiles; signal: AbortSignal },
): Promise<readonly BundleFile[]> {
  const { photos, markups, places } = files
  const byPhoto = new Map(markups.map((markup) => [markup.photoId, markup]))
  const written: BundleFile[] = []
  await mkdir(folder, { recursive: true })
  for (const photo of photos) {
    const { id, number, storedName, file, tags } = photo
    const markup = byPhoto.get(id)
    if (markup === undefined || tags.leftOutBecause !== null) continue
    signal.throwIfAborted()
    const jpeg = await markedCopy(join(photoFolder(places, photo), storedName), { file, marks: markup.marks })
    if (jpeg === null) continue
    const path = join(folder, `${photoLabel(number)}.jpg`)
    await writeWhole(path, jpeg)
    written.push({ name: `marked/${photoLabel(number)}.jpg`, path })
  }
  return written
}
