/** A box of an ISO base media file (ISO/IEC 14496-12, 4.2): its four-letter type and what is inside. */
export type Box = { type: string; body: Buffer }

/** More boxes side by side than any camera writes; what follows them in a broken file is not looked at. */
const MAX_BOXES = 10_000

/** The boxes that lie side by side in `bytes`, in order. A box whose size makes no sense ends the list. */
export function boxesIn(bytes: Buffer): Box[] {
  const boxes: Box[] = []
  let at = 0
  while (at + 8 <= bytes.length && boxes.length < MAX_BOXES) {
    const shortSize = bytes.readUInt32BE(at)
    const headerLength = shortSize === 1 ? 16 : 8
    const size = shortSize === 0 ? bytes.length - at : shortSize === 1 ? readUInt(bytes, at + 8, 8) : shortSize
    if (size < headerLength) break
    boxes.push({
      type: bytes.toString('latin1', at + 4, at + 8),
      body: bytes.subarray(at + headerLength, at + size),
    })
    at += size
  }
  return boxes
}

/** Big-endian whole number of 0, 1, 2, 4 or 8 bytes; 0 where the bytes end too soon. */
export function readUInt(bytes: Buffer, at: number, length: number): number {
  if (at < 0 || at + length > bytes.length) return 0
  if (length === 0) return 0
  if (length <= 6) return bytes.readUIntBE(at, length)
  return bytes.readUInt32BE(at) * 2 ** 32 + bytes.readUInt32BE(at + 4)
}
