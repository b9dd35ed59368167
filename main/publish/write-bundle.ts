import { createHash } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { pipeline } from 'node:stream/promises'
import { ZipFile } from 'yazl'
import { hashFile } from '../library/verify-library.ts'

/** One file of an evidence bundle: its name inside and where its bytes come from. */
export type BundleFile =
  | { readonly name: string; readonly path: string; readonly sha256?: string }
  | { readonly name: string; readonly bytes: Buffer }

/** Name of the list of hashes; it checks with `sha256sum -c`. */
export const MANIFEST = 'manifest.sha256'

/** Pictures and PDF are packed already; squeezing them again only costs time. */
const PACKED = /\.(jpe?g|png|webp|heic|heif|avif|mp4|mov|pdf|zip)$/i

/**
 * Writes an evidence bundle: the files in the order given, the manifest last. The same files and time give the same bytes.
 *
 * @param target path of the zip to write; it must not exist
 * @param bundle `madeAtMs` stands as the time of every file inside
 */
export async function writeBundle(
  target: string,
  bundle: { files: readonly BundleFile[]; madeAtMs: number; signal: AbortSignal; onFile: (name: string) => void },
): Promise<void> {
  const zip = new ZipFile()
  const options = (name: string) => ({
    mtime: new Date(bundle.madeAtMs),
    mode: 0o100644,
    compress: !PACKED.test(name),
    forceDosTimestamp: true,
  })
  const lines: string[] = []
  for (const file of bundle.files) {
    bundle.signal.throwIfAborted()
    bundle.onFile(file.name)
    if ('bytes' in file) {
      lines.push(manifestLine(createHash('sha256').update(file.bytes).digest('hex'), file.name))
      zip.addBuffer(file.bytes, file.name, options(file.name))
    } else {
      lines.push(manifestLine(file.sha256 ?? (await hashFile(file.path)), file.name))
      zip.addFile(file.path, file.name, options(file.name))
    }
  }
  zip.addBuffer(Buffer.from(lines.join('')), MANIFEST, options(MANIFEST))
  zip.end()
  await pipeline(zip.outputStream, createWriteStream(target, { flags: 'wx' }), { signal: bundle.signal })
}

/** A line as `sha256sum` writes it; names with a backslash or line break are escaped and marked, as it does. */
function manifestLine(sha256: string, name: string): string {
  const escaped = name.replaceAll('\\', '\\\\').replaceAll('\n', '\\n').replaceAll('\r', '\\r')
  return `${escaped === name ? '' : '\\'}${sha256}  ${escaped}\n`
}
