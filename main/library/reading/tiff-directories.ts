/** The tags of one TIFF directory by number; values are the first few numbers of each. */
export type TiffDirectory = ReadonlyMap<number, readonly number[]>

/** Far more than any camera writes; bounds the work on hostile files. */
const MOST = { directories: 64, entries: 1_000, values: 4_096 }
const SUB_DIRECTORIES = 330
/** Sizes in bytes of TIFF 6.0 section 2's types 1 to 4 and 13 (a directory's place); others are passed over. */
const SIZES = new Map([
  [1, 1],
  [3, 2],
  [4, 4],
  [13, 4],
])

/**
 * Walks the directories of a TIFF-shaped file: the chain of pages, and below each its sub-directories (TIFF/EP). Whole
 * numbers only. A directory that was met before or lies outside the file ends its chain; nothing throws.
 */
export function readTiffDirectories(bytes: Buffer): {
  readonly pages: readonly TiffDirectory[]
  readonly below: readonly TiffDirectory[]
} {
  const reader = readerOf(bytes)
  const seen = new Set<number>()
  const chain = (first: number): TiffDirectory[] => {
    const found: TiffDirectory[] = []
    let at = first
    while (at >= 8 && at + 2 <= bytes.length && !seen.has(at) && seen.size < MOST.directories) {
      seen.add(at)
      found.push(directoryAt(at, reader))
      at = reader.u32(at + 2 + 12 * reader.u16(at))
    }
    return found
  }
  const pages = chain(reader.u32(4))
  const all = [...pages]
  // Grows while it is walked: a sub-directory may have its own.
  for (const directory of all) for (const at of directory.get(SUB_DIRECTORIES) ?? []) all.push(...chain(at))
  return { pages, below: all.slice(pages.length) }
}

interface Reader {
  readonly u16: (at: number) => number
  readonly u32: (at: number) => number
  readonly byte: (at: number) => number
}

function readerOf(bytes: Buffer): Reader {
  const isLittle = bytes[0] === 0x49
  return {
    byte: (at) => bytes[at] ?? 0,
    u16: (at) => (at + 2 > bytes.length ? 0 : isLittle ? bytes.readUInt16LE(at) : bytes.readUInt16BE(at)),
    u32: (at) => (at + 4 > bytes.length ? 0 : isLittle ? bytes.readUInt32LE(at) : bytes.readUInt32BE(at)),
  }
}

function directoryAt(at: number, { u16, u32, byte }: Reader): TiffDirectory {
  const tags = new Map<number, readonly number[]>()
  const count = Math.min(u16(at), MOST.entries)
  for (let k = 0; k < count; k += 1) {
    const entry = at + 2 + 12 * k
    const size = SIZES.get(u16(entry + 2))
    if (size === undefined) continue
    const values = Math.min(u32(entry + 4), MOST.values)
    const place = values * size <= 4 ? entry + 8 : u32(entry + 8)
    const read = size === 1 ? byte : size === 2 ? u16 : u32
    tags.set(
      u16(entry),
      Array.from({ length: values }, (_, n) => read(place + n * size)),
    )
  }
  return tags
}
