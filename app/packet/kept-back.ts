import type { CaseFile } from '../evidence/case-file.ts'
import { hidesSomething } from '../evidence/markup.ts'
import type { PhotoId } from '../job/ids.ts'
import type { PacketOptions } from './options.ts'

/** Photos whose originals stay at the office: those with obscured areas, unless the packet's options send them along. */
export function keptBackPhotos(
  { markups }: Pick<CaseFile, 'markups'>,
  { obscuredOriginals }: Pick<PacketOptions, 'obscuredOriginals'>,
): ReadonlySet<PhotoId> {
  if (obscuredOriginals === 'include') return new Set()
  return new Set(markups.filter(hidesSomething).map(({ photoId }) => photoId))
}

/** Name of the list of originals that a bundle does not hold. */
export const KEPT_BACK = 'kept-back.txt'

/** The list as text: a line each as a checksum tool writes it, after lines that say what it is. */
export function keptBackText(files: readonly { readonly sha256: string; readonly name: string }[]): string {
  return [
    '# Originals that are kept at the office and not in this bundle, since parts of them are obscured in every copy',
    '# given out. Their SHA-256 from the day they were taken in:',
    ...files.map(({ sha256, name }) => `${sha256}  ${name}`),
    '',
  ].join('\n')
}

/** Reads the hashes of such a list. */
export function keptBackHashes(text: string): readonly string[] {
  return text.split('\n').flatMap((line) => /^([0-9a-f]{64}) {2}\S/.exec(line)?.[1] ?? [])
}
