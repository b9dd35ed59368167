/** Tags of TIFF 6.0 and the ICC profile's (ICC.1:2022 annex B.4), by number; types 3 and 4 are 16 and 32 bits. */
const TAG = {
  width: 256,
  height: 257,
  bits: 258,
  compression: 259,
  photometric: 262,
  stripAt: 273,
  samples: 277,
  rows: 278,
  stripBytes: 279,
  extra: 338,
  icc: 34_675,
}
const [BYTES, SHORT, LONG] = [7, 3, 4]
const ROWS_A_STRIP = 64

/**
 * Wraps decoded pixels into an uncompressed TIFF file, the one form in which sharp takes raw pixels together with their
 * ICC profile.
 *
 * @param picture red, green, blue (and opacity) a byte each, rows without gaps
 */
export function asTiff(picture: {
  width: number
  height: number
  channels: 3 | 4
  pixels: Uint8Array
  icc: Uint8Array | null
}): Buffer {
  const { width, height, channels, pixels, icc } = picture
  const strips = Math.ceil(height / ROWS_A_STRIP)
  const stripBytes = ROWS_A_STRIP * width * channels
  const entries: [tag: number, type: number, values: readonly number[] | Uint8Array][] = [
    [TAG.width, LONG, [width]],
    [TAG.height, LONG, [height]],
    [TAG.bits, SHORT, Array.from({ length: channels }, () => 8)],
    [TAG.compression, SHORT, [1]],
    [TAG.photometric, SHORT, [2]],
    [TAG.stripAt, LONG, []],
    [TAG.samples, SHORT, [channels]],
    [TAG.rows, LONG, [ROWS_A_STRIP]],
    [
      TAG.stripBytes,
      LONG,
      Array.from({ length: strips }, (_, k) => Math.min(stripBytes, pixels.length - k * stripBytes)),
    ],
    ...(channels === 4 ? [[TAG.extra, SHORT, [2]] as [number, number, number[]]] : []),
    ...(icc === null ? [] : [[TAG.icc, BYTES, icc] as [number, number, Uint8Array]]),
  ]
  const directoryBytes = 8 + 2 + entries.length * 12 + 4
  const headBytes = directoryBytes + strips * 8 + channels * 2 + (icc?.length ?? 0) + 64
  const head = Buffer.alloc(headBytes - (headBytes % 2))
  head.write('II*\0', 0, 'latin1')
  head.writeUInt32LE(8, 4)
  head.writeUInt16LE(entries.length, 8)
  let free = directoryBytes
  for (const [k, [tag, type, given]] of entries.entries()) {
    const values = tag === TAG.stripAt ? Array.from({ length: strips }, (_, n) => head.length + n * stripBytes) : given
    const size = type === SHORT ? 2 : type === LONG ? 4 : 1
    const at = 10 + k * 12
    head.writeUInt16LE(tag, at)
    head.writeUInt16LE(type, at + 2)
    head.writeUInt32LE(values.length, at + 4)
    const isInside = values.length * size <= 4
    if (!isInside) head.writeUInt32LE(free, at + 8)
    const place = isInside ? at + 8 : free
    values.forEach((value, n) => head.writeUIntLE(value, place + n * size, size))
    if (!isInside) free += values.length * size + ((values.length * size) % 2)
  }
  return Buffer.concat([head, pixels])
}
