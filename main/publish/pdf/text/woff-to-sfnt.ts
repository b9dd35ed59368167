import { inflateSync } from 'node:zlib'

const WOFF = 0x774f4646
const WOFF_HEAD = 44
const WOFF_ENTRY = 20
const SFNT_HEAD = 12
const SFNT_ENTRY = 16

/**
 * A web font (WOFF 1.0, W3C Recommendation 2012) as the plain font that it wraps; any other font as it is. The PDF engine
 * reads both, but unpacks a web font's tables anew for every glyph.
 */
export function woffToSfnt(bytes: Buffer): Buffer {
  if (bytes.readUInt32BE(0) !== WOFF) return bytes
  const count = bytes.readUInt16BE(12)
  const tables = Array.from({ length: count }, (_, i) => unpack(bytes, WOFF_HEAD + i * WOFF_ENTRY))
  const sizes = tables.map((table) => Math.ceil(table.data.length / 4) * 4)
  const start = SFNT_HEAD + count * SFNT_ENTRY
  const sfnt = Buffer.alloc(start + sizes.reduce((sum, size) => sum + size, 0))
  const power = Math.floor(Math.log2(count))
  sfnt.writeUInt32BE(bytes.readUInt32BE(4), 0)
  sfnt.writeUInt16BE(count, 4)
  sfnt.writeUInt16BE(2 ** power * 16, 6)
  sfnt.writeUInt16BE(power, 8)
  sfnt.writeUInt16BE((count - 2 ** power) * 16, 10)
  let offset = start
  tables.forEach((table, i) => {
    const entry = SFNT_HEAD + i * SFNT_ENTRY
    table.tag.copy(sfnt, entry)
    sfnt.writeUInt32BE(table.checksum, entry + 4)
    sfnt.writeUInt32BE(offset, entry + 8)
    sfnt.writeUInt32BE(table.data.length, entry + 12)
    table.data.copy(sfnt, offset)
    offset += sizes[i] ?? 0
  })
  return sfnt
}

function unpack(bytes: Buffer, entry: number): { tag: Buffer; checksum: number; data: Buffer } {
  const offset = bytes.readUInt32BE(entry + 4)
  const packedLength = bytes.readUInt32BE(entry + 8)
  const length = bytes.readUInt32BE(entry + 12)
  const packed = bytes.subarray(offset, offset + packedLength)
  return {
    tag: bytes.subarray(entry, entry + 4),
    checksum: bytes.readUInt32BE(entry + 16),
    // Tables that would not shrink are stored as they are.
    data: packedLength < length ? inflateSync(packed) : packed,
  }
}
